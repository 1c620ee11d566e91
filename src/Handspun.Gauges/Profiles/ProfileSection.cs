using System.Globalization;
using System.Text;
using Tomlyn.Model;

namespace Handspun.Gauges.Profiles;

/// <summary>One table of a profile: each key is asked for once, and what nobody asked for is a problem.</summary>
internal sealed class ProfileSection(ProfileSource source, string path, TomlTable table)
{
    private const int MostBytes = 256;

    private readonly HashSet<string> _asked = [];

    /// <summary>Whether nothing stands in it.</summary>
    public bool IsEmpty => table.Count == 0;

    /// <summary>Whether a key stands in it.</summary>
    public bool Has(string key) => table.ContainsKey(key);

    public ProfileSection Section(string key)
    {
        var value = Take(key);
        if (value is not (null or TomlTable))
        {
            Complain(key, "is a table: write it as [" + path + key + "]");
        }

        return new(source, path + key + ".", value as TomlTable ?? []);
    }

    public string Text(string key, string otherwise) => Take(key) switch
    {
        null => otherwise,
        string text when text.Length > 0 => text,
        _ => Complain(key, "is a text in quotes", otherwise),
    };

    public int Whole(string key, int otherwise, int least, int most) => Take(key) switch
    {
        null => otherwise,
        long number when number >= least && number <= most => (int)number,
        _ => Complain(key, string.Create(CultureInfo.InvariantCulture, $"is a whole number from {least} to {most}"), otherwise),
    };

    public double Number(string key, double otherwise, double least, double most)
    {
        var value = Take(key);
        var number = value is long whole ? whole : value as double?;
        return value is null ? otherwise
            : number >= least && number <= most ? number.Value
            : Complain(key, string.Create(CultureInfo.InvariantCulture, $"is a number from {least} to {most}"), otherwise);
    }

    public bool? Switch(string key) => Take(key) switch
    {
        null => null,
        bool on => on,
        _ => Complain(key, "is true or false", (bool?)null),
    };

    /// <summary>Bytes, as a text of characters up to U+00FF (with TOML's escapes) or as a list of numbers; none where the key is not there.</summary>
    public ReadOnlyMemory<byte> Bytes(string key) => Take(key) switch
    {
        null => default,
        string { Length: > 0 and <= MostBytes } text when text.All(letter => letter <= byte.MaxValue) => Encoding.Latin1.GetBytes(text),
        TomlArray { Count: > 0 and <= MostBytes } list when list.All(item => item is >= 0L and <= (long)byte.MaxValue) => list.Select(item => (byte)(long)item!).ToArray(),
        _ => Complain(key, $"is 1 to {MostBytes} bytes: a text in double quotes with escapes such as \"R\\r\", or a list such as [0x02, 82, 13]", ReadOnlyMemory<byte>.Empty),
    };

    /// <summary>Texts: one in quotes or a list of them.</summary>
    public IReadOnlyList<string> Texts(string key, params IReadOnlyList<string> otherwise) => Take(key) switch
    {
        null => otherwise,
        string { Length: > 0 } text when text.All(letter => letter <= byte.MaxValue) => [text],
        TomlArray { Count: > 0 } list when list.All(item => item is string { Length: > 0 } text && text.All(letter => letter <= byte.MaxValue)) => [.. list.Cast<string>()],
        _ => Complain(key, "is a text in quotes or a list of such, in letters up to U+00FF", otherwise),
    };

    /// <summary>Whole numbers: one or a list of them.</summary>
    public IReadOnlyList<int> Wholes(string key, IReadOnlyList<int> otherwise, int least, int most) => Take(key) switch
    {
        null => otherwise,
        long number when number >= least && number <= most => [(int)number],
        TomlArray { Count: > 0 } list when list.All(item => item is long number && number >= least && number <= most) => [.. list.Select(item => (int)(long)item!)],
        _ => Complain(key, string.Create(CultureInfo.InvariantCulture, $"is a whole number from {least} to {most} or a list of such"), otherwise),
    };

    /// <summary>A whole number that may be left out.</summary>
    public int? MaybeWhole(string key, int least, int most) => Known(key) ? Whole(key, least, least, most) : null;

    /// <summary>A number that may be left out.</summary>
    public double? MaybeNumber(string key, double least, double most) => Known(key) ? Number(key, least, least, most) : null;

    private bool Known(string key)
    {
        _asked.Add(key);
        return Has(key);
    }

    public T Choice<T>(string key, string otherwise, IReadOnlyDictionary<string, T> choices)
    {
        var value = Take(key) ?? otherwise;
        var word = Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";
        return choices.TryGetValue(word, out var chosen)
            ? chosen
            : Complain(key, "is one of " + string.Join(", ", choices.Keys), choices[otherwise]);
    }

    public void RefuseTheRest()
    {
        foreach (var key in table.Keys.Where(key => !_asked.Contains(key)))
        {
            source.Unknown(path + key, _asked);
        }
    }


    private object? Take(string key)
    {
        _asked.Add(key);
        return table.TryGetValue(key, out var value) ? value : null;
    }

    /// <summary>Notes what is wrong with a key.</summary>
    public void Complain(string key, string rule) => source.Complain(path + key, rule);

    private T Complain<T>(string key, string rule, T otherwise)
    {
        Complain(key, rule);
        return otherwise;
    }
}

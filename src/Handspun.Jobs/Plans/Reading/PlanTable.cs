using System.Text.RegularExpressions;
using Tomlyn.Model;

namespace Handspun.Jobs.Plans.Reading;

/// <summary>One table of a plan: each key is asked for once, and what nobody asked for is a problem.</summary>
/// <param name="text">Where it stands.</param>
/// <param name="path">Its own path, such as <c>step[2]</c>; empty for the whole plan.</param>
/// <param name="values">What stands in it.</param>
internal sealed partial class PlanTable(PlanText text, string path, TomlTable values)
{
    private readonly HashSet<string> _asked = [];

    /// <summary>Its path.</summary>
    public string Path => path;

    /// <summary>A text in quotes; null where the key is not there or is something else.</summary>
    public string? Text(string key)
    {
        var value = Take(key);
        if (value is not (null or string { Length: > 0 }))
        {
            Complain(key, $"'{key}' is a text in quotes.");
        }

        return value as string;
    }

    /// <summary>A text that must be there; empty where it is not.</summary>
    public string Needed(string key, string what)
    {
        var found = Text(key);
        if (found is null && !values.ContainsKey(key))
        {
            Complain(key, $"'{key}' is missing: {what}.");
        }

        return found ?? "";
    }

    /// <summary>A name in data that must be there.</summary>
    public string Code()
    {
        var code = Needed("code", "give a name of lower-case letters, digits and hyphens");
        if (code.Length > 0 && !CodeShape().IsMatch(code))
        {
            Complain("code", $"'{code}' is no name: use up to 40 lower-case letters, digits and hyphens, a letter first.");
        }

        return code;
    }

    /// <summary>A list of texts; empty where the key is not there.</summary>
    public IReadOnlyList<string> Texts(string key)
    {
        var value = Take(key);
        if (value is TomlArray list && list.All(item => item is string { Length: > 0 }))
        {
            return [.. list.Cast<string>()];
        }

        if (value is not null)
        {
            Complain(key, $"'{key}' is a list of texts, such as [\"one\", \"two\"].");
        }

        return [];
    }

    /// <summary>True or false; false where the key is not there.</summary>
    public bool Switch(string key)
    {
        var value = Take(key);
        if (value is not (null or bool))
        {
            Complain(key, $"'{key}' is true or false.");
        }

        return value is true;
    }

    /// <summary>A table within; null where there is none.</summary>
    public PlanTable? Table(string key)
    {
        var value = Take(key);
        if (value is not (null or TomlTable))
        {
            Complain(key, $"'{key}' is a table, such as {key} = {{ at_most = \"0.005 in\", source = \"…\" }}.");
        }

        return value is TomlTable table ? new PlanTable(text, PathOf(key), table) : null;
    }

    /// <summary>The tables <c>[[key]]</c>, in order.</summary>
    public IReadOnlyList<PlanTable> Tables(string key)
    {
        var value = Take(key);
        if (value is not (null or TomlTableArray))
        {
            Complain(key, $"'{key}' is a table for each, written [[{key}]].");
        }

        return value is TomlTableArray all ? [.. all.Select((table, place) => new PlanTable(text, $"{PathOf(key)}[{place}]", table))] : [];
    }

    /// <summary>Notes what is wrong with a key.</summary>
    public void Complain(string key, string sentence) => text.Complain(PathOf(key), sentence);

    /// <summary>Complains of every key that nobody asked for.</summary>
    public void RefuseTheRest()
    {
        foreach (var key in values.Keys.Where(key => !_asked.Contains(key)))
        {
            Complain(key, $"there is no key '{key}' here; known are {string.Join(", ", _asked.Order(StringComparer.Ordinal))}.");
        }
    }

    private string PathOf(string key) => path.Length == 0 ? key : $"{path}.{key}";

    private object? Take(string key)
    {
        _asked.Add(key);
        return values.TryGetValue(key, out var value) ? value : null;
    }

    [GeneratedRegex("^[a-z][a-z0-9-]{0,39}$", RegexOptions.CultureInvariant)]
    private static partial Regex CodeShape();
}

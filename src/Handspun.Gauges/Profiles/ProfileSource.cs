using Tomlyn.Syntax;

namespace Handspun.Gauges.Profiles;

/// <summary>The text of a profile, to say where in it something is wrong.</summary>
/// <param name="name">The profile.</param>
/// <param name="document">Its text, parsed.</param>
internal sealed class ProfileSource(string name, DocumentSyntax document)
{
    private readonly Dictionary<string, int> _lines = LinesOf(document);

    public List<string> Problems { get; } = [];

    /// <summary>Notes what is wrong with a key.</summary>
    /// <param name="key">The key, with the names of the tables that it stands in.</param>
    /// <param name="rule">What is wrong, as the end of a sentence that begins with the key.</param>
    public void Complain(string key, string rule) => Problems.Add($"{Where(key)}: '{key}' {rule}.");

    /// <summary>Notes a key that means nothing.</summary>
    public void Unknown(string key, IEnumerable<string> known) =>
        Problems.Add($"{Where(key)}: there is no key '{key}'; known here: {string.Join(", ", known.Order(StringComparer.Ordinal))}.");

    // A key that is missing is missed in its table.
    private string Where(string key) =>
        _lines.TryGetValue(key, out var line) || _lines.TryGetValue(key[..Math.Max(0, key.LastIndexOf('.'))], out line)
            ? $"Profile '{name}', line {line}"
            : $"Profile '{name}'";

    private static Dictionary<string, int> LinesOf(DocumentSyntax document)
    {
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        Add(lines, "", document.KeyValues);
        foreach (var table in document.Tables)
        {
            var path = Bare(table.Name);
            lines.TryAdd(path, table.Name?.Span.Start.Line + 1 ?? 0);
            Add(lines, path + ".", table.Items);
        }

        return lines;
    }

    private static void Add(Dictionary<string, int> lines, string path, IEnumerable<KeyValueSyntax> pairs)
    {
        foreach (var pair in pairs)
        {
            lines.TryAdd(path + Bare(pair.Key), pair.Span.Start.Line + 1);
        }
    }

    private static string Bare(KeySyntax? key) => key?.ToString()?.Trim().Replace("\"", "", StringComparison.Ordinal) ?? "";
}

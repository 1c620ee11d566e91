using Tomlyn.Syntax;

namespace Handspun.Jobs.Plans.Reading;

/// <summary>The text of a plan, to say where in it something is wrong.</summary>
/// <param name="code">The plan.</param>
/// <param name="document">Its text, parsed.</param>
internal sealed class PlanText(string code, DocumentSyntax document)
{
    private readonly Dictionary<string, int> _lines = LinesOf(document);

    /// <summary>All that is wrong so far.</summary>
    public List<PlanProblem> Problems { get; } = [];

    /// <summary>Notes what is wrong.</summary>
    /// <param name="key">The key, with the tables that it stands in, such as <c>step[2].after</c>; one that is missing is missed in its table.</param>
    /// <param name="sentence">What is wrong and what to do, beginning in lower case.</param>
    public void Complain(string key, string sentence) => Problems.Add(new(code, LineOf(key), key, sentence));

    /// <summary>The line of a key or of the table that misses it, from 1; null where it has none.</summary>
    public int? LineOf(string key)
    {
        for (var path = key; path.Length > 0; path = path[..Math.Max(0, path.LastIndexOf('.'))])
        {
            if (_lines.TryGetValue(path, out var line))
            {
                return line;
            }
        }

        return null;
    }

    private static Dictionary<string, int> LinesOf(DocumentSyntax document)
    {
        var (lines, counts) = (new Dictionary<string, int>(), new Dictionary<string, int>());
        Add(lines, "", document.KeyValues);
        foreach (var table in document.Tables)
        {
            var names = Bare(table.Name).Split('.');
            if (table is TableArraySyntax)
            {
                counts[names[0]] = counts.GetValueOrDefault(names[0], -1) + 1;
            }

            var path = counts.TryGetValue(names[0], out var place) ? string.Join('.', [$"{names[0]}[{place}]", .. names[1..]]) : string.Join('.', names);
            lines.TryAdd(path, (table.Name?.Span.Start.Line ?? 0) + 1);
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

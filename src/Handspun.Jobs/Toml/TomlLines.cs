using Tomlyn.Parsing;

namespace Handspun.Jobs.Toml;

/// <summary>Changes single values in a TOML text and leaves all else as somebody wrote it: comments, order, other keys.</summary>
public static class TomlLines
{
    /// <summary>The text with a key of its uppermost table set to a value.</summary>
    /// <param name="toml">A text that is TOML.</param>
    /// <param name="key">A bare key.</param>
    /// <param name="value">The value as TOML writes it; null takes the key out.</param>
    public static string Set(string toml, string key, string? value)
    {
        var document = SyntaxParser.ParseStrict(toml, "a file", validate: true);
        if (document.KeyValues.FirstOrDefault(pair => pair.Key?.ToString()?.Trim() == key) is { Key: { } named, Value: { } there })
        {
            var (start, end) = (there.Span.Start.Offset, there.Span.End.Offset + 1);
            return value is null ? Without(toml, named.Span.Start.Offset, end) : toml[..start] + value + toml[end..];
        }

        if (value is null)
        {
            return toml;
        }

        var newLine = toml.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var line = $"{key} = {value}{newLine}";
        if (document.Tables.FirstOrDefault() is { } table)
        {
            return toml.Insert(table.Span.Start.Offset, line + newLine);   // below a table's head it would be the table's
        }

        return toml.Length == 0 || toml.EndsWith('\n') ? toml + line : toml + newLine + line;
    }

    // The whole line goes, with what was noted behind the value.
    private static string Without(string toml, int start, int end)
    {
        var next = toml.IndexOf('\n', end);
        return toml[..start] + (next < 0 ? "" : toml[(next + 1)..]);
    }

    /// <summary>A text as TOML writes it, in quotes (TOML 1.0, basic strings).</summary>
    public static string Quoted(string text) => "\"" + string.Concat(text.Select(letter => letter switch
    {
        '"' => "\\\"",
        '\\' => "\\\\",
        '\n' => "\\n",
        '\t' => "\\t",
        < ' ' or '\u007f' => $"\\u{(int)letter:x4}",
        _ => letter.ToString(),
    })) + "\"";

    /// <summary>A list of texts as TOML writes it.</summary>
    public static string Quoted(IEnumerable<string> texts) => $"[{string.Join(", ", texts.Select(Quoted))}]";
}

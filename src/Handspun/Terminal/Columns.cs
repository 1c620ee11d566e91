namespace Handspun.Terminal;

/// <summary>Rows of text in columns that are as wide as they have to be.</summary>
internal static class Columns
{
    private const string Between = "  ";

    /// <summary>The rows, each as long as the others; the last column is not filled up.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<IReadOnlyList<string>> rows)
    {
        var widths = rows.Count == 0 ? [] : Enumerable.Range(0, rows.Max(row => row.Count)).Select(column => rows.Max(row => column < row.Count ? row[column].Length : 0)).ToArray();
        return [.. rows.Select(row => string.Join(Between, row.Select((cell, column) => column == row.Count - 1 ? cell : cell.PadRight(widths[column]))).TrimEnd())];
    }

    /// <summary>A sentence broken into lines of a width, each after the first set in.</summary>
    public static IEnumerable<string> Wrap(string sentence, int width, string setIn)
    {
        var line = "";
        foreach (var word in sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > setIn.Length && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = setIn + word;
            }
            else
            {
                line = line.Length == 0 ? word : line == setIn ? line + word : line + " " + word;
            }
        }

        yield return line;
    }
}

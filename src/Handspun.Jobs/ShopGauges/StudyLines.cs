using Handspun.Jobs.Lengths;

namespace Handspun.Jobs.ShopGauges;

/// <summary>A study as it is typed: a line for each mechanic and part, <c>name; part; readings</c>.</summary>
public static class StudyLines
{
    /// <summary>How to write one.</summary>
    public const string HowToWrite = "Write a line for each mechanic and part: name; part; readings. Such as 'A; 1; 21.412 21.413 21.412 mm'.";

    /// <summary>Reads the lines; blank ones are passed over.</summary>
    /// <param name="text">The lines.</param>
    /// <param name="sheet">What they say; null where they do not hold.</param>
    /// <returns>Which line does not hold, and what to write there; null where all do.</returns>
    public static string? Read(string? text, out StudySheet? sheet)
    {
        sheet = null;
        var cells = new Dictionary<(string Mechanic, string Part), IReadOnlyList<double>>();
        var number = 0;
        foreach (var line in (text ?? "").Split('\n'))
        {
            number++;
            if (string.IsNullOrWhiteSpace(line))
            {
                continue;
            }

            if (line.Split(';', 3, StringSplitOptions.TrimEntries) is not [{ Length: > 0 } mechanic, { Length: > 0 } part, var readings])
            {
                return $"Line {number} does not name a mechanic, a part and readings. {HowToWrite}";
            }

            if (ReadingsText.Read(readings, out var lengths) is { } problem)
            {
                return $"Line {number}: {problem}";
            }

            if (!cells.TryAdd((mechanic, part), [.. lengths.Select(length => length.Millimetres)]))
            {
                return $"Line {number}: {mechanic} and part {part} stand there twice. Write all trials in one line.";
            }
        }

        if (cells.Count == 0)
        {
            return HowToWrite;
        }

        string[] mechanics = [.. cells.Keys.Select(cell => cell.Mechanic).Distinct()];
        string[] parts = [.. cells.Keys.Select(cell => cell.Part).Distinct()];
        foreach (var mechanic in mechanics)
        {
            if (parts.FirstOrDefault(part => !cells.ContainsKey((mechanic, part))) is { } missing)
            {
                return $"{mechanic} did not measure part {missing}: everyone measures every part.";
            }
        }

        sheet = new StudySheet
        {
            Mechanics = mechanics,
            Parts = parts,
            ValuesMillimetres = [.. mechanics.Select(mechanic => (IReadOnlyList<IReadOnlyList<double>>)[.. parts.Select(part => cells[(mechanic, part)])])],
        };
        return sheet.Problem();
    }
}

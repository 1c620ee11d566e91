using System.Globalization;
using System.Text.RegularExpressions;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Lengths;

/// <summary>Several readings as a person writes them: numbers apart by spaces, each with its unit or one unit behind the last.</summary>
public static partial class ReadingsText
{
    /// <summary>How to write them.</summary>
    public const string HowToWrite = "Write the readings with spaces between them and the unit behind the last, such as '5.001 5.002 5.001 mm'.";

    /// <summary>Reads them.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="lengths">The readings; empty where they do not hold.</param>
    /// <returns>What does not hold and how to write it; null where all is well.</returns>
    public static string? Read(string? text, out IReadOnlyList<Length> lengths)
    {
        lengths = [];
        var (found, place, last) = (new List<(double Number, string Unit)>(), 0, "");
        var rest = (text ?? "").Trim();
        foreach (Match match in Reading().Matches(rest))
        {
            if (match.Index != place)
            {
                break;
            }

            place = match.Index + match.Length;
            last = match.Groups["unit"].Value;
            found.Add((Number(match), last));
        }

        if (place != rest.Length || found.Count == 0)
        {
            return $"'{Shown(rest, place)}' is no reading. {HowToWrite}";
        }

        if (last.Length == 0)
        {
            return $"The readings have no unit. {HowToWrite}";
        }

        lengths = [.. found.Select(reading => In(reading.Number, reading.Unit.Length > 0 ? reading.Unit : last))];
        return null;
    }

    private static string Shown(string text, int place)
    {
        var left = text[Math.Min(place, text.Length)..].Trim();
        return left.Length > 20 ? left[..20] + "…" : left;
    }

    private static double Number(Match match) =>
        double.Parse(match.Groups["number"].Value.Replace(',', '.').Replace('\u2212', '-'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static Length In(double number, string unit) =>
        unit.Equals("mm", StringComparison.OrdinalIgnoreCase) ? Length.FromMillimetres(number) : Length.FromInches(number);

    [GeneratedRegex("""[\s;]*(?<number>[+\-\u2212]?\d{0,6}[.,]?\d{1,9})\s*(?<unit>mm|inch|in|"|)(?=[\s;]|$)[\s;]*""", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Reading();
}

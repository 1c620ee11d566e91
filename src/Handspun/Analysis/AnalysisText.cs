using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;

namespace Handspun.Analysis;

/// <summary>An answer for a person at a terminal.</summary>
internal static class AnalysisText
{
    /// <summary>A few lines.</summary>
    public static string Of(AnalysisAnswer answer, LengthUnit unit)
    {
        if (answer.TirMm is not { } tir || answer.TirU95Mm is not { } uncertainty)
        {
            return $"{answer.File}{Environment.NewLine}  no runout: {answer.Reason}";
        }

        var about = string.Create(CultureInfo.InvariantCulture, $"{answer.Turns:0.0} turns, {answer.Readings} readings");
        var high = answer.HighSpotDeg is { } angle
            ? string.Create(CultureInfo.InvariantCulture, $"; high spot {angle:0}° from {answer.AngleReference?.Replace('-', ' ')}")
            : "";
        var lines = new List<string>
        {
            answer.File,
            $"  runout {LengthText.WithUncertainty(Length.FromMillimetres(tir), Length.FromMillimetres(uncertainty), unit)} (total indicated, k = 2), {about}{high}",
        };
        if (answer.Verdict is not null)
        {
            lines.Add($"  {(answer.Verdict switch { "within" => "within the limit", "over" => "over the limit", _ => "too close to call" })}{LimitOf(answer, unit)}");
        }

        if (answer.Warnings.Count > 0)
        {
            lines.Add($"  mind: {string.Join(", ", answer.Warnings)}");
        }

        return string.Join(Environment.NewLine, lines);
    }

    private static string LimitOf(AnalysisAnswer answer, LengthUnit unit) => answer.Limit is { } limit
        ? $" ({Jobs.Limits.LimitSentence.Bounds(new Jobs.Limits.Limit { LowerMillimetres = limit.LowerMm, UpperMillimetres = limit.UpperMm, Source = limit.Source }, unit)}; {limit.Source})"
        : "";
}

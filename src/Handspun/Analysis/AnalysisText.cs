using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Quantities;

namespace Handspun.Analysis;

/// <summary>An answer for a person at a terminal.</summary>
internal static class AnalysisText
{
    /// <summary>A few lines.</summary>
    public static string Of(AnalysisAnswer answer, LengthUnit unit)
    {
        if (Headline(answer, unit) is not { } headline)
        {
            return $"{answer.File}{Environment.NewLine}  no result: {answer.Reason}";
        }

        var lines = new List<string> { answer.File, $"  {headline}" };
        if (answer.Verdict is not null)
        {
            lines.Add($"  {(answer.Verdict switch { "within" => "within the limit", "over" => "over the limit", _ => "too close to call" })}{LimitOf(answer, unit)}");
        }

        lines.AddRange(FormOf(answer, unit).Select(line => $"  {line}"));
        if (answer.Warnings.Count > 0)
        {
            lines.Add($"  mind: {string.Join(", ", answer.Warnings)}");
        }

        return string.Join(Environment.NewLine, lines);
    }

    private static string? Headline(AnalysisAnswer answer, LengthUnit unit)
    {
        string Sure(double value, double? expanded) => LengthText.WithUncertainty(Length.FromMillimetres(value), Length.FromMillimetres(expanded ?? 0), unit);
        var high = answer.HighSpotDeg is { } angle
            ? string.Create(CultureInfo.InvariantCulture, $"; high spot {angle:0}° from {answer.AngleReference?.Replace('-', ' ')}")
            : "";
        return answer switch
        {
            { TirMm: { } tir } => string.Create(
                CultureInfo.InvariantCulture,
                $"runout {Sure(tir, answer.TirU95Mm)} (total indicated, k = 2), {answer.Turns:0.0} turns, {answer.Readings} readings{high}"),
            { EndPlayMm: { } play } => $"end play {Sure(play, answer.EndPlayU95Mm)} (k = 2), {answer.Cycles} cycles, {answer.Readings} readings",
            { SizeMm: { } size } => $"{What(answer)} {Sure(size, answer.SizeU95Mm)} (k = 2), {answer.Passes} passes, {answer.Readings} readings",
            { DeviationMm: { } deviation } => $"{What(answer)} {Sure(deviation, answer.DeviationU95Mm)} from the gauge's setting (k = 2), {answer.Passes} passes, {answer.Readings} readings",
            { MaxLiftMm: { } lift } => $"lobe lift {Sure(lift, answer.MaxLiftU95Mm)} (k = 2){Angles(answer)}, {answer.Readings} readings",
            _ => null,
        };
    }

    private static string What(AnalysisAnswer answer) => KindOfPoint.Of(answer.Point) == PointKind.OutsideSize ? "size across" : "bore";

    private static IEnumerable<string> FormOf(AnalysisAnswer answer, LengthUnit unit)
    {
        string In(double millimetres) => LengthText.Of(Length.FromMillimetres(millimetres), unit);
        if (answer is { EccentricityMm: { } off, EccentricityU95Mm: { } doubt, EccentricityTowardDeg: { } toward })
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"off centre by {LengthText.WithUncertainty(Length.FromMillimetres(off), Length.FromMillimetres(doubt), unit)} toward {toward:0}°");
        }

        (string Name, double? Value)[] circles =
        [
            ("least squares", answer.RoundnessMm),
            ("minimum zone", answer.ZoneRoundnessMm),
            ("smallest circle around", answer.CircumscribedRoundnessMm),
            ("largest circle inside", answer.InscribedRoundnessMm),
        ];
        if (circles.Any(circle => circle.Value is not null))
        {
            yield return "out of round " + string.Join(", ", circles.Where(circle => circle.Value is not null).Select(circle => $"{In(circle.Value!.Value)} ({circle.Name})"));
        }

        if (answer.TirByTurnMm is { Count: > 1 } turns)
        {
            yield return $"runout turn by turn {string.Join(", ", turns.Select(In))}";
        }

        foreach (var fault in answer.Faults ?? [])
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"at {fault.AtDeg:0}°: {In(fault.HeightMm)}, {fault.WidthDeg:0}° wide, on {fault.SeenOnTurns} of {fault.OfTurns} turns. {fault.Sentence}");
        }

        if (answer is { Faults.Count: > 0, TirWithFaultsMm: { } all })
        {
            yield return $"runout with that in it {In(all)}";
        }
    }

    private static string Angles(AnalysisAnswer answer) => answer is { CentrelineDeg: { } centre, DurationDeg: { } duration, CheckingLiftMm: { } checking }
        ? string.Create(
            CultureInfo.InvariantCulture,
            $", centreline {centre:0.0}° ± {answer.CentrelineU95Deg:0.0}° from {answer.AngleReference?.Replace('-', ' ')}, open {duration:0.0}° ± {answer.DurationU95Deg:0.0}° at {checking:0.000} mm, degrees of the {answer.DegreesOf}")
        : "";

    private static string LimitOf(AnalysisAnswer answer, LengthUnit unit) => answer.Limit is { } limit
        ? $" ({Jobs.Limits.LimitSentence.Bounds(new Jobs.Limits.Limit { LowerMillimetres = limit.LowerMm, UpperMillimetres = limit.UpperMm, Source = limit.Source }, unit)}; {limit.Source})"
        : "";
}

using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Runout;

namespace Handspun.Analysis;

/// <summary>What one file says, in the order in which the keys are written. What does not apply is null.</summary>
internal sealed record AnalysisAnswer
{
    public required string File { get; init; }

    public string? Point { get; init; }

    public required string Status { get; init; }

    public int Readings { get; init; }

    public double? Turns { get; init; }

    public double? TirMm { get; init; }

    public double? TirU95Mm { get; init; }

    public double? EccentricityMm { get; init; }

    public double? RoundnessMm { get; init; }

    public double? HighSpotDeg { get; init; }

    public double? HighSpotU95Deg { get; init; }

    public double? LowSpotDeg { get; init; }

    public string? Verdict { get; init; }

    public required IReadOnlyList<string> Warnings { get; init; }

    public string? AngleReference { get; init; }

    public double? ProbabilityOver { get; init; }

    public LimitOfAnswer? Limit { get; init; }

    /// <summary>Why there is no answer, and what to do; null where there is one.</summary>
    public string? Reason { get; init; }

    /// <summary>A file that could not be read.</summary>
    public static AnalysisAnswer Rejected(string file, string reason) => new() { File = file, Status = "rejected", Warnings = [], Reason = reason };

    /// <summary>Measures what was read from a file.</summary>
    /// <param name="file">The file's name, as it was given.</param>
    /// <param name="read">What it holds.</param>
    /// <param name="limit">What the runout is held against; null takes what the point came with, if anything.</param>
    public static AnalysisAnswer Of(string file, CaptureFile read, Limit? limit)
    {
        var result = RunoutMethod.Measure(read.Capture, read.Gauge, new RunoutSettings());
        var against = limit ?? PointCatalogue.Find(read.Point)?.ShippedLimit;
        var decision = against is not null && result is { Tir: { } tir, TirU95: { } uncertainty }
            ? ConformityRule.Decide(tir, uncertainty, against.Tolerance)
            : (ConformityDecision?)null;
        return new AnalysisAnswer
        {
            File = file,
            Point = read.Point,
            Status = result.Status == RunoutStatus.Measured ? "ok" : "rejected",
            Readings = result.Readings,
            Turns = Rounded(result.Turns, 4),
            TirMm = Rounded(result.Tir?.Millimetres, 7),
            TirU95Mm = Rounded(result.TirU95?.Millimetres, 7),
            EccentricityMm = Rounded(result.Eccentricity?.Millimetres, 7),
            RoundnessMm = Rounded(result.Roundness?.Millimetres, 7),
            HighSpotDeg = Rounded(result.HighSpot?.Degrees, 3),
            HighSpotU95Deg = Rounded(result.HighSpotU95Degrees, 3),
            LowSpotDeg = Rounded(result.LowSpot?.Degrees, 3),
            Verdict = decision is { } decided ? VerdictCode.Of(decided.Verdict) : null,
            Warnings = [.. WarningCodes(result, decision is not null ? against : null)],
            AngleReference = result.HighSpot is null ? null : RunoutCodes.Of(result.Reference),
            ProbabilityOver = Rounded(decision?.ProbabilityOutside, 6),
            Limit = against is null ? null : new(against.LowerMillimetres, against.UpperMillimetres, against.Source),
            Reason = result.Missing,
        };
    }

    private static IEnumerable<string> WarningCodes(RunoutResult result, Limit? limit) =>
        [.. result.Warnings.Select(RunoutWarningText.Code), .. limit is { Confirmed: false } ? [RecordWarning.LimitUnconfirmed.Code] : Array.Empty<string>()];

    private static double? Rounded(double? value, int decimals) => value is { } number ? Math.Round(number, decimals) : null;
}

/// <summary>The limit of an answer.</summary>
internal sealed record LimitOfAnswer(double? LowerMm, double? UpperMm, string Source);

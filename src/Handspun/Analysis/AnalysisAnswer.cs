using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using Handspun.Wire;

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

    public double? EndPlayMm { get; init; }

    public double? EndPlayU95Mm { get; init; }

    public int? Cycles { get; init; }

    public double? DeviationMm { get; init; }

    public double? DeviationU95Mm { get; init; }

    public int? Passes { get; init; }

    public double? SizeMm { get; init; }

    public double? SizeU95Mm { get; init; }

    public double? MaxLiftMm { get; init; }

    public double? MaxLiftU95Mm { get; init; }

    public double? CentrelineDeg { get; init; }

    public double? CentrelineU95Deg { get; init; }

    public double? DurationDeg { get; init; }

    public double? DurationU95Deg { get; init; }

    /// <summary>Of which shaft the degrees of a lift curve are: <c>crank</c> or <c>cam</c>, the one that the file's angle is told of.</summary>
    public string? DegreesOf { get; init; }

    public double? CheckingLiftMm { get; init; }

    public string? AngleReference { get; init; }

    public double? EccentricityU95Mm { get; init; }

    public double? EccentricityTowardDeg { get; init; }

    /// <summary>Null where the angle cannot be held against that of another capture.</summary>
    public double? EccentricityTowardU95Deg { get; init; }

    public double? ZoneRoundnessMm { get; init; }

    public double? CircumscribedRoundnessMm { get; init; }

    public double? InscribedRoundnessMm { get; init; }

    public IReadOnlyList<double>? TirByTurnMm { get; init; }

    public double? TirWithFaultsMm { get; init; }

    public IReadOnlyList<FaultOfAnswer>? Faults { get; init; }

    public double? ProbabilityOver { get; init; }

    public LimitOfAnswer? Limit { get; init; }

    /// <summary>The gauge's newest check before the capture; null where there was none, or the file does not say.</summary>
    public GaugeCheckMessage? GaugeCheck { get; init; }

    /// <summary>Why there is no answer, and what to do; null where there is one.</summary>
    public string? Reason { get; init; }

    /// <summary>A file that could not be read.</summary>
    public static AnalysisAnswer Rejected(string file, string reason) => new() { File = file, Status = "rejected", Warnings = [], Reason = reason };

    /// <summary>Measures what was read from a file, by the method of its point.</summary>
    /// <param name="file">The file's name, as it was given.</param>
    /// <param name="read">What it holds.</param>
    /// <param name="limit">What the result is held against; null takes what the capture was held against, else what the point came with, if anything.</param>
    public static AnalysisAnswer Of(string file, CaptureFile read, Limit? limit)
    {
        var against = limit ?? read.Limit ?? PointCatalogue.Find(read.Point)?.ShippedLimit;
        var answer = read.Kind switch
        {
            PointKind.EndPlay => EndPlayAnalysis.Of(file, read, against),
            PointKind.Bore or PointKind.OutsideSize => BoreAnalysis.Of(file, read, against),
            PointKind.LiftCurve => LiftAnalysis.Of(file, read, against),
            _ => RunoutAnalysis.Of(file, read, against),
        };
        return answer with { Warnings = [.. answer.Warnings, .. read.GaugeWarnings.Select(warning => warning.Code)], GaugeCheck = GaugeCheckMessage.Of(read.LastCheck) };
    }

    /// <summary>The same answer held against a limit, with the warnings of the method.</summary>
    /// <param name="value">What is held against it; null where there is no result.</param>
    /// <param name="expanded">Its expanded uncertainty.</param>
    /// <param name="limit">The limit; null where there is none.</param>
    /// <param name="warnings">The method's codes.</param>
    public AnalysisAnswer Against(Length? value, Length? expanded, Limit? limit, IEnumerable<string> warnings)
    {
        var decision = limit is not null && value is { } known && expanded is { } doubt
            ? ConformityRule.Decide(known, doubt, limit.Tolerance)
            : (ConformityDecision?)null;
        return this with
        {
            Verdict = decision is { } decided ? VerdictCode.Of(decided.Verdict) : null,
            Warnings = [.. warnings, .. decision is not null && limit is { Confirmed: false } ? [RecordWarning.LimitUnconfirmed.Code] : Array.Empty<string>()],
            ProbabilityOver = Rounded(decision?.ProbabilityOutside, 6),
            Limit = limit is null ? null : new(limit.LowerMillimetres, limit.UpperMillimetres, limit.Source),
        };
    }

    /// <summary>A length as it is written, to a tenth of a nanometre.</summary>
    public static double? Rounded(Length? length) => Rounded(length?.Millimetres, 7);

    /// <summary>A number with so many decimals; null stays null.</summary>
    public static double? Rounded(double? value, int decimals) => value is { } number ? Math.Round(number, decimals) : null;
}

/// <summary>A narrow place on a shaft that came back every turn.</summary>
internal sealed record FaultOfAnswer(string Kind, double AtDeg, double WidthDeg, double HeightMm, double HeightU95Mm, int SeenOnTurns, int OfTurns, string Sentence);

/// <summary>The limit of an answer.</summary>
internal sealed record LimitOfAnswer(double? LowerMm, double? UpperMm, string Source);

using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Wire;

/// <summary>A limit.</summary>
internal sealed record LimitMessage(double? LowerMm, double? UpperMm, string Source, bool Confirmed, string? ConfirmedBy)
{
    public static LimitMessage? Of(Limit? limit) => limit is null
        ? null
        : new(limit.LowerMillimetres, limit.UpperMillimetres, limit.Source, limit.Confirmed, limit.ConfirmedBy);
}

/// <summary>A record's result.</summary>
internal sealed record ResultMessage
{
    public required string Record { get; init; }

    public required string Job { get; init; }

    public required string Point { get; init; }

    public required string Capture { get; init; }

    public required string Gauge { get; init; }

    public required DateTimeOffset At { get; init; }

    public required string Status { get; init; }

    public required string Ended { get; init; }

    public int Readings { get; init; }

    public int Rejected { get; init; }

    public double Turns { get; init; }

    public double? TirMm { get; init; }

    public double? TirU95Mm { get; init; }

    public double? EccentricityMm { get; init; }

    public double? RoundnessMm { get; init; }

    public double? HighSpotDeg { get; init; }

    public double? HighSpotU95Deg { get; init; }

    public double? LowSpotDeg { get; init; }

    public string? AngleReference { get; init; }

    public string? Verdict { get; init; }

    public double? ProbabilityOver { get; init; }

    public LimitMessage? Limit { get; init; }

    public required IReadOnlyList<RecordWarning> Warnings { get; init; }

    public string? Missing { get; init; }

    public required string Sentence { get; init; }

    public static ResultMessage Of(string job, string point, CaptureRecord record, LengthUnit unit) => new()
    {
        Record = record.Id,
        Job = job,
        Point = point,
        Capture = record.Id,
        Gauge = record.Gauge.Name,
        At = record.At,
        Status = RecordCodes.Of(record.Status),
        Ended = RecordCodes.Of(record.Ending),
        Readings = record.Figures.Readings,
        Rejected = record.Figures.Rejected,
        Turns = Math.Round(record.Figures.Turns, 3),
        TirMm = Rounded(record.Figures.TirMillimetres, 6),
        TirU95Mm = Rounded(record.Figures.TirU95Millimetres, 6),
        EccentricityMm = Rounded(record.Figures.EccentricityMillimetres, 6),
        RoundnessMm = Rounded(record.Figures.RoundnessMillimetres, 6),
        HighSpotDeg = Rounded(record.Figures.HighSpotDegrees, 2),
        HighSpotU95Deg = Rounded(record.Figures.HighSpotU95Degrees, 2),
        LowSpotDeg = Rounded(record.Figures.LowSpotDegrees, 2),
        AngleReference = record.Figures.AngleReference,
        Verdict = record.Verdict is { } verdict ? VerdictCode.Of(verdict) : null,
        ProbabilityOver = Rounded(record.ProbabilityOutside, 6),
        Limit = LimitMessage.Of(record.Limit),
        Warnings = record.Warnings,
        Missing = record.Missing,
        Sentence = RecordSentence.Of(record, unit),
    };

    private static double? Rounded(double? value, int decimals) => value is { } number ? Math.Round(number, decimals) : null;
}

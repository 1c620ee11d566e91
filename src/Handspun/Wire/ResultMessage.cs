using System.Text.Json;
using System.Text.Json.Serialization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Wire;

/// <summary>A limit.</summary>
internal sealed record LimitMessage(double? LowerMm, double? UpperMm, string Source, bool Confirmed, string? ConfirmedBy, DateTimeOffset? ConfirmedAt, string? Drive, string? Age)
{
    public static LimitMessage? Of(Limit? limit) => limit is null
        ? null
        : new(limit.LowerMillimetres, limit.UpperMillimetres, limit.Source, limit.Confirmed, limit.ConfirmedBy, limit.ConfirmedAt, LimitCondition.Of(limit.Drive), LimitCondition.Of(limit.Age));
}

/// <summary>A record's result.</summary>
internal sealed record ResultMessage
{
    public required string Record { get; init; }

    public required string Job { get; init; }

    public required string Point { get; init; }

    public required string Kind { get; init; }

    public required string Capture { get; init; }

    public required string Gauge { get; init; }

    /// <summary>The gauge's newest check at that time; null where it was never checked.</summary>
    public GaugeCheckMessage? GaugeCheck { get; init; }

    public required DateTimeOffset At { get; init; }

    public required string Status { get; init; }

    public required string Ended { get; init; }

    public required string ValueTitle { get; init; }

    public double? ValueMm { get; init; }

    public double? ValueU95Mm { get; init; }

    public string? Verdict { get; init; }

    public double? ProbabilityOver { get; init; }

    public LimitMessage? Limit { get; init; }

    public required IReadOnlyList<RecordWarning> Warnings { get; init; }

    public string? Missing { get; init; }

    public required string Sentence { get; init; }

    /// <summary>What only this kind of measurement found.</summary>
    [JsonExtensionData]
    public Dictionary<string, JsonElement> Figures { get; init; } = [];

    public static ResultMessage Of(string job, string point, CaptureRecord record, LengthUnit unit) => new()
    {
        Record = record.Id,
        Job = job,
        Point = point,
        Kind = PointKindCodes.Of(record.Figures.Kind),
        Capture = record.Id,
        Gauge = record.Gauge.Name,
        GaugeCheck = GaugeCheckMessage.Of(record.Gauge.LastCheck),
        At = record.At,
        Status = RecordCodes.Of(record.Status),
        Ended = RecordCodes.Of(record.Ending),
        ValueTitle = record.Figures.ValueTitle,
        ValueMm = Rounded(record.Figures.Value?.Millimetres, 6),
        ValueU95Mm = Rounded(record.Figures.ValueU95?.Millimetres, 6),
        Verdict = record.Verdict is { } verdict ? VerdictCode.Of(verdict) : null,
        ProbabilityOver = Rounded(record.ProbabilityOutside, 6),
        Limit = LimitMessage.Of(record.Limit),
        Warnings = record.Warnings,
        Missing = record.Missing,
        Sentence = RecordSentence.Of(record, unit),
        Figures = FlatFigures.Of(record.Figures),
    };

    private static double? Rounded(double? value, int decimals) => value is { } number ? Math.Round(number, decimals) : null;
}

using System.Text.Json;
using System.Text.Json.Serialization;
using Handspun.Capture.Progress;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;

namespace Handspun.Wire;

/// <summary>How far a capture has come.</summary>
internal sealed record ProgressMessage
{
    public required string Capture { get; init; }

    public required string Job { get; init; }

    public required string Point { get; init; }

    public required string Kind { get; init; }

    public required string Gauge { get; init; }

    public required string Phase { get; init; }

    public double? Started { get; init; }

    public double Now { get; init; }

    public int Readings { get; init; }

    /// <summary>Turns, cycles or passes.</summary>
    public double Count { get; init; }

    public double Wanted { get; init; }

    public double? ValueMm { get; init; }

    public double? ValueU95Mm { get; init; }

    public required string Sentence { get; init; }

    /// <summary>What makes the result so far less sure than it looks.</summary>
    public required IReadOnlyList<RecordWarning> Warnings { get; init; }

    /// <summary>What only this kind of measurement tells.</summary>
    [JsonExtensionData]
    public Dictionary<string, JsonElement> Live { get; init; } = [];

    public static ProgressMessage Of(CaptureProgress progress) => new()
    {
        Capture = progress.Capture,
        Job = progress.Task.Job,
        Point = progress.Task.Point,
        Kind = PointKindCodes.Of(progress.Task.Kind),
        Gauge = progress.Task.Gauge.ToString(),
        Phase = Code(progress.Phase),
        Started = progress.Started?.TotalSeconds,
        Now = progress.Now.TotalSeconds,
        Readings = progress.Readings,
        Count = Math.Round(progress.Count, 3),
        Wanted = progress.Task.Wanted,
        ValueMm = Rounded(progress.Value),
        ValueU95Mm = Rounded(progress.ValueU95),
        Sentence = progress.Sentence,
        Warnings = progress.Warnings,
        Live = FlatFigures.Of(progress.Live),
    };

    private static double? Rounded(Length? value) => value is { } length ? Math.Round(length.Millimetres, 6) : null;

    private static string Code(CapturePhase phase) => phase switch
    {
        CapturePhase.Waiting => "waiting",
        CapturePhase.Running => "running",
        CapturePhase.Ended => "ended",
        _ => "stood-down",
    };
}

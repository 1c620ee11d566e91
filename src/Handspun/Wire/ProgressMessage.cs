using Handspun.Capture.Progress;

namespace Handspun.Wire;

/// <summary>How far a capture has come.</summary>
internal sealed record ProgressMessage
{
    public required string Capture { get; init; }

    public required string Job { get; init; }

    public required string Point { get; init; }

    public required string Gauge { get; init; }

    public required string Phase { get; init; }

    public double? Started { get; init; }

    public double Now { get; init; }

    public double Turns { get; init; }

    public double TurnsWanted { get; init; }

    public double TurnsPerS { get; init; }

    public int Readings { get; init; }

    public double ReadingsPerTurn { get; init; }

    public double? TirMm { get; init; }

    public double? TirU95Mm { get; init; }

    public required string Sentence { get; init; }

    public static ProgressMessage Of(CaptureProgress progress) => new()
    {
        Capture = progress.Capture,
        Job = progress.Task.Job,
        Point = progress.Task.Point,
        Gauge = progress.Task.Gauge.ToString(),
        Phase = Code(progress.Phase),
        Started = progress.Started?.TotalSeconds,
        Now = progress.Now.TotalSeconds,
        Turns = Math.Round(progress.Turns, 3),
        TurnsWanted = progress.Task.TurnsWanted,
        TurnsPerS = Math.Round(progress.TurnsPerSecond, 3),
        Readings = progress.Readings,
        ReadingsPerTurn = Math.Round(progress.ReadingsPerTurn, 1),
        TirMm = Rounded(progress.Tir?.Millimetres),
        TirU95Mm = Rounded(progress.TirU95?.Millimetres),
        Sentence = progress.Sentence,
    };

    private static double? Rounded(double? millimetres) => millimetres is { } value ? Math.Round(value, 6) : null;

    private static string Code(CapturePhase phase) => phase switch
    {
        CapturePhase.Waiting => "waiting",
        CapturePhase.Turning => "turning",
        CapturePhase.Ended => "ended",
        _ => "stood-down",
    };
}

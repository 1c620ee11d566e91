using Handspun.Capture.Bays;
using Handspun.Metrology.Quantities;

namespace Handspun.Capture.Progress;

/// <summary>What a bay is doing with its point.</summary>
public enum CapturePhase
{
    /// <summary>It waits for the shaft to turn.</summary>
    Waiting,

    /// <summary>The shaft turns and the capture is running.</summary>
    Turning,

    /// <summary>The capture has ended; its record follows.</summary>
    Ended,

    /// <summary>The point was let go.</summary>
    StoodDown,
}

/// <summary>How far a capture has come.</summary>
public sealed record CaptureProgress
{
    /// <summary>The capture's name.</summary>
    public required string Capture { get; init; }

    /// <summary>What is measured.</summary>
    public required BayTask Task { get; init; }

    /// <summary>What the bay is doing.</summary>
    public required CapturePhase Phase { get; init; }

    /// <summary>Where the capture starts on the gauge clock; null while waiting.</summary>
    public TimeSpan? Started { get; init; }

    /// <summary>The newest reading's time on the gauge clock.</summary>
    public TimeSpan Now { get; init; }

    /// <summary>Turns so far.</summary>
    public double Turns { get; init; }

    /// <summary>Turns a second now.</summary>
    public double TurnsPerSecond { get; init; }

    /// <summary>Readings so far.</summary>
    public int Readings { get; init; }

    /// <summary>Readings that one turn gets at this speed; 0 where it is not known.</summary>
    public double ReadingsPerTurn { get; init; }

    /// <summary>Runout so far; null before there was one whole turn.</summary>
    public Length? Tir { get; init; }

    /// <summary>Its expanded uncertainty.</summary>
    public Length? TirU95 { get; init; }

    /// <summary>What to do, in one plain sentence.</summary>
    public required string Sentence { get; init; }
}

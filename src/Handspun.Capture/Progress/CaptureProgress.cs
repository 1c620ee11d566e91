using Handspun.Capture.Bays;
using Handspun.Capture.Methods;
using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;

namespace Handspun.Capture.Progress;

/// <summary>What a bay is doing with its point.</summary>
public enum CapturePhase
{
    /// <summary>It waits for something to move under the gauge.</summary>
    Waiting,

    /// <summary>The capture is running.</summary>
    Running,

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

    /// <summary>Readings so far.</summary>
    public int Readings { get; init; }

    /// <summary>Turns, cycles or passes so far.</summary>
    public double Count { get; init; }

    /// <summary>The value that is held against the limit, so far; null before there is one.</summary>
    public Length? Value { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public Length? ValueU95 { get; init; }

    /// <summary>What makes the result so far less sure than it looks.</summary>
    public IReadOnlyList<RecordWarning> Warnings { get; init; } = [];

    /// <summary>What only this kind of measurement tells.</summary>
    public required LiveFigures Live { get; init; }

    /// <summary>What to do, in one plain sentence or two.</summary>
    public required string Sentence { get; init; }
}

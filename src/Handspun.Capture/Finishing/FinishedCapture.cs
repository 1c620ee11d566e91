using Handspun.Capture.Bays;
using Handspun.Capture.Methods;
using Handspun.Gauges.Listening;
using Handspun.Jobs.Records;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Finishing;

/// <summary>A capture that has ended, with all that a record of it needs.</summary>
public sealed record FinishedCapture
{
    /// <summary>The capture's name.</summary>
    public required string Id { get; init; }

    /// <summary>What was measured.</summary>
    public required BayTask Task { get; init; }

    /// <summary>The gauge.</summary>
    public required GaugeSetup Gauge { get; init; }

    /// <summary>When it started, by the wall clock.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Its first moment on the gauge clock.</summary>
    public required TimeSpan From { get; init; }

    /// <summary>Its last moment on the gauge clock.</summary>
    public required TimeSpan To { get; init; }

    /// <summary>Why it ended.</summary>
    public required CaptureEnding Ending { get; init; }

    /// <summary>The readings: times in seconds from <see cref="From"/>, values in millimetres.</summary>
    public required RotationCapture Readings { get; init; }

    /// <summary>What they say.</summary>
    public required CaptureFinding Finding { get; init; }

    /// <summary>Whether the gauge was gone for a while.</summary>
    public bool GaugeGap { get; init; }

    /// <summary>Lines that were no readings.</summary>
    public long Unreadable { get; init; }

    /// <summary>Keeps the gauge's running journal whole; to be disposed when the capture has been cut out of it. Null where nothing runs any more.</summary>
    public IDisposable? JournalHold { get; init; }
}

namespace Handspun.Capture.Methods;

/// <summary>What is said of one kind of measurement, whatever the readings are.</summary>
public sealed record MethodWords
{
    /// <summary>The state while the bay waits, such as <c>Waiting for the shaft to turn</c>.</summary>
    public required string Waiting { get; init; }

    /// <summary>The state while the capture runs, such as <c>Turning</c>.</summary>
    public required string Running { get; init; }

    /// <summary>The state while a result is shown, such as <c>Turn again for a second record</c>.</summary>
    public required string Again { get; init; }

    /// <summary>What the value is called while it still changes, such as <c>Runout so far</c>.</summary>
    public required string SoFar { get; init; }

    /// <summary>What is counted, such as <c>turns</c>.</summary>
    public required string Counted { get; init; }

    /// <summary>What to do to start, in one sentence or two.</summary>
    public required string HowToStart { get; init; }

    /// <summary>What to do for another record, in one sentence.</summary>
    public required string HowToRepeat { get; init; }

    /// <summary>What to do after a touch that was no measurement, in one sentence or two.</summary>
    public required string AfterTouch { get; init; }

    /// <summary>What to do while the gauge is gone, in one sentence.</summary>
    public required string GaugeGone { get; init; }

    /// <summary>What to do when there is enough, in one sentence or two.</summary>
    public required string Enough { get; init; }

    /// <summary>What to do where a capture can be ended, marked or started only once something moves, in one sentence.</summary>
    public required string NotRunning { get; init; }
}

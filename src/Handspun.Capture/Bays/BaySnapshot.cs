using Handspun.Capture.Progress;

namespace Handspun.Capture.Bays;

/// <summary>One point of a bay at one moment, for a screen that opens now.</summary>
/// <param name="Task">What it measures; null where it is idle.</param>
/// <param name="Progress">How far it has come; null where it is idle.</param>
/// <param name="TraceSeconds">Times of the newest readings of its gauge, on the gauge clock.</param>
/// <param name="TraceMillimetres">The readings.</param>
public sealed record BaySnapshot(BayTask? Task, CaptureProgress? Progress, IReadOnlyList<double> TraceSeconds, IReadOnlyList<double> TraceMillimetres)
{
    /// <summary>A bay, or a gauge of it, that has no point.</summary>
    public static BaySnapshot Idle { get; } = new(null, null, [], []);
}

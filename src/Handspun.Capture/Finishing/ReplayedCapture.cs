using Handspun.Gauges.Journal;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Finishing;

/// <summary>A capture out of its journal, as the methods take it.</summary>
public static class ReplayedCapture
{
    /// <summary>The readings, pulses and marks of a replayed journal.</summary>
    /// <param name="replay">The journal.</param>
    /// <param name="zero">The moment on the gauge clock from which the capture's times count.</param>
    public static RotationCapture Of(JournalReplay replay, TimeSpan zero) => new()
    {
        Seconds = replay.Readings.Select(reading => (reading.At - zero).TotalSeconds).ToArray(),
        Millimetres = replay.Readings.Select(reading => reading.Millimetres).ToArray(),
        IndexSeconds = replay.Pulses.Select(pulse => (pulse - zero).TotalSeconds).ToArray(),
        TurnsPerIndex = replay.TurnsPerPulse,
        MarkSeconds = replay.Marks.Select(mark => (mark - zero).TotalSeconds).ToArray(),
    };
}

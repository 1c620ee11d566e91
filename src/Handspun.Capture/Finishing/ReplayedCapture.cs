using Handspun.Capture.Methods.Runout;
using Handspun.Gauges.Journal;
using Handspun.Jobs.Points;
using Handspun.Metrology.Motion;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Finishing;

/// <summary>A capture out of its journal, as the methods take it.</summary>
public static class ReplayedCapture
{
    /// <summary>The readings, pulses and marks of a replayed journal.</summary>
    /// <param name="replay">The journal.</param>
    /// <param name="zero">The moment on the gauge clock from which the capture's times count.</param>
    /// <param name="setup">What was said of the point; null where nothing was.</param>
    public static RotationCapture Of(JournalReplay replay, TimeSpan zero, PointSetup? setup = null) => IndicatorStand.Readings(AsShown(replay, zero), setup);

    /// <summary>When readings were taken: as they arrived, or by the gauge's even clock where its profile states one.</summary>
    /// <param name="arrivals">When they arrived, in seconds.</param>
    /// <param name="sendsEvery">The gauge's clock; null where none is known.</param>
    public static double[] TimesOf(double[] arrivals, TimeSpan? sendsEvery) =>
        sendsEvery is { } every ? EvenClock.Spread(arrivals, every) : arrivals;

    private static RotationCapture AsShown(JournalReplay replay, TimeSpan zero) => new()
    {
        Seconds = TimesOf([.. replay.Readings.Select(reading => (reading.At - zero).TotalSeconds)], replay.SendsEvery),
        Millimetres = replay.Readings.Select(reading => reading.Millimetres).ToArray(),
        IndexSeconds = replay.Pulses.Select(pulse => (pulse - zero).TotalSeconds).ToArray(),
        TurnsPerIndex = replay.TurnsPerPulse,
        MarkSeconds = replay.Marks.Select(mark => (mark - zero).TotalSeconds).ToArray(),
    };
}

using Handspun.Jobs.Points;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Motion;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.Lift;

/// <summary>Lift: the engine is turned by hand with the indicator on a lifter or a pushrod, and something tells the angle.</summary>
internal sealed class LiftCapture : ICaptureMethod
{
    /// <inheritdoc/>
    public PointKind Kind => PointKind.LiftCurve;

    /// <inheritdoc/>
    /// <remarks>The lifter rests on the base circle for up to a turn of the crank; that is no end of turning.</remarks>
    public CapturePace Pace { get; } = new() { StandStill = TimeSpan.FromSeconds(9), Rest = TimeSpan.FromSeconds(6) };

    /// <inheritdoc/>
    public double UsuallyWanted => 2;

    /// <inheritdoc/>
    public CaptureFinding Nothing { get; } = new LiftFinding(Without(0, 0), null);

    /// <inheritdoc/>
    public MethodWords Words { get; } = new()
    {
        Waiting = "Waiting for the cam to lift",
        Running = "Turning",
        Again = "Turn again for a second record",
        SoFar = "Lobe lift so far",
        Counted = "turns of the cam",
        HowToStart = "Turn the engine by hand, slowly and evenly, always the same way. The capture starts by itself when the lifter moves.",
        HowToRepeat = "Turn the engine again for another record; the newest counts.",
        AfterTouch = "The lifter moved and stopped. Turn the engine by hand, slowly and evenly, for two turns of the cam: four of the crank.",
        GaugeGone = "The gauge is gone: plug it in again and keep turning.",
        Enough = "Enough. Stop turning.",
        NotRunning = "turn the engine, or start a capture by hand",
    };

    /// <inheritdoc/>
    public bool Moves(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, GaugeTraits gauge) =>
        ShaftMotion.IsTurning(seconds, millimetres, gauge.Resolution);

    /// <inheritdoc/>
    public CaptureFinding Measure(RotationCapture readings, GaugeTraits gauge, MethodWish wish)
    {
        var setup = wish.Setup as LiftSetup;
        var asked = LiftAsked.Readings(readings, setup);
        return new LiftFinding(LiftMethod.Measure(asked, gauge, LiftAsked.Settings(setup)), setup) { Told = ToldTurns(asked, setup) };
    }

    /// <inheritdoc/>
    public Func<RotationCapture, CaptureFinding> Follow(GaugeTraits gauge, MethodWish wish)
    {
        var setup = wish.Setup as LiftSetup;
        return readings =>
        {
            // The whole measurement costs too much to be made again and again, so it waits until there may be enough; the readings' own range is nearly the lift.
            var told = ToldTurns(LiftAsked.Readings(readings, setup), setup);
            return told >= wish.Wanted ? Measure(readings, gauge, wish)
                : new LiftFinding(Without(readings.Millimetres.Length, told), setup) { Told = told, RangeSoFar = told >= 1 ? RangeOf(readings.Millimetres.Span) : null };
        };
    }

    private static Length? RangeOf(ReadOnlySpan<double> millimetres)
    {
        var (low, high) = (double.MaxValue, double.MinValue);
        foreach (var reading in millimetres)
        {
            (low, high) = (Math.Min(low, reading), Math.Max(high, reading));
        }

        return high >= low ? Length.FromMillimetres(high - low) : null;
    }

    private static LiftResult Without(int readings, double turns) =>
        new() { Status = LiftStatus.TooShort, Missing = "No whole turn of the cam was seen: turn on the same way, two turns of the crank for one of the cam.", Readings = readings, CamTurns = turns };

    // Turns of the cam by what told the angle alone; where nobody said of which shaft, of the crank.
    private static double ToldTurns(RotationCapture readings, LiftSetup? setup)
    {
        var turns = readings.EncoderDegrees.Length > 1 ? Unwrapped(readings.EncoderDegrees.Span)
            : readings.IndexSeconds.Length > 1 ? (readings.IndexSeconds.Length - 1) * readings.TurnsPerIndex
            : Math.Max(0, readings.MarkSeconds.Length - 1);
        return setup?.AngleOf == "cam" ? turns : turns / 2;
    }

    private static double Unwrapped(ReadOnlySpan<double> degrees)
    {
        var turned = 0.0;
        for (var i = 1; i < degrees.Length; i++)
        {
            turned += Math.IEEERemainder(degrees[i] - degrees[i - 1], 360);
        }

        return Math.Abs(turned) / 360;
    }
}

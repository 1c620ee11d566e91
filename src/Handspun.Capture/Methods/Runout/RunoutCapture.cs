using Handspun.Jobs.Points;
using Handspun.Metrology.Motion;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.Runout;

/// <summary>Runout: the shaft turns under the indicator, several turns one way.</summary>
internal sealed class RunoutCapture : ICaptureMethod
{
    /// <inheritdoc/>
    public PointKind Kind => PointKind.Runout;

    /// <inheritdoc/>
    public CapturePace Pace { get; } = new();

    /// <inheritdoc/>
    public double UsuallyWanted => 3;

    /// <inheritdoc/>
    public CaptureFinding Nothing { get; } = new RunoutFinding(new RunoutResult { Status = RunoutStatus.TooShort, Readings = 0 });

    /// <inheritdoc/>
    public MethodWords Words { get; } = new()
    {
        Waiting = "Waiting for the shaft to turn",
        Running = "Turning",
        Again = "Turn again for a second record",
        SoFar = "Runout so far",
        Counted = "turns",
        HowToStart = "Turn the wheel by hand, slowly and evenly. The capture starts by itself.",
        HowToRepeat = "Turn the wheel again for another record; the newest counts.",
        AfterTouch = "The shaft moved and stopped. Turn the wheel by hand, slowly and evenly.",
        GaugeGone = "The gauge is gone: plug it in again and keep turning.",
        Enough = "Enough. Stop turning.",
        NotRunning = "turn the shaft, or start a capture by hand",
    };

    /// <inheritdoc/>
    public bool Moves(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, GaugeTraits gauge) =>
        ShaftMotion.IsTurning(seconds, millimetres, gauge.Resolution);

    /// <inheritdoc/>
    public CaptureFinding Measure(RotationCapture readings, GaugeTraits gauge, MethodWish wish) =>
        new RunoutFinding(RunoutMethod.Measure(readings, gauge, new RunoutSettings { TurnsWanted = wish.Wanted }));

    /// <inheritdoc/>
    public Func<RotationCapture, CaptureFinding> Follow(GaugeTraits gauge, MethodWish wish)
    {
        var follower = new RunoutFollower(gauge, new RunoutSettings { TurnsWanted = wish.Wanted });
        return readings => new RunoutFinding(follower.Look(readings));
    }
}

using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Tests.Runout;
using Handspun.Simulation;
using Handspun.Simulation.Cams;

namespace Handspun.Metrology.Tests.Lift;

/// <summary>Lift captures for the tests.</summary>
internal static class LiftCaptures
{
    /// <summary>A lobe on a cam whose crank a steady hand turns, with an angle of the crank at each reading; nothing is rounded.</summary>
    public static RotationCapture Exact(CamLobe lobe, double crankTurns = 6, int readings = 1600, double seconds = 30)
    {
        var capture = Captures.Of(readings, seconds, at => lobe.HeightAt(at / seconds * crankTurns * 180));
        return capture with { EncoderSeconds = capture.Seconds, EncoderDegrees = Angles(capture, at => 360 * crankTurns * at / seconds) };
    }

    /// <summary>The usual hand on the crank, with a toothed disc of 36 there.</summary>
    public static SimulatedCapture ByHand(CamLobe lobe, int seed, AngleAid? aid = null, double crankTurns = 6) => CaptureSimulation.Run(
        degrees => lobe.HeightAt(degrees / 2), HandTurn.Create(seed, crankTurns, 0.25), new Indicator(), seed, 1, 1, aid ?? new AngleAid { TurnsPerIndex = 1.0 / 36 });

    public static LiftResult Measure(RotationCapture capture, LiftSettings? settings = null) =>
        LiftMethod.Measure(capture, Captures.Fine, settings ?? new LiftSettings { AngleOf = AngleShaft.Crank });

    public static double[] Angles(RotationCapture capture, Func<double, double> degreesAt) => [.. capture.Seconds.ToArray().Select(degreesAt)];

    /// <summary>The difference of two directions of the cam, the short way round, in degrees of the crank.</summary>
    public static double OffAtCrank(CamAngle measured, double camDegrees) => 2 * Math.IEEERemainder(measured.Degrees - camDegrees, 360);
}

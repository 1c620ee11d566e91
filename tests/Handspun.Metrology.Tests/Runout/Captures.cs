using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Simulation;

namespace Handspun.Metrology.Tests.Runout;

/// <summary>Captures for the tests, and the measurement of them.</summary>
internal static class Captures
{
    public static readonly GaugeTraits Fine = new() { Resolution = Length.FromMillimetres(0.001), PlungerLeanDegrees = 0 };

    /// <summary>Three and a half turns of a mostly off-centre shaft with a pause before and after.</summary>
    public static SimulatedCapture Usual(int seed, AngleAid? aid = null, Indicator? gauge = null, double tir = 0.08, double turns = 3.5) =>
        CaptureSimulation.Run(
            ShaftShape.WithTir(tir, seed, 1 + seed % 3), HandTurn.Create(seed, turns, 0.5), gauge ?? new Indicator(), seed, 1, 1, aid);

    public static RunoutResult Measure(RotationCapture capture, GaugeTraits? gauge = null) =>
        RunoutMethod.Measure(capture, gauge ?? Fine, new RunoutSettings());

    /// <summary>A capture made of a formula.</summary>
    public static RotationCapture Of(int readings, double seconds, Func<double, double> millimetresAt)
    {
        double[] times = [.. Enumerable.Range(0, readings).Select(i => seconds * i / (readings - 1))];
        return new() { Seconds = times, Millimetres = times.Select(millimetresAt).ToArray() };
    }
}

using Handspun.Metrology.Runout;
using MathNet.Numerics.Distributions;

namespace Handspun.Metrology.Tests.Runout;

public class RunoutBoundTests
{
    // Cramér-Rao bound of a sinusoid whose angles are known (Kay 1993, ch. 3, from memory, confirmed by the Fisher matrix): var A =
    // 2σ²/N and var φ = 2σ²/(NA²), here for N = 360, A = 20 µm, σ = 2 µm. The runout is 2A; the waves are chosen by evidence, and
    // one too many costs a little.
    [Fact]
    public void Runout_OfManyNoisyTurnsWithAnEncoder_ScattersLittleMoreThanTheBound()
    {
        const double amplitudeDeviation = 0.00014907119849998595, phaseDeviation = 0.007453559924999299;
        const int captures = 300;
        var chance = new Random(23);
        var (runouts, angles) = (0.0, 0.0);
        for (var capture = 0; capture < captures; capture++)
        {
            var result = RunoutMethod.Measure(Capture(chance), new GaugeTraits(), new RunoutSettings());
            runouts += Math.Pow(result.Tir!.Value.Millimetres - 0.04, 2) / captures;
            angles += Math.Pow((result.HighSpot!.Value.Degrees - 40) * Math.PI / 180, 2) / captures;
        }

        Assert.InRange(Math.Sqrt(runouts) / (2 * amplitudeDeviation), 0.88, 1.25);
        Assert.InRange(Math.Sqrt(angles) / phaseDeviation, 0.88, 1.25);
    }

    private static RotationCapture Capture(Random chance)
    {
        const int readings = 360;
        double[] seconds = [.. Enumerable.Range(0, readings).Select(i => 0.02 * i)];
        double[] degrees = [.. Enumerable.Range(0, readings).Select(i => 4.0 * i)];
        return new()
        {
            Seconds = seconds,
            Millimetres = degrees.Select(degree => 0.02 * Math.Cos((degree - 40) * Math.PI / 180) + Normal.Sample(chance, 0, 0.002)).ToArray(),
            EncoderSeconds = seconds,
            EncoderDegrees = degrees,
        };
    }
}

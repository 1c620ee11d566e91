using Handspun.Metrology.Fitting;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Handspun.Metrology.Tests.Fitting;

/// <summary>Profile and angle fitted together, where the angle is stiff: then it is a sinusoid of unknown frequency, of which much is published.</summary>
public class JointFitTests
{
    // Variances of amplitude and frequency (per reading, squared) from the inverted Fisher matrix of a sinusoid with a constant;
    // within 0.1 % of the formulas 2σ²/N and 12/(ηN(N² − 1)), η = A²/2σ² (Kay 1993, example 3.14, from memory).
    [Theory]
    [InlineData(256, 40, 0.1, 0.7, 7.812932192217453e-05, 1.4312885887164905e-08)]
    [InlineData(1024, 100, 0.5, 0.3, 0.0004882854630150285, 5.588418427492109e-09)]
    public void StiffFit_OfManyNoisySines_ScattersByTheCramerRaoBound(int readings, int cycles, double noise, double phase, double amplitudeVariance, double frequencyVariance)
    {
        const int captures = 300;
        const double doubt = 0.25;   // three standard deviations of a variance from so many captures
        var chance = new Random(11);
        var (amplitudes, frequencies) = (0.0, 0.0);
        for (var capture = 0; capture < captures; capture++)
        {
            var (amplitude, frequency) = Sinusoid(Fitted(Readings(readings, cycles, noise, phase, chance), cycles), readings);
            amplitudes += Math.Pow(amplitude - 1, 2) / captures;
            frequencies += Math.Pow(frequency - 2 * Math.PI * cycles / readings, 2) / captures;
        }

        Assert.InRange(amplitudes / amplitudeVariance, 1 - doubt, 1 + doubt);
        Assert.InRange(frequencies / frequencyVariance, 1 - doubt, 1 + doubt);
    }

    [Fact]
    public void StiffFit_OfANoisySine_IsThatOfMathNet()
    {
        const int readings = 256, cycles = 40;
        var values = Readings(readings, cycles, 0.01, 0.7, new Random(5));
        var model = ObjectiveFunction.NonlinearModel(
            (b, x) => x.Map(n => b[0] + b[1] * Math.Cos(b[3] * n) + b[2] * Math.Sin(b[3] * n)),
            Vector<double>.Build.Dense(readings, n => n),
            Vector<double>.Build.Dense(values));
        var expected = new LevenbergMarquardtMinimizer(maximumIterations: 200).FindMinimum(
            model, Vector<double>.Build.DenseOfArray([0, 0.8, -0.6, 2 * Math.PI * cycles / readings])).MinimizingPoint;

        var fit = Fitted(values, cycles);
        var (amplitude, frequency) = Sinusoid(fit, readings);

        Assert.Equal(Math.Sqrt(expected[1] * expected[1] + expected[2] * expected[2]), amplitude, 2e-6);   // the weak prior on waves takes a little
        Assert.Equal(expected[3], frequency, 1e-8);
        Assert.Equal(expected[0], fit.Series[0], 1e-7);
    }

    private static double[] Readings(int readings, int cycles, double noise, double phase, Random chance) =>
        [.. Enumerable.Range(0, readings).Select(n => Math.Cos(2 * Math.PI * cycles * n / readings + phase) + Normal.Sample(chance, 0, noise))];

    private static JointFit Fitted(double[] values, int cycles)
    {
        double[] seconds = [.. Enumerable.Range(0, values.Length).Select(n => (double)n)];
        var spline = new UniformSpline(0, (values.Length - 1) / 8.0, 8);
        var fit = new JointFit(new FitGrid(seconds, values, [new AngleAnchor(0, 0, 1e-4)], spline, noiseFloor: 1e-9), harmonics: 1, driftOrder: 0);
        fit.Stiffen(1e-5);
        fit.StartFrom([.. seconds.Select(n => cycles * n / values.Length)]);
        fit.Run(30, tolerance: 1e-9, hold: true);
        return fit;
    }

    // Amplitude, and frequency in radians from reading to reading.
    private static (double Amplitude, double Frequency) Sinusoid(JointFit fit, int readings) => (
        Math.Sqrt(fit.Series[1] * fit.Series[1] + fit.Series[2] * fit.Series[2]),
        2 * Math.PI * (fit.TurnsAt(readings - 1) - fit.TurnsAt(0)) / (readings - 1));
}

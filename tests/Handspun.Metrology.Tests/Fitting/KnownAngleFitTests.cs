using Handspun.Metrology.Fitting;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Tests.Reference;
using MathNet.Numerics.LinearRegression;

namespace Handspun.Metrology.Tests.Fitting;

public class KnownAngleFitTests
{
    // Beam deflections (NIST/SEMATECH e-Handbook 1.4.2.5.3, data Lew). The fit printed there is not the least-squares
    // optimum; constant, amplitude and residual deviation are those of the optimum, worked out again with another program.
    [Fact]
    public void Sinusoid_ThroughTheBeamDeflections_IsTheLeastSquaresOne()
    {
        const double frequency = 0.301807035;
        double[] values = [.. ReferenceData.Rows("nist-lew.csv").Select(row => row[0])];
        double[] turns = [.. Enumerable.Range(1, values.Length).Select(t => frequency * t)];
        var fit = new KnownAngleFit(turns, values, [], harmonics: 1, driftOrder: 0, floor: 1e-9, robust: false);

        Assert.Equal(-178.768157, fit.Series[0], 1e-4);
        Assert.Equal(343.288566, Math.Sqrt(fit.Series[1] * fit.Series[1] + fit.Series[2] * fit.Series[2]), 3e-3);
        Assert.Equal(134.0664009, Math.Sqrt(fit.Residuals.Sum(r => r * r) / (values.Length - 4)), 1e-4);
    }

    [Fact]
    public void Series_OfAnyAngles_IsThatOfMathNet()
    {
        var chance = new Random(7);
        double[] turns = [.. Enumerable.Range(0, 120).Select(_ => 4 * chance.NextDouble()).Order()];
        double[] values = [.. turns.Select(turn => 0.3 + 0.05 * Math.Sin(2 * Math.PI * turn) + 0.002 * chance.NextDouble())];
        double[] course = [.. Enumerable.Range(0, 120).Select(i => 2 * i / 119.0 - 1)];
        var fit = new KnownAngleFit(turns, values, course, harmonics: 3, driftOrder: 1, floor: 1e-9, robust: false);

        var rows = turns.Select((turn, i) => Enumerable.Range(1, 3)
            .SelectMany(k => new[] { Math.Cos(2 * Math.PI * k * turn), Math.Sin(2 * Math.PI * k * turn) })
            .Prepend(1).Append(course[i]).ToArray()).ToArray();
        var expected = MultipleRegression.QR(rows, values);

        Assert.All(fit.Series.Zip(expected), pair => Assert.Equal(pair.Second, pair.First, 1e-11));
    }

    // Cramér-Rao bound of a sinusoid of known frequency over whole turns (Kay 1993, ch. 3, from memory, confirmed by the
    // Fisher matrix): the variance of the amplitude is 2σ²/N, so N = 72 and σ = 1 µm give 0.1667 µm.
    [Fact]
    public void Amplitude_OfManyNoisySines_ScattersByTheBound()
    {
        const int readings = 72;
        const double sigma = 0.001;
        var chance = new Random(3);
        double[] turns = [.. Enumerable.Range(0, readings).Select(i => (double)i / readings)];
        double[] errors = [.. Enumerable.Range(0, 4000).Select(_ =>
        {
            double[] values = [.. turns.Select(turn => 0.02 * Math.Cos(2 * Math.PI * turn + 0.7) + sigma * Normal(chance))];
            var fit = new KnownAngleFit(turns, values, [], 1, 0, 1e-9, robust: false);
            return Math.Sqrt(fit.Series[1] * fit.Series[1] + fit.Series[2] * fit.Series[2]) - 0.02;
        })];

        Assert.Equal(0.00016666666666666663, Math.Sqrt(errors.Average(error => error * error)), 6e-6);
    }

    // A true circle of 20 mm, 0.015 mm off the axis toward 63°: the first wave is the offset, the second e²/(4R), the
    // mean −e²/(4R) (closed form).
    [Fact]
    public void Waves_OfAnEccentricTrueCircle_AreThoseOfTheClosedForm()
    {
        const double radius = 20, offset = 0.015;
        double[] turns = [.. Enumerable.Range(0, 72).Select(i => i / 72.0)];
        double[] values = [.. turns.Select(turn =>
        {
            var (s, c) = Math.SinCos(2 * Math.PI * turn - 63 * Math.PI / 180);
            return Math.Sqrt(radius * radius - offset * offset * s * s) + offset * c - radius;
        })];
        var fit = new KnownAngleFit(turns, values, [], 3, 0, 1e-12, robust: false);

        Assert.Equal(0.015, new Harmonic(fit.Series[1], fit.Series[2]).Amplitude, 1e-10);
        Assert.Equal(63, Math.Atan2(fit.Series[2], fit.Series[1]) * 180 / Math.PI, 1e-7);
        Assert.Equal(2.8125e-6, new Harmonic(fit.Series[3], fit.Series[4]).Amplitude, 1e-10);
        Assert.Equal(-2.8125e-6, fit.Series[0], 1e-10);
    }

    // Three lobes of 4 µm on a circle of 25 mm: the movement is twice the amplitude.
    [Fact]
    public void Extremes_OfThreeLobes_AreTwiceTheAmplitudeApart()
    {
        var phase = 40 * Math.PI / 180;
        var extremes = ProfileExtremes.Of([25, 0, 0, 0, 0, 0.004 * Math.Cos(phase), 0.004 * Math.Sin(phase)], harmonics: 3);

        Assert.Equal(0.008, extremes.Movement, 1e-12);
        Assert.Equal(0, (extremes.HighTurns * 360 * 3 - 40) % 360, 1e-6);
    }

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}

using Handspun.Metrology.Fitting;
using MathNet.Numerics.LinearAlgebra;

namespace Handspun.Metrology.Tests.Fitting;

public class RoundedFitTests
{
    private const double Least = 0.0002;
    private const double AnyLevel = 1;

    // JCGM 100:2008, F.2.2.1: a step of a display is a rectangle, its standard uncertainty a step over √12.
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.00254)]
    public void Level_OfReadingsThatAllShowOneStep_IsKnownToARectangleOneStepWide(double step)
    {
        var readings = new double[200];

        var (unknowns, covariance) = RoundedFit.Of(Rows(200, _ => [1]), readings, step, [AnyLevel], 0.3 * step, Least);

        Assert.Equal(0, unknowns[0], 0.01 * step);
        Assert.Equal(step / Math.Sqrt(12), Math.Sqrt(covariance[0]), 0.15 * step);
    }

    // Half of the readings on either side: the level is at the border, to a small part of the step.
    [Fact]
    public void Level_OfReadingsThatChangeBetweenTwoSteps_IsAtTheirBorder()
    {
        double[] readings = [.. Enumerable.Range(0, 100).Select(i => i % 2 == 0 ? 0.005 : -0.005)];

        var (unknowns, covariance) = RoundedFit.Of(Rows(100, _ => [1]), readings, 0.01, [AnyLevel], 0.005, Least);

        Assert.Equal(0, unknowns[0], 0.0003);
        Assert.InRange(Math.Sqrt(covariance[0]), 0, 0.001);
    }

    [Fact]
    public void Line_OfAGaugeWithoutSteps_IsTheLeastSquaresOfALibrary()
    {
        var chance = new Random(4);
        var rows = Rows(60, i => [1, i / 30.0 - 1]);
        double[] readings = [.. rows.Select(row => 0.02 + 0.05 * row[1] + 0.001 * (chance.NextDouble() + chance.NextDouble() - 1))];
        var design = Matrix<double>.Build.DenseOfRowArrays(rows);
        var solved = design.QR().Solve(Vector<double>.Build.Dense(readings));
        var sigma = (Vector<double>.Build.Dense(readings) - design * solved).L2Norm() / Math.Sqrt(58);

        var (unknowns, covariance) = RoundedFit.Of(rows, readings, 0, [100, 100], sigma, Least);

        Assert.Equal(solved[0], unknowns[0], 1e-7);
        Assert.Equal(solved[1], unknowns[1], 1e-7);
        var inverse = design.TransposeThisAndMultiply(design).Inverse();
        Assert.Equal(sigma * Math.Sqrt(inverse[1, 1]), Math.Sqrt(covariance[3]), 1e-7);
    }

    // A normal unknown and as many readings as it likes: two standard deviations cover it in 95 of 100 (JCGM 100:2008, G.1).
    [Fact]
    public void Circle_OfACoarseGauge_IsWithinItsUncertaintyInNineteenOfTwenty()
    {
        const int captures = 120;
        const double step = 0.01;
        var (chance, covered) = (new Random(20261125), 0);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
        for (var capture = 0; capture < captures; capture++)
        {
            var (noise, level, cosine, sine) = (0.0003 + 0.0015 * chance.NextDouble(), chance.NextDouble(), 0.015 * Normal(), 0.015 * Normal());
            var rows = Rows(150, _ =>
            {
                var angle = 2.5 * (chance.NextDouble() - 0.5);
                return [1, Math.Cos(angle), Math.Sin(angle)];
            });
            double[] readings = [.. rows.Select(row => step * Math.Round((level + cosine * row[1] + sine * row[2] + noise * Normal()) / step))];
            var mean = readings.Average();
            var sigma = Math.Sqrt(readings.Average(reading => Math.Pow(reading - mean, 2)));

            var (found, covariance) = RoundedFit.Of(rows, [.. readings.Select(reading => reading - mean)], step, [AnyLevel, 0.015, 0.015], Math.Min(sigma, 0.5 * step), Least);

            var off = found[0] - found[1] - (level - mean - cosine);   // the height opposite, where nothing was read
            covered += Math.Abs(off) <= 2 * Math.Sqrt(covariance[0] + covariance[4] - 2 * covariance[1]) ? 1 : 0;
        }

        Assert.InRange(covered / (double)captures, 0.88, 1);
    }

    private static double[][] Rows(int count, Func<int, double[]> row) => [.. Enumerable.Range(0, count).Select(row)];
}

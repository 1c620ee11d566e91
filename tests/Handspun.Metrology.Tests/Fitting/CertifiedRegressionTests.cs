using Handspun.Metrology.Fitting;
using Handspun.Metrology.Tests.Reference;
using MathNet.Numerics.LinearAlgebra;

namespace Handspun.Metrology.Tests.Fitting;

/// <summary>The solver under every fit, against values that NIST certifies.</summary>
/// <remarks>The method's own columns are well conditioned (waves; Legendre polynomials from −1 to 1), so the published models are solved in such columns too and brought back.</remarks>
public class CertifiedRegressionTests
{
    private const int Degree = 5;
    private const double Middle = 10;

    [Fact]
    public void Regression_ThroughLongley_HasTheCertifiedParameters()
    {
        var certified = CertifiedRegression.Of("Longley");
        double[][] regressors = [.. certified.Rows.Select(row => row[1..])];
        double[] means = [.. Enumerable.Range(0, 6).Select(j => regressors.Average(row => row[j]))];
        double[] widths = [.. Enumerable.Range(0, 6).Select(j => regressors.Max(row => Math.Abs(row[j] - means[j])))];
        var back = Matrix<double>.Build.DenseIdentity(7);
        for (var j = 0; j < 6; j++)
        {
            back[0, j + 1] = -means[j] / widths[j];
            back[j + 1, j + 1] = 1 / widths[j];
        }

        var solved = Solved(
            [.. regressors.Select(row => (double[])[1, .. row.Select((value, j) => (value - means[j]) / widths[j])])], certified, band: 0, back);

        Near(certified, solved, digits: 10);
    }

    // Wampler 1 and 2 lie on a polynomial of degree 5; 3 to 5 add noise, far more than the polynomial's own height in the last.
    [Theory]
    [InlineData("Wampler1", 9)]
    [InlineData("Wampler2", 9)]
    [InlineData("Wampler3", 9)]
    [InlineData("Wampler4", 7)]
    [InlineData("Wampler5", 5)]
    public void Polynomial_ThroughWampler_HasTheCertifiedParameters(string name, int digits)
    {
        var certified = CertifiedRegression.Of(name);
        var solved = Solved([.. certified.Rows.Select(row => Legendre((row[1] - Middle) / Middle))], certified, band: 0, InPowers(Legendres));

        Near(certified, solved, digits);
    }

    // One interval of a cubic spline in the band, two more powers in the border, span the same polynomials.
    [Theory]
    [InlineData("Wampler1", 8)]
    [InlineData("Wampler3", 8)]
    [InlineData("Wampler4", 6)]
    public void SplineWithBorder_ThroughWampler_HasTheCertifiedParameters(string name, int digits)
    {
        var certified = CertifiedRegression.Of(name);
        var spline = new UniformSpline(0, 2 * Middle, 1);
        double[] Row(double x)
        {
            var row = new double[Degree + 1];
            spline.Basis(x, row.AsSpan(0, 4));
            Legendre((x - Middle) / Middle).AsSpan(4).CopyTo(row.AsSpan(4));
            return row;
        }

        var solved = Solved([.. certified.Rows.Select(row => Row(row[1]))], certified, band: 4, InPowers([.. Splines, .. Legendres[4..]]));

        Near(certified, solved, digits);
    }

    // Polynomials in t from −1 to 1, lowest power first: P0 to P5, and the four pieces of a cubic spline with t = 2u − 1.
    private static readonly double[][] Legendres =
        [[1], [0, 1], [-0.5, 0, 1.5], [0, -1.5, 0, 2.5], [3 / 8.0, 0, -30 / 8.0, 0, 35 / 8.0], [0, 15 / 8.0, 0, -70 / 8.0, 0, 63 / 8.0]];

    private static readonly double[][] Splines =
        [[1 / 48.0, -3 / 48.0, 3 / 48.0, -1 / 48.0], [23 / 48.0, -15 / 48.0, -3 / 48.0, 3 / 48.0], [23 / 48.0, 15 / 48.0, -3 / 48.0, -3 / 48.0], [1 / 48.0, 3 / 48.0, 3 / 48.0, 1 / 48.0]];

    private static double[] Legendre(double t) => [.. Legendres.Select(powers => powers.Select((power, i) => power * Math.Pow(t, i)).Sum())];

    // Turns coefficients of polynomials in t = x/10 − 1 into those of powers of x.
    private static Matrix<double> InPowers(double[][] columns)
    {
        var shift = Matrix<double>.Build.Dense(Degree + 1, Degree + 1);
        shift[0, 0] = 1;
        for (var k = 1; k <= Degree; k++)
        {
            for (var i = 0; i < k; i++)
            {
                shift[i, k] -= shift[i, k - 1];
                shift[i + 1, k] += shift[i, k - 1] / Middle;
            }
        }

        return shift * Matrix<double>.Build.Dense(Degree + 1, columns.Length, (power, column) => power < columns[column].Length ? columns[column][power] : 0);
    }

    private static (double[] Parameters, double[] Deviations, double Residual) Solved(
        double[][] design, CertifiedRegression certified, int band, Matrix<double> back)
    {
        var border = design[0].Length - band;
        var matrix = new BorderedBand(band, border);
        var (bandSide, edgeSide) = (new double[band], new double[border]);
        for (var i = 0; i < design.Length; i++)
        {
            var (row, y) = (design[i], certified.Rows[i][0]);
            for (var j = 0; j < band; j++)
            {
                for (var d = 0; j + d < band; d++)
                {
                    matrix.Band[4 * j + d] += row[j] * row[j + d];
                }

                for (var q = 0; q < border; q++)
                {
                    matrix.Border[j * border + q] += row[j] * row[band + q];
                }

                bandSide[j] += y * row[j];
            }

            for (var p = 0; p < border; p++)
            {
                for (var q = 0; q <= p; q++)
                {
                    matrix.Corner[p * border + q] += row[band + p] * row[band + q];
                }

                edgeSide[p] += y * row[band + p];
            }
        }

        Assert.True(matrix.TryFactor(0));
        matrix.Solve(bandSide, edgeSide);
        var solution = Vector<double>.Build.DenseOfEnumerable([.. bandSide, .. edgeSide]);
        var squares = design.Select((row, i) => certified.Rows[i][0] - solution.DotProduct(Vector<double>.Build.Dense(row))).Sum(residual => residual * residual);
        var scatter = Math.Sqrt(squares / (design.Length - solution.Count));
        var inverse = Matrix<double>.Build.DenseOfColumns(Enumerable.Range(0, solution.Count).Select(column => InverseColumn(matrix, band, border, column)));
        double[] deviations = [.. (back * inverse * back.Transpose()).Diagonal().Select(variance => scatter * Math.Sqrt(Math.Max(0, variance)))];
        return ([.. back * solution], deviations, scatter);
    }

    private static IEnumerable<double> InverseColumn(BorderedBand matrix, int band, int border, int column)
    {
        var (bandSide, edgeSide) = (new double[band], new double[border]);
        (column < band ? bandSide : edgeSide)[column < band ? column : column - band] = 1;
        matrix.Solve(bandSide, edgeSide);
        return [.. bandSide, .. edgeSide];
    }

    private static void Near(CertifiedRegression certified, (double[] Parameters, double[] Deviations, double Residual) solved, int digits)
    {
        var share = Math.Pow(10, -digits);
        Assert.All(certified.Parameters.Zip(solved.Parameters), pair => Assert.Equal(pair.First, pair.Second, share * Math.Abs(pair.First)));
        var height = certified.Rows.Max(row => Math.Abs(row[0]));
        Assert.Equal(certified.Residual, solved.Residual, Math.Max(1e-10 * certified.Residual, 1e-12 * height));
        if (certified.Residual > 0)
        {
            Assert.All(certified.Deviations.Zip(solved.Deviations), pair => Assert.Equal(pair.First, pair.Second, 1e-9 * pair.First));
        }
    }
}

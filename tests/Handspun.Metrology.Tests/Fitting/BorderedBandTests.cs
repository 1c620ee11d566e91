using Handspun.Metrology.Fitting;
using Handspun.Metrology.Tests.Reference;
using MathNet.Numerics.LinearAlgebra;

namespace Handspun.Metrology.Tests.Fitting;

public class BorderedBandTests
{
    private const int Length = 9;
    private const int Border = 4;

    [Fact]
    public void Solution_OfABorderedBand_IsThatOfTheDenseMatrix()
    {
        var (band, dense) = Random(seed: 1);
        var right = Vector<double>.Build.Dense(Length + Border, i => Math.Sin(i + 1));
        var expected = dense.Cholesky().Solve(right);

        Assert.True(band.TryFactor(0));
        double[] bandSide = [.. right.Take(Length)];
        double[] edgeSide = [.. right.Skip(Length)];
        band.Solve(bandSide, edgeSide);

        Assert.All(bandSide.Concat(edgeSide).Zip(expected), pair => Assert.Equal(pair.Second, pair.First, 1e-10));
        Assert.Equal(Math.Log(dense.Determinant()), band.LogDeterminant, 1e-9);
    }

    [Fact]
    public void Inverse_OfABorderedBand_IsThatOfTheDenseMatrix()
    {
        var (band, dense) = Random(seed: 2);
        var inverse = dense.Inverse();

        Assert.True(band.TryFactor(0));
        var corner = band.InverseCorner();
        var inner = band.InverseBand();

        for (var p = 0; p < Border; p++)
        {
            for (var q = 0; q < Border; q++)
            {
                Assert.Equal(inverse[Length + p, Length + q], corner[p * Border + q], 1e-10);
            }
        }

        for (var j = 0; j < Length; j++)
        {
            for (var d = 0; d <= BorderedBand.Below && j + d < Length; d++)
            {
                Assert.Equal(inverse[j + d, j], inner[4 * j + d], 1e-10);
            }
        }
    }

    [Fact]
    public void Factor_OfAMatrixThatIsNotPositive_IsRefused()
    {
        var band = new BorderedBand(3, 1);
        band.Band[0] = -1;

        Assert.False(band.TryFactor(0));
    }

    // NIST/ITL StRD, linear regression, Norris: certified parameters and their standard deviations.
    [Fact]
    public void StraightLine_ThroughNorris_HasTheCertifiedParameters()
    {
        var rows = ReferenceData.Rows("nist-norris.csv");
        var matrix = new BorderedBand(0, 2);
        double[] side = [0, 0];
        foreach (var row in rows)
        {
            var (y, x) = (row[0], row[1]);
            matrix.Corner[0] += 1;
            matrix.Corner[2] += x;
            matrix.Corner[3] += x * x;
            side[0] += y;
            side[1] += x * y;
        }

        Assert.True(matrix.TryFactor(0));
        matrix.Solve([], side);
        var scatter = Math.Sqrt(rows.Sum(row => Math.Pow(row[0] - side[0] - side[1] * row[1], 2)) / (rows.Length - 2));
        var covariance = matrix.InverseCorner();

        Assert.Equal(-0.262323073774029, side[0], 1e-9);
        Assert.Equal(1.00211681802045, side[1], 1e-11);
        Assert.Equal(0.884796396144373, scatter, 1e-9);
        Assert.Equal(0.232818234301152, scatter * Math.Sqrt(covariance[0]), 1e-9);
        Assert.Equal(0.429796848199937e-3, scatter * Math.Sqrt(covariance[3]), 1e-12);
    }

    private static (BorderedBand Band, Matrix<double> Dense) Random(int seed)
    {
        var chance = new Random(seed);
        var band = new BorderedBand(Length, Border);
        var dense = Matrix<double>.Build.Dense(Length + Border, Length + Border);
        void Set(int row, int column, double value) => dense[row, column] = dense[column, row] = value;

        for (var j = 0; j < Length; j++)
        {
            for (var d = 0; d <= BorderedBand.Below && j + d < Length; d++)
            {
                Set(j + d, j, band.Band[4 * j + d] = d == 0 ? 8 + chance.NextDouble() : chance.NextDouble() - 0.5);
            }

            for (var q = 0; q < Border; q++)
            {
                Set(Length + q, j, band.Border[j * Border + q] = chance.NextDouble() - 0.5);
            }
        }

        for (var p = 0; p < Border; p++)
        {
            for (var q = 0; q <= p; q++)
            {
                Set(Length + p, Length + q, band.Corner[p * Border + q] = p == q ? 9 : chance.NextDouble());
            }
        }

        return (band, dense);
    }
}

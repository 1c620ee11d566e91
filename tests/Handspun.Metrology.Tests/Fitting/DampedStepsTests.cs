using Handspun.Metrology.Fitting;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Tests.Reference;

namespace Handspun.Metrology.Tests.Fitting;

/// <summary>The steps that fit profile and angle together, on a published problem: three waves in the air pressure between two places, two of unknown period.</summary>
public class DampedStepsTests
{
    // NIST/ITL StRD, nonlinear regression, ENSO: certified parameters, their standard deviations, sum of squares.
    private static readonly double[] Certified =
        [1.0510749193E+01, 3.0762128085E+00, 5.3280138227E-01, 4.4311088700E+01, -1.6231428586E+00, 5.2554493756E-01, 2.6887614440E+01, 2.1232288488E-01, 1.4966870418E+00];

    private static readonly double[] Deviations =
        [1.7488832467E-01, 2.4310052139E-01, 2.4354686618E-01, 9.4408025976E-01, 2.8078369611E-01, 4.8073701119E-01, 4.1612939130E-01, 5.1460022911E-01, 2.5434468893E-01];

    private const double CertifiedSquares = 7.8853978668E+02;

    private readonly double[][] _rows = ReferenceData.Rows("nist-enso.csv");
    private readonly BorderedBand _matrix = new(0, 9);
    private readonly double[] _side = new double[9];

    [Theory]
    [InlineData(11.0, 3.0, 0.5, 40.0, -0.7, -1.3, 25.0, -0.3, 1.4)]
    [InlineData(10.0, 3.0, 0.5, 44.0, -1.5, 0.5, 26.0, -0.1, 1.5)]
    public void Steps_FromEitherPublishedStart_EndAtTheCertifiedParameters(params double[] start)
    {
        var (at, squares) = Fitted(start);

        Assert.Equal(CertifiedSquares, squares, 1e-7);
        Assert.All(Certified.Zip(at), pair => Assert.Equal(pair.First, pair.Second, 1e-6 * Math.Abs(pair.First)));
        Assert.True(_matrix.TryFactor(0));
        var inverse = _matrix.InverseCorner();
        var scatter = Math.Sqrt(squares / (_rows.Length - 9));
        Assert.All(Deviations.Select((deviation, i) => (deviation, scatter * Math.Sqrt(inverse[10 * i]))), pair => Assert.Equal(pair.deviation, pair.Item2, 1e-5 * pair.deviation));
    }

    // The same three waves as amplitude and phase, worked out from the certified parameters with another program.
    [Theory]
    [InlineData(1, 3.122012581, 9.8261711274)]
    [InlineData(4, 1.706103813, 162.0589643967)]
    [InlineData(7, 1.5116722887, 81.9257875127)]
    public void Waves_OfTheSolution_HaveThePublishedAmplitudesAndPhases(int first, double amplitude, double phase)
    {
        var (at, _) = Fitted([11.0, 3.0, 0.5, 40.0, -0.7, -1.3, 25.0, -0.3, 1.4]);
        var wave = first == 1 ? new Harmonic(at[1], at[2]) : new Harmonic(at[first], at[first + 1]);

        Assert.Equal(amplitude, wave.Amplitude, 1e-6);
        Assert.Equal(phase, Math.Atan2(wave.Sine, wave.Cosine) * 180 / Math.PI, 1e-4);
    }

    private (double[] At, double Squares) Fitted(double[] start)
    {
        var (at, next) = ((double[])start.Clone(), new double[start.Length]);
        var steps = new DampedSteps(_matrix, [], _side);
        for (var round = 0; round < 100; round++)
        {
            var objective = Assemble(at);
            if (!steps.Try([], at, [], next, objective, (_, there) => Squares(there)))
            {
                break;
            }

            (at, next) = (next, at);
        }

        return (at, Assemble(at));
    }

    private double Squares(double[] b) => _rows.Sum(row => Math.Pow(row[1] - Model(row[0], b).Height, 2));

    private double Assemble(double[] b)
    {
        _matrix.Clear();
        Array.Clear(_side);
        foreach (var row in _rows)
        {
            var (height, slopes) = Model(row[0], b);
            for (var p = 0; p < 9; p++)
            {
                for (var q = 0; q <= p; q++)
                {
                    _matrix.Corner[9 * p + q] += slopes[p] * slopes[q];
                }

                _side[p] += slopes[p] * (row[1] - height);
            }
        }

        return Squares(b);
    }

    private static (double Height, double[] Slopes) Model(double month, double[] b)
    {
        var year = Math.SinCos(2 * Math.PI * month / 12);
        var (first, second) = (2 * Math.PI * month / b[3], 2 * Math.PI * month / b[6]);
        var (one, two) = (Math.SinCos(first), Math.SinCos(second));
        return (
            b[0] + b[1] * year.Cos + b[2] * year.Sin + b[4] * one.Cos + b[5] * one.Sin + b[7] * two.Cos + b[8] * two.Sin,
            [
                1, year.Cos, year.Sin,
                (b[4] * one.Sin - b[5] * one.Cos) * first / b[3], one.Cos, one.Sin,
                (b[7] * two.Sin - b[8] * two.Cos) * second / b[6], two.Cos, two.Sin,
            ]);
    }
}

using MathNet.Numerics.LinearAlgebra;

namespace Handspun.Metrology.Fitting;

/// <summary>Few unknowns fitted to rounded readings, each taken as what it is: a step of the gauge within which the value fell.</summary>
/// <remarks>
/// The likelihood of a rounded reading is flat over its step and falls off at the ends as the noise does, so least squares say too much
/// where many readings show the same step, and too little where one changes to the next. Where the answer lies is found by putting each
/// reading's part in by the mean and variance that it leaves to the rest (expectation propagation, Minka 2001). Many readings of one
/// step make that too sure, so what is likely is then summed up around there, point by point (importance sampling). Where so
/// coarse a gauge does not tell its noise, the answer is the mean over all sizes of it, each as likely beforehand.
/// </remarks>
internal sealed class RoundedFit
{
    private const int Tries = 9;
    private const int Sweeps = 12;
    private const double Settled = 0.01;

    private readonly double[][] _rows;
    private readonly double[] _readings;
    private readonly double _step;
    private readonly double[] _beforehand;
    private readonly double[] _precisions;
    private readonly double[] _pulls;
    private readonly double[] _mean;
    private readonly double[] _reach;
    private double[] _covariance;

    private RoundedFit(double[][] rows, double[] readings, double step, double[] doubts)
    {
        (_rows, _readings, _step) = (rows, readings, step);
        _beforehand = Array.ConvertAll(doubts, doubt => 1 / (doubt * doubt));
        (_precisions, _pulls) = (new double[rows.Length], new double[rows.Length]);
        (_mean, _reach) = (new double[doubts.Length], new double[doubts.Length]);
        _covariance = Matrix<double>.Build.DenseOfDiagonalArray(Array.ConvertAll(doubts, doubt => doubt * doubt)).ToRowMajorArray();
    }

    /// <summary>Fits.</summary>
    /// <param name="rows">The slopes of each reading in the unknowns.</param>
    /// <param name="readings">The readings, in millimetres from a level near them; as many.</param>
    /// <param name="step">The gauge's step; 0 or more.</param>
    /// <param name="doubts">How far from zero each unknown may be before any reading, as a standard deviation; above 0.</param>
    /// <param name="sigma">Scatter of the readings about a fit of least squares, the rounding's share included; above 0.</param>
    /// <param name="least">The least standard deviation of a reading before it is rounded; above 0.</param>
    /// <returns>The unknowns, and their covariance as a full square.</returns>
    public static (double[] Unknowns, double[] Covariance) Of(double[][] rows, double[] readings, double step, double[] doubts, double sigma, double least)
    {
        var fit = new RoundedFit(rows, readings, step, doubts);
        if (IsFine(sigma, step))
        {
            fit.Settle(Math.Max(least, Math.Sqrt(sigma * sigma - step * step / 12)));
            return (fit._mean, fit._covariance);
        }

        var sums = new LikelySums(doubts.Length);
        foreach (var noise in Sizes(step, least))
        {
            fit.Settle(noise);
            fit.AddLikely(noise, sums);
        }

        return (sums.Mean, sums.Covariance);
    }

    // Where the readings spread over several steps their noise is their variance less the rounding's (Sheppard's correction), and normal parts do.
    private static bool IsFine(double sigma, double step) => sigma * sigma > 0.35 * step * step;

    // The sizes of noise that may be, from the largest.
    private static IEnumerable<double> Sizes(double step, double least)
    {
        const double smallest = 1.0 / 60, largest = 0.8;
        var from = Math.Max(least, smallest * step);
        var to = Math.Max(2 * from, largest * step);
        return Enumerable.Range(0, Tries).Select(i => to * Math.Pow(from / to, i / (Tries - 1.0)));
    }

    // Sweeps until nothing moves any more.
    private void Settle(double noise)
    {
        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            double[] before = [.. _mean];
            for (var i = 0; i < _rows.Length; i++)
            {
                Improve(i, noise);
            }

            Join();
            if (Enumerable.Range(0, before.Length).All(k => Math.Abs(_mean[k] - before[k]) < Settled * Math.Sqrt(_covariance[k * before.Length + k])))
            {
                break;
            }
        }
    }

    private void Improve(int i, double noise)
    {
        // What all other readings say of this one, and what it says itself where that is expected.
        var (variance, centre) = Reach(_rows[i]);
        var without = 1 / Math.Max(1e-9 / variance, 1 / variance - _precisions[i]);
        var expected = without * (centre / variance - _pulls[i]);
        var told = RoundedReading.Of(_readings[i] - expected, _step, Math.Sqrt(without + noise * noise));

        var after = Math.Max(1e-6 * without, without - without * without * told.Curvature);
        var precision = Math.Max(0, 1 / after - 1 / without);
        var pull = (expected + without * told.Gradient) / after - expected / without;
        var (more, stronger) = (precision - _precisions[i], pull - _pulls[i]);
        (_precisions[i], _pulls[i]) = (precision, pull);

        var (share, moved) = (more / (1 + more * variance), (stronger - more * centre) / (1 + more * variance));
        for (var p = 0; p < _mean.Length; p++)
        {
            _mean[p] += moved * _reach[p];
            for (var q = 0; q < _mean.Length; q++)
            {
                _covariance[p * _mean.Length + q] -= share * _reach[p] * _reach[q];
            }
        }
    }

    // Variance and mean of what is behind a reading; leaves the covariance with each unknown in _reach.
    private (double Variance, double Centre) Reach(double[] row)
    {
        var (variance, centre) = (0.0, 0.0);
        for (var p = 0; p < row.Length; p++)
        {
            _reach[p] = 0;
            for (var q = 0; q < row.Length; q++)
            {
                _reach[p] += _covariance[p * row.Length + q] * row[q];
            }

            variance += row[p] * _reach[p];
            centre += row[p] * _mean[p];
        }

        return (variance, centre);
    }

    // All parts put together anew, so that what rounding errors the many small steps left does not add up.
    private void Join()
    {
        var normal = Matrix<double>.Build.DenseOfDiagonalArray(_beforehand);
        var right = Vector<double>.Build.Dense(_mean.Length);
        for (var i = 0; i < _rows.Length; i++)
        {
            for (var p = 0; p < _mean.Length; p++)
            {
                right[p] += _pulls[i] * _rows[i][p];
                for (var q = 0; q < _mean.Length; q++)
                {
                    normal[p, q] += _precisions[i] * _rows[i][p] * _rows[i][q];
                }
            }
        }

        var covariance = normal.Inverse();
        _covariance = covariance.ToRowMajorArray();
        (covariance * right).AsArray().CopyTo(_mean, 0);
    }

    private void AddLikely(double noise, LikelySums sums)
    {
        if (!_mean.All(double.IsFinite))
        {
            return;
        }

        var size = _mean.Length;
        var root = Matrix<double>.Build.DenseOfRowMajor(size, size, _covariance).Cholesky().Factor;
        var volume = root.Diagonal().Sum(Math.Log);
        foreach (var (place, density) in ScatteredPoints.Of(size))
        {
            var at = (root * place).AsArray();
            var log = volume - density;
            for (var p = 0; p < size; p++)
            {
                at[p] += _mean[p];
                log -= 0.5 * at[p] * at[p] * _beforehand[p];
            }

            for (var i = 0; i < _rows.Length; i++)
            {
                var off = _readings[i];
                for (var p = 0; p < size; p++)
                {
                    off -= _rows[i][p] * at[p];
                }

                log += RoundedReading.LogLikelihood(off, _step, noise);
            }

            sums.Add(log, at);
        }
    }
}

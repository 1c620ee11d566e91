namespace Handspun.Metrology.Fitting;

/// <summary>What is known beforehand of the second differences of the angle's spline: mostly small, now and then large.</summary>
/// <remarks>
/// A hand pushes, lets go and stops: its jolts are few and far larger than the rest. A normal distribution wide enough for
/// them leaves the angle free everywhere, so the differences have Student's t distribution. Taken as a normal one whose
/// width is itself drawn for each difference, it is fitted by variational Bayes (Bishop, Pattern Recognition and Machine
/// Learning, 2006, 10.2-10.3; formulas from memory): each width follows from the difference and from its doubt.
/// </remarks>
internal sealed class HandBends
{
    private const double Freedom = 2;   // of the t distribution; 1 to 4 did about as well on simulated hands
    private readonly double[] _squares;
    private readonly double[] _variances;
    private readonly double[] _shares;

    /// <summary>For a spline of so many coefficients; every difference weighs the same to begin with.</summary>
    public HandBends(int coefficients)
    {
        (_squares, _variances, _shares) = (new double[coefficients - 2], new double[coefficients - 2], new double[coefficients - 2]);
        Array.Fill(_shares, 1);
    }

    /// <summary>How many differences there are.</summary>
    public int Count => _shares.Length;

    /// <summary>The weight of each difference against the usual one.</summary>
    public ReadOnlySpan<double> Shares => _shares;

    /// <summary>Weighted sum of the squared differences of a spline.</summary>
    public double Squares(double[] spline)
    {
        var sum = 0.0;
        for (var j = 0; j < _shares.Length; j++)
        {
            var bend = spline[j] - 2 * spline[j + 1] + spline[j + 2];
            sum += _shares[j] * bend * bend;
        }

        return sum;
    }

    /// <summary>Takes a spline and the band of its covariance; gives the weighted sum of the variances of the differences.</summary>
    public double Take(double[] spline, double[] inverse)
    {
        var sum = 0.0;
        for (var j = 0; j < _shares.Length; j++)
        {
            var bend = spline[j] - 2 * spline[j + 1] + spline[j + 2];
            _squares[j] = bend * bend;
            _variances[j] = inverse[4 * j] + 4 * inverse[4 * j + 4] + inverse[4 * j + 8]
                - 4 * inverse[4 * j + 1] - 4 * inverse[4 * j + 5] + 2 * inverse[4 * j + 2];
            sum += _shares[j] * _variances[j];
        }

        return sum;
    }

    /// <summary>The differences' part of minus twice the logarithm of the evidence, up to a constant; after <see cref="Take"/>.</summary>
    public double Cost(double smoothness)
    {
        var cost = 0.0;
        for (var j = 0; j < _shares.Length; j++)
        {
            cost += (Freedom + 1) * Math.Log(1 + smoothness * (_squares[j] + _variances[j]) / Freedom)
                - smoothness * _shares[j] * _variances[j];
        }

        return cost - _shares.Length * Math.Log(smoothness);
    }

    /// <summary>Renews the weights; after <see cref="Take"/>.</summary>
    public void Reweigh(double smoothness)
    {
        for (var j = 0; j < _shares.Length; j++)
        {
            _shares[j] = (Freedom + 1) / (Freedom + smoothness * (_squares[j] + _variances[j]));
        }
    }

    /// <summary>Takes over another's weights.</summary>
    public void StartFrom(HandBends other) => other._shares.CopyTo(_shares, 0);
}

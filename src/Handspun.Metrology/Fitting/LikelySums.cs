namespace Handspun.Metrology.Fitting;

/// <summary>Mean and covariance of points that are each so likely.</summary>
/// <param name="size">Numbers in a point.</param>
internal sealed class LikelySums(int size)
{
    private readonly double[] _first = new double[size];
    private readonly double[] _second = new double[size * size];
    private double _weights;
    private double _best = double.NegativeInfinity;

    /// <summary>The mean.</summary>
    public double[] Mean => Array.ConvertAll(_first, sum => sum / _weights);

    /// <summary>The covariance, full square.</summary>
    public double[] Covariance => [.. _second.Select((sum, at) => sum / _weights - _first[at / size] * _first[at % size] / (_weights * _weights))];

    /// <summary>Adds a point.</summary>
    /// <param name="log">The logarithm of how likely it is.</param>
    /// <param name="at">The point.</param>
    public void Add(double log, ReadOnlySpan<double> at)
    {
        if (log > _best)
        {
            // Scaled to the best that was seen, so that no exponential runs over.
            Scale(Math.Exp(_best - log));
            _best = log;
        }

        var weight = Math.Exp(log - _best);
        _weights += weight;
        for (var p = 0; p < size; p++)
        {
            _first[p] += weight * at[p];
            for (var q = 0; q < size; q++)
            {
                _second[p * size + q] += weight * at[p] * at[q];
            }
        }
    }

    private void Scale(double by)
    {
        _weights *= by;
        for (var k = 0; k < _second.Length; k++)
        {
            _second[k] *= by;
        }

        for (var k = 0; k < size; k++)
        {
            _first[k] *= by;
        }
    }
}

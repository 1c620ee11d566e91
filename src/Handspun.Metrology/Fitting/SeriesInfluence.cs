namespace Handspun.Metrology.Fitting;

/// <summary>By how much the border's unknowns follow each reading of a fit.</summary>
internal sealed class SeriesInfluence
{
    private readonly double[][] _bands;
    private readonly double[][] _edges;
    private readonly double[] _influence;

    /// <summary>Takes normal equations that are factored.</summary>
    public SeriesInfluence(BorderedBand matrix)
    {
        var size = matrix.BorderSize;
        (_bands, _edges, _influence) = (new double[size][], new double[size][], new double[size]);
        for (var p = 0; p < size; p++)
        {
            (_bands[p], _edges[p]) = (new double[matrix.Length], new double[size]);
            _edges[p][p] = 1;
            matrix.Solve(_bands[p], _edges[p]);
        }
    }

    /// <summary>The influence of one reading; the same room each time.</summary>
    /// <param name="row">The reading's derivatives: four coefficients of the spline, then the border.</param>
    /// <param name="first">The first of the four.</param>
    /// <param name="weight">The reading's weight in the normal equations.</param>
    public double[] Of(ReadOnlySpan<double> row, int first, double weight)
    {
        for (var p = 0; p < _influence.Length; p++)
        {
            var (band, edge) = (_bands[p], _edges[p]);
            var sum = 0.0;
            for (var a = 0; a < 4 && band.Length > 0; a++)
            {
                sum += row[a] * band[first + a];
            }

            for (var q = 0; q < edge.Length; q++)
            {
                sum += row[4 + q] * edge[q];
            }

            _influence[p] = weight * sum;
        }

        return _influence;
    }
}

namespace Handspun.Metrology.Fitting;

/// <summary>Steps of a nonlinear least-squares fit whose normal equations are a bordered band (Gauss and Newton, damped after Levenberg and Marquardt).</summary>
/// <param name="matrix">The normal equations of the place that a step is to leave; whoever fits fills them.</param>
/// <param name="bandSide">The band's part of their right-hand side.</param>
/// <param name="edgeSide">The border's part.</param>
internal sealed class DampedSteps(BorderedBand matrix, double[] bandSide, double[] edgeSide)
{
    private const int Attempts = 6;
    private readonly double[] _bandStep = new double[bandSide.Length];
    private readonly double[] _edgeStep = new double[edgeSide.Length];
    private double _damping = 1e-4;

    /// <summary>Looks for a step that does not make the fit worse; false where there is none, and then the next place means nothing.</summary>
    /// <param name="band">The place, as far as it is the band's.</param>
    /// <param name="edge">The place, as far as it is the border's.</param>
    /// <param name="nextBand">Becomes the next place, the band's part.</param>
    /// <param name="nextEdge">Becomes the next place, the border's part.</param>
    /// <param name="objective">The sum of squares at the place.</param>
    /// <param name="objectiveAt">The sum of squares anywhere.</param>
    public bool Try(double[] band, double[] edge, double[] nextBand, double[] nextEdge, double objective, Func<double[], double[], double> objectiveAt)
    {
        for (var attempt = 0; attempt < Attempts; attempt++)
        {
            if (matrix.TryFactor(_damping))
            {
                bandSide.CopyTo(_bandStep, 0);
                edgeSide.CopyTo(_edgeStep, 0);
                matrix.Solve(_bandStep, _edgeStep);
                Add(band, _bandStep, nextBand);
                Add(edge, _edgeStep, nextEdge);
                if (objectiveAt(nextBand, nextEdge) <= objective)
                {
                    _damping = Math.Max(1e-9, _damping / 10);
                    return true;
                }
            }

            _damping = Math.Max(_damping * 10, 1e-3);
        }

        return false;
    }

    private static void Add(double[] at, double[] step, double[] sum)
    {
        for (var i = 0; i < at.Length; i++)
        {
            sum[i] = at[i] + step[i];
        }
    }
}

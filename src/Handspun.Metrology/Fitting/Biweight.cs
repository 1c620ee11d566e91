using MathNet.Numerics.Statistics;

namespace Handspun.Metrology.Fitting;

/// <summary>Tukey's biweight: a reading far off the fit loses its weight, one very far off all of it.</summary>
internal static class Biweight
{
    /// <summary>Where the weight usually ends, in standard deviations.</summary>
    public const double Reach = 5;

    /// <summary>Sets the weights that belong to residuals.</summary>
    /// <param name="residuals">Reading minus fit.</param>
    /// <param name="floor">The least standard deviation that they may be given.</param>
    /// <param name="weights">As many as residuals; each becomes 0 to 1.</param>
    /// <param name="reach">Where the weight ends, in standard deviations.</param>
    public static void Set(ReadOnlySpan<double> residuals, double floor, double[] weights, double reach = Reach)
    {
        // The middle size of the residuals; the weights' own places serve as room to sort in.
        for (var i = 0; i < residuals.Length; i++)
        {
            weights[i] = Math.Abs(residuals[i]);
        }

        var middle = ArrayStatistics.OrderStatisticInplace(weights, weights.Length / 2 + 1);
        var end = reach * Math.Max(1.4826 * middle, floor);
        for (var i = 0; i < residuals.Length; i++)
        {
            var ratio = residuals[i] / end;
            var rest = 1 - ratio * ratio;
            weights[i] = rest > 0 ? rest * rest : 0;
        }
    }
}

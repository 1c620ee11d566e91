using MathNet.Numerics.Statistics;

namespace Handspun.Metrology.Runout;

/// <summary>Stretches in which the gauge repeats one value while the shaft moves on.</summary>
internal static class StuckReadings
{
    private const int Fewest = 3;

    /// <summary>
    /// Marks the readings of each stretch of equal values that ends with a jump no moving shaft makes from one reading to
    /// the next; the first of a stretch is sound. A hand that rests moves off smoothly, so its stretch ends without a jump.
    /// </summary>
    /// <param name="millimetres">The readings.</param>
    /// <param name="jump">What counts as a jump, in millimetres, beside three times a large step from reading to reading.</param>
    public static bool[] Find(ReadOnlySpan<double> millimetres, double jump)
    {
        var stuck = new bool[millimetres.Length];
        var least = Math.Max(jump, 3 * UsualStep(millimetres));
        var first = 0;
        for (var i = 1; i < millimetres.Length; i++)
        {
            if (millimetres[i] == millimetres[first])
            {
                continue;
            }

            if (i - first > Fewest && Math.Abs(millimetres[i] - millimetres[first]) > least)
            {
                stuck.AsSpan(first + 1, i - first - 1).Fill(true);
            }

            first = i;
        }

        return stuck;
    }

    // The upper quartile, so that stretches at rest do not make every step look large.
    private static double UsualStep(ReadOnlySpan<double> millimetres)
    {
        var steps = new double[Math.Max(1, millimetres.Length - 1)];
        for (var i = 0; i + 1 < millimetres.Length; i++)
        {
            steps[i] = Math.Abs(millimetres[i + 1] - millimetres[i]);
        }

        return ArrayStatistics.OrderStatisticInplace(steps, steps.Length * 3 / 4 + 1);
    }
}

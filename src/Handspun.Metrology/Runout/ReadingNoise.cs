using MathNet.Numerics.Statistics;

namespace Handspun.Metrology.Runout;

/// <summary>What the readings themselves tell about the gauge.</summary>
internal static class ReadingNoise
{
    /// <summary>The smallest step between two neighbouring readings that differ, in millimetres; 0 where none differ.</summary>
    public static double Step(ReadOnlySpan<double> millimetres)
    {
        var step = double.PositiveInfinity;
        for (var i = 1; i < millimetres.Length; i++)
        {
            var change = Math.Abs(millimetres[i] - millimetres[i - 1]);
            step = change > 1e-7 ? Math.Min(step, change) : step;
        }

        return double.IsFinite(step) ? step : 0;
    }

    /// <summary>Standard deviation of the noise from reading to reading, in millimetres.</summary>
    /// <remarks>
    /// From second, third and fourth differences, by their median, so that knocks count little. Movement adds to each of
    /// them, at fast readings least to the second, at slow readings to another, so the least of the three is taken.
    /// </remarks>
    public static double Between(ReadOnlySpan<double> millimetres)
    {
        if (millimetres.Length < 6)
        {
            return 0;
        }

        var differences = millimetres.ToArray();
        var (noise, count) = (double.PositiveInfinity, differences.Length);
        ReadOnlySpan<double> variances = [2, 6, 20, 70];   // squares of the binomial coefficients, added up
        for (var order = 1; order <= variances.Length; order++)
        {
            count--;
            var sizes = new double[count];
            for (var i = 0; i < count; i++)
            {
                differences[i] = differences[i + 1] - differences[i];
                sizes[i] = Math.Abs(differences[i]);
            }

            if (order > 1)
            {
                var middle = ArrayStatistics.OrderStatisticInplace(sizes, count / 2 + 1);
                noise = Math.Min(noise, 1.4826 * middle / Math.Sqrt(variances[order - 1]));
            }
        }

        return noise;
    }
}

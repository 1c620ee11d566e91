namespace Handspun.Metrology.Fitting;

/// <summary>What anchors and smoothness add to the normal equations of the angle's spline.</summary>
internal static class SplineNormals
{
    /// <summary>Adds an angle that something told: by how much the spline misses it, and the standard uncertainty, in turns.</summary>
    public static void AddAnchor(BorderedBand matrix, double[] side, int first, ReadOnlySpan<double> basis, double miss, double doubt)
    {
        var weight = 1 / (doubt * doubt);
        for (var a = 0; a < 4; a++)
        {
            side[first + a] += weight * basis[a] * miss;
            for (var d = 0; a + d < 4; d++)
            {
                matrix.Band[4 * (first + a) + d] += weight * basis[a] * basis[a + d];
            }
        }
    }

    /// <summary>Adds the penalty on second differences of the coefficients, and gives what it costs.</summary>
    public static double AddPenalty(BorderedBand matrix, double[] side, double[] spline, double smoothness)
    {
        var sum = 0.0;
        for (var j = 0; j + 2 < spline.Length; j++)
        {
            var bend = spline[j] - 2 * spline[j + 1] + spline[j + 2];
            sum += bend * bend;
            side[j] -= smoothness * bend;
            side[j + 1] += 2 * smoothness * bend;
            side[j + 2] -= smoothness * bend;
            var band = matrix.Band.AsSpan(4 * j);
            band[0] += smoothness;
            band[1] -= 2 * smoothness;
            band[2] += smoothness;
            band[4] += 4 * smoothness;
            band[5] -= 2 * smoothness;
            band[8] += smoothness;
        }

        return smoothness * sum;
    }

    /// <summary>Sum of the squared second differences.</summary>
    public static double SquaredBends(double[] spline)
    {
        var sum = 0.0;
        for (var j = 0; j + 2 < spline.Length; j++)
        {
            var bend = spline[j] - 2 * spline[j + 1] + spline[j + 2];
            sum += bend * bend;
        }

        return sum;
    }

    /// <summary>Sum of the squared second differences, and the sum of their variances as an inverse has it.</summary>
    public static (double Squares, double Variances) Bends(double[] spline, double[] inverse)
    {
        var (bends, trace) = (0.0, 0.0);
        for (var j = 0; j + 2 < spline.Length; j++)
        {
            var bend = spline[j] - 2 * spline[j + 1] + spline[j + 2];
            bends += bend * bend;
            trace += inverse[4 * j] + 4 * inverse[4 * j + 4] + inverse[4 * j + 8]
                - 4 * inverse[4 * j + 1] - 4 * inverse[4 * j + 5] + 2 * inverse[4 * j + 2];
        }

        return (bends, trace);
    }
}

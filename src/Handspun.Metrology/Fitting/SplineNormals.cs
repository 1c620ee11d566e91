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
    /// <param name="matrix">The normal equations.</param>
    /// <param name="side">Their right-hand side.</param>
    /// <param name="spline">The coefficients.</param>
    /// <param name="smoothness">Weight of all differences together.</param>
    /// <param name="shares">What each difference has of it.</param>
    public static double AddPenalty(BorderedBand matrix, double[] side, double[] spline, double smoothness, ReadOnlySpan<double> shares)
    {
        var sum = 0.0;
        for (var j = 0; j + 2 < spline.Length; j++)
        {
            var bend = spline[j] - 2 * spline[j + 1] + spline[j + 2];
            var weight = smoothness * shares[j];
            sum += weight * bend * bend;
            side[j] -= weight * bend;
            side[j + 1] += 2 * weight * bend;
            side[j + 2] -= weight * bend;
            var band = matrix.Band.AsSpan(4 * j);
            band[0] += weight;
            band[1] -= 2 * weight;
            band[2] += weight;
            band[4] += 4 * weight;
            band[5] -= 2 * weight;
            band[8] += weight;
        }

        return sum;
    }
}

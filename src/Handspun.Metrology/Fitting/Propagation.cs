namespace Handspun.Metrology.Fitting;

/// <summary>What the covariance of some unknowns means for what is worked out of them (JCGM 100:2008, 5.2.2).</summary>
internal static class Propagation
{
    /// <summary>The covariance of two quantities that are linear in the unknowns; their variance where both are the same.</summary>
    /// <param name="one">The slopes of the first, one for each unknown.</param>
    /// <param name="covariance">The covariance of the unknowns, full square.</param>
    /// <param name="other">The slopes of the second.</param>
    public static double Covariance(ReadOnlySpan<double> one, ReadOnlySpan<double> covariance, ReadOnlySpan<double> other)
    {
        var sum = 0.0;
        for (var p = 0; p < one.Length; p++)
        {
            for (var q = 0; q < other.Length; q++)
            {
                sum += one[p] * covariance[p * other.Length + q] * other[q];
            }
        }

        return sum;
    }
}

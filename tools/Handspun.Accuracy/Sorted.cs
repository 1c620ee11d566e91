namespace Handspun.Accuracy;

/// <summary>Places in sorted values.</summary>
internal static class Sorted
{
    /// <summary>The value below which so large a share of the sorted values lies; NaN where there is none.</summary>
    public static double At(double[] sorted, double share) =>
        sorted.Length == 0 ? double.NaN : sorted[Math.Min(sorted.Length - 1, (int)(share * sorted.Length))];
}

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

    /// <summary>Standard deviation of the noise from second differences, by their median, so that neither movement nor knocks count much; millimetres.</summary>
    public static double Between(ReadOnlySpan<double> millimetres)
    {
        if (millimetres.Length < 3)
        {
            return 0;
        }

        var bends = new double[millimetres.Length - 2];
        for (var i = 0; i < bends.Length; i++)
        {
            bends[i] = Math.Abs(millimetres[i] - 2 * millimetres[i + 1] + millimetres[i + 2]);
        }

        Array.Sort(bends);
        return bends[bends.Length / 2] * 1.4826 / Math.Sqrt(6);   // 1 + 4 + 1 variances make a second difference
    }
}

namespace Handspun.Pictures.Runout;

/// <summary>A smooth curve through values that do not fall: it does not fall either.</summary>
/// <remarks>Cubic Hermite pieces whose slopes are the harmonic mean of their neighbours' (Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5, 1984), from memory.</remarks>
internal static class SmoothRise
{
    /// <summary>The value some part of the way from one point to the next.</summary>
    /// <param name="seconds">Where the points lie; rising.</param>
    /// <param name="values">What they are; NaN where they are not known.</param>
    /// <param name="from">The point before.</param>
    /// <param name="part">How far it is to the next point, 0 to 1.</param>
    /// <returns>NaN where either point is not known.</returns>
    public static double At(ReadOnlySpan<double> seconds, IReadOnlyList<double> values, int from, double part)
    {
        var width = seconds[from + 1] - seconds[from];
        var rise = values[from + 1] - values[from];
        if (!(width > 0))
        {
            return values[from] + rise * part;
        }

        var (start, end) = (Slope(seconds, values, from) * width, Slope(seconds, values, from + 1) * width);
        var (square, cube) = (part * part, part * part * part);
        return values[from] + rise * (3 * square - 2 * cube) + start * (cube - 2 * square + part) + end * (cube - square);
    }

    private static double Slope(ReadOnlySpan<double> seconds, IReadOnlyList<double> values, int at)
    {
        var before = at > 0 ? (values[at] - values[at - 1]) / (seconds[at] - seconds[at - 1]) : double.NaN;
        var after = at + 1 < values.Count ? (values[at + 1] - values[at]) / (seconds[at + 1] - seconds[at]) : double.NaN;
        if (!double.IsFinite(before) || !double.IsFinite(after))
        {
            return double.IsFinite(before) ? before : double.IsFinite(after) ? after : 0;   // at an end: as the piece itself
        }

        return before * after > 0 ? 2 * before * after / (before + after) : 0;
    }
}

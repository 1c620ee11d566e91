namespace Handspun.Metrology.EndPlay;

/// <summary>Two levels that readings keep to, and a slope that both share.</summary>
/// <param name="Low">The lower level, in millimetres at second 0.</param>
/// <param name="High">The higher level.</param>
/// <param name="Slope">Millimetres a second that both rise.</param>
internal readonly record struct TwoLevels(double Low, double High, double Slope)
{
    private const int Bins = 160;
    private const int SlopesEachWay = 12;
    private const int MostReadings = 1500;

    /// <summary>How far apart the levels are.</summary>
    public double Apart => High - Low;

    /// <summary>How far a reading is above the middle of the two.</summary>
    public double AboveMiddle(double seconds, double millimetres) => millimetres - Slope * seconds - (Low + High) / 2;

    /// <summary>The longest stretch of readings that keeps to one side of the middle, from its first to one past its last.</summary>
    public (int From, int To) LongestVisit(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres)
    {
        var (from, to, start) = (0, 0, 0);
        for (var i = 1; i <= seconds.Length; i++)
        {
            var same = i < seconds.Length
                && AboveMiddle(seconds[i] - seconds[0], millimetres[i]) > 0 == AboveMiddle(seconds[start] - seconds[0], millimetres[start]) > 0;
            if (!same)
            {
                (from, to) = i - start > to - from ? (start, i) : (from, to);
                start = i;
            }
        }

        return (from, to);
    }

    /// <summary>The levels and the slope that leave the least scatter about the two (Otsu's threshold, for each slope that is tried).</summary>
    /// <param name="seconds">Times from the start of the capture.</param>
    /// <param name="millimetres">Readings; knocks left out.</param>
    public static TwoLevels Find(double[] seconds, double[] millimetres)
    {
        var stride = (seconds.Length + MostReadings - 1) / MostReadings;
        var count = (seconds.Length + stride - 1) / stride;
        var (times, values, rest) = (new double[count], new double[count], new double[count]);
        for (var i = 0; i < count; i++)
        {
            (times[i], values[i]) = (seconds[i * stride], millimetres[i * stride]);
        }

        var length = Math.Max(1e-9, times[^1] - times[0]);
        var reach = (values.Max() - values.Min()) / length;
        var (best, levels) = (double.PositiveInfinity, default(TwoLevels));
        void Try(double slope)
        {
            for (var i = 0; i < count; i++)
            {
                rest[i] = values[i] - slope * times[i];
            }

            var (scatter, low, high) = Split(rest);
            if (scatter < best)
            {
                (best, levels) = (scatter, new TwoLevels(low, high, slope));
            }
        }

        // No slope is tried first, so that one which does no better does not replace it.
        for (var step = 0; step <= SlopesEachWay; step++)
        {
            Try(step * reach / SlopesEachWay);
            Try(-step * reach / SlopesEachWay);
        }

        for (var fine = reach / SlopesEachWay / 2; fine > reach / SlopesEachWay / 20; fine /= 2)
        {
            var centre = levels.Slope;
            Try(centre + fine);
            Try(centre - fine);
        }

        return levels;
    }

    private static (double Scatter, double Low, double High) Split(double[] values)
    {
        var (least, most) = (values.Min(), values.Max());
        if (most - least < 1e-12)
        {
            return (0, least, most);
        }

        Span<int> counts = stackalloc int[Bins];
        Span<double> sums = stackalloc double[Bins];
        var (total, squares) = (0.0, 0.0);
        foreach (var value in values)
        {
            var bin = Math.Min(Bins - 1, (int)((value - least) / (most - least) * Bins));
            counts[bin]++;
            sums[bin] += value - least;
            total += value - least;
            squares += (value - least) * (value - least);
        }

        var (best, low, high) = (double.NegativeInfinity, 0.0, 0.0);
        var (below, sum) = (0, 0.0);
        for (var bin = 0; bin < Bins - 1; bin++)
        {
            below += counts[bin];
            sum += sums[bin];
            var above = values.Length - below;
            if (below == 0 || above == 0)
            {
                continue;
            }

            var explained = sum * sum / below + (total - sum) * (total - sum) / above;
            if (explained > best)
            {
                (best, low, high) = (explained, sum / below, (total - sum) / above);
            }
        }

        return (Math.Max(0, squares - best), least + low, least + high);
    }
}

namespace Handspun.Metrology.Motion;

/// <summary>Times of readings that a gauge took by an even clock of its own, out of the times at which they arrived.</summary>
/// <remarks>
/// A bridge or an adapter hands readings over late, never early, and often several at once. So the moments at which they were
/// taken lie on the lower edge of the arrivals, evenly spaced: for each reading, the least lateness of its neighbours within
/// half a second is taken for the lateness of all of them. What stays is a lateness that all have in common.
/// </remarks>
public static class EvenClock
{
    private static readonly TimeSpan Neighbourhood = TimeSpan.FromSeconds(0.5);

    // A clock that is off by more than this from what was stated, or readings that are missing here and there: then the
    // arrivals are better than a spacing that does not hold.
    private const double ToleratedOff = 0.02;
    private const double LongestPause = 10;
    private const double MostAtOnce = 5;
    private const int FewestReadings = 30;

    /// <summary>The times of the readings.</summary>
    /// <param name="arrivals">When they arrived, in seconds; never decreasing.</param>
    /// <param name="every">The time from one reading to the next by the gauge's clock.</param>
    /// <returns>As many times, never decreasing and never after the arrivals. A stretch that does not keep to the clock is left as it arrived.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The period is not above zero.</exception>
    public static double[] Spread(ReadOnlySpan<double> arrivals, TimeSpan every)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(every, TimeSpan.Zero);
        var times = arrivals.ToArray();
        var first = 0;
        for (var i = 1; i <= times.Length; i++)
        {
            if (i == times.Length || arrivals[i] - arrivals[i - 1] > LongestPause * every.TotalSeconds)
            {
                SpreadStretch(times.AsSpan(first, i - first), every.TotalSeconds, first > 0 ? times[first - 1] : double.NegativeInfinity);
                first = i;
            }
        }

        return times;
    }

    // No pause in it, so the readings that came can be counted off against the clock.
    private static void SpreadStretch(Span<double> times, double stated, double newest)
    {
        if (times.Length < FewestReadings)
        {
            return;
        }

        // The ends may each be late by as much as readings come at once; over a short stretch that would look like a wrong clock.
        var measured = (times[^1] - times[0]) / (times.Length - 1);
        var tolerated = ToleratedOff + (MostAtOnce / (times.Length - 1));
        if (Math.Abs(measured / stated - 1) > tolerated)
        {
            return;
        }

        var period = Math.Abs(measured / stated - 1) > ToleratedOff ? stated : measured;
        var lateness = new double[times.Length];
        for (var i = 0; i < times.Length; i++)
        {
            lateness[i] = times[i] - times[0] - i * period;
        }

        var least = LeastAround(lateness, Math.Max(1, (int)(Neighbourhood.TotalSeconds / period)));
        var start = times[0];
        for (var i = 0; i < times.Length; i++)
        {
            newest = Math.Max(newest, Math.Min(times[i], start + least[i] + i * period));
            times[i] = newest;
        }
    }

    // The least of each value and its neighbours on both sides, in one pass: the queue holds candidates, smallest first.
    private static double[] LeastAround(double[] values, int reach)
    {
        var least = new double[values.Length];
        var candidates = new LinkedList<int>();
        for (var ahead = 0; ahead < values.Length + reach; ahead++)
        {
            if (ahead < values.Length)
            {
                while (candidates.Last is { } last && values[last.Value] >= values[ahead])
                {
                    candidates.RemoveLast();
                }

                candidates.AddLast(ahead);
            }

            if (ahead - reach is >= 0 and var centre)
            {
                while (candidates.First!.Value < centre - reach)
                {
                    candidates.RemoveFirst();
                }

                least[centre] = values[candidates.First.Value];
            }
        }

        return least;
    }
}

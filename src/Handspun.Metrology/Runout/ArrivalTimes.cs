namespace Handspun.Metrology.Runout;

/// <summary>Times of readings that a driver hands over several at once.</summary>
internal static class ArrivalTimes
{
    /// <summary>Readings under one time stamp spread evenly back to the stamp before, as a gauge of steady rate sent them.</summary>
    public static double[] Spread(ReadOnlySpan<double> seconds)
    {
        var times = seconds.ToArray();
        var first = 0;
        while (first < times.Length)
        {
            var last = first;
            while (last + 1 < times.Length && seconds[last + 1] == seconds[first])
            {
                last++;
            }

            if (last > first && first > 0)
            {
                var before = times[first - 1];
                for (var i = first; i < last; i++)
                {
                    times[i] = before + (seconds[last] - before) * (i - first + 1) / (last - first + 1);
                }
            }

            first = last + 1;
        }

        SpreadHead(times, seconds);
        return times;
    }

    // Nothing comes before the first stamp; its readings are laid out at the pace of the next ones.
    private static void SpreadHead(double[] times, ReadOnlySpan<double> seconds)
    {
        var head = 0;
        while (head < seconds.Length && seconds[head] == seconds[0])
        {
            head++;
        }

        if (head > 1 && head < seconds.Length)
        {
            var pace = times[head] - seconds[0];
            for (var i = 0; i < head; i++)
            {
                times[i] = seconds[0] - pace * (head - 1 - i);
            }
        }
    }
}

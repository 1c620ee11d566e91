namespace Handspun.Metrology.Runout.Rotation;

/// <summary>Readings put together, a few neighbours to one, where there are far more of them than the profile has room for.</summary>
internal static class Thinning
{
    /// <summary>How many neighbours may go together so that so many remain for each turn.</summary>
    public static int Group(int readings, double turns, double perTurn) =>
        (int)Math.Max(1, Math.Floor(readings / Math.Max(turns, 0.5) / perTurn));

    /// <summary>Means of so many neighbours, of time and reading; a gap in time ends a group.</summary>
    /// <param name="seconds">Times of the readings, never decreasing.</param>
    /// <param name="millimetres">The readings.</param>
    /// <param name="group">Neighbours in a group; 1 leaves all as they are.</param>
    public static (double[] Seconds, double[] Millimetres) Means(double[] seconds, double[] millimetres, int group)
    {
        if (group < 2)
        {
            return (seconds, millimetres);
        }

        var gap = 3 * group * (seconds[^1] - seconds[0]) / seconds.Length;
        List<double> times = new(seconds.Length / group + 1);
        List<double> means = new(seconds.Length / group + 1);
        for (var first = 0; first < seconds.Length;)
        {
            var (time, sum, count) = (0.0, 0.0, 0);
            for (var i = first; i < seconds.Length && count < group && (count == 0 || seconds[i] - seconds[first] < gap); i++)
            {
                (time, sum) = (time + seconds[i] - seconds[first], sum + millimetres[i]);
                count++;
            }

            times.Add(seconds[first] + time / count);
            means.Add(sum / count);
            first += count;
        }

        return ([.. times], [.. means]);
    }
}

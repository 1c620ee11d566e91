namespace Handspun.Metrology.Runout.Rotation;

/// <summary>A first guess of the angle of each reading.</summary>
/// <param name="HighsPerTurn">How many highs were taken to make a turn; 0 where an index or an encoder gave the angle.</param>
/// <param name="Turns">The angle of each reading, in turns from an arbitrary zero; never decreasing.</param>
internal sealed record TurnStart(int HighsPerTurn, double[] Turns);

/// <summary>First guesses of the angle from the pattern in which the readings rise and fall.</summary>
internal static class ReversalStarts
{
    private const int MostHighs = 4;
    private const double EndDrop = 4;
    private static readonly double[] Depths = [0.6, 0.35, 0.18, 0.09];

    /// <summary>Every guess worth a fit: for each depth of reversal and each number of highs a turn for which a whole turn was seen.</summary>
    public static List<TurnStart> All(double[] millimetres, double noise)
    {
        List<TurnStart> starts = [];
        var range = millimetres.Max() - millimetres.Min();
        var before = -1;
        foreach (var depth in Depths)
        {
            var threshold = depth * range;
            if (threshold < 4 * noise && before >= 0)
            {
                break;
            }

            var reversals = Reversals.Find(millimetres, threshold);
            if (reversals.Count == before)
            {
                continue;
            }

            before = reversals.Count;
            for (var highs = 1; highs <= MostHighs && reversals.Count > 2 * highs; highs++)
            {
                if (Repeats(reversals, highs, range, noise))
                {
                    starts.Add(new(highs, Unroll(millimetres, reversals, 2 * highs, EndDrop * noise)));
                }
            }
        }

        return starts;
    }

    // The same turning point comes back at the same height on every turn; a rough test, the fits decide.
    private static bool Repeats(List<Reversal> reversals, int highs, double range, double noise)
    {
        var period = 2 * highs;
        var allowed = 0.25 * range + 6 * noise;
        for (var i = period; i < reversals.Count; i++)
        {
            if (Math.Abs(reversals[i].Millimetres - reversals[i - period].Millimetres) > allowed)
            {
                return false;
            }
        }

        return true;
    }

    // The angle of each reading when so many turning points make one turn.
    private static double[] Unroll(double[] millimetres, List<Reversal> reversals, int period, double endDrop)
    {
        var places = Places(reversals, period);
        var turns = new double[millimetres.Length];
        for (var i = -1; i < reversals.Count; i++)
        {
            var from = i < 0 ? 0 : reversals[i].Reading;
            var to = i + 1 < reversals.Count ? reversals[i + 1].Reading : turns.Length - 1;
            var (begin, end) = (Level(reversals, i, period), Level(reversals, i + 1, period));
            var (first, length) = (Place(places, i, period), Place(places, i + 1, period) - Place(places, i, period));
            var head = i < 0 ? Passed(millimetres, to, from, begin, endDrop) : from;
            var tail = i == reversals.Count - 1 ? Passed(millimetres, from, to, end, endDrop) : to;
            var reached = 0.0;
            for (var j = from; j <= to; j++)
            {
                // Between a low and a high a wave is near enough a cosine, whatever the speed was.
                var share = Math.Clamp((millimetres[j] - begin) / (end - begin), 0, 1);
                var along = Math.Acos(1 - 2 * share) / Math.PI;
                along = j < head ? -along : j > tail ? 2 - along : along;
                reached = i < 0 ? along : Math.Max(reached, along);
                turns[j] = first + length * reached;
            }
        }

        for (var j = 1; j < turns.Length; j++)
        {
            turns[j] = Math.Max(turns[j], turns[j - 1]);
        }

        return turns;
    }

    // Where the readings turned once more on the way to an end of the capture, at the level at which they do so on other
    // turns but too little for a turning point; the end where they did not.
    private static int Passed(double[] millimetres, int from, int to, double level, double drop)
    {
        const double near = 0.1;
        var way = Math.Sign(level - millimetres[from]);
        var extreme = from;
        for (var j = from; j != to; j += Math.Sign(to - from))
        {
            extreme = way * (millimetres[j] - millimetres[extreme]) > 0 ? j : extreme;
        }

        var there = Math.Abs(millimetres[extreme] - level) < near * Math.Abs(level - millimetres[from]);
        return there && way * (millimetres[extreme] - millimetres[to]) > drop ? extreme : to;
    }

    // Where in the turn each kind of turning point lies: the mean share of the time of the whole turns that were seen.
    private static double[] Places(List<Reversal> reversals, int period)
    {
        var places = new double[period];
        for (var kind = 0; kind < period; kind++)
        {
            var (sum, count) = (0.0, 0);
            for (var first = 0; first + period < reversals.Count; first++)
            {
                var whole = reversals[first + period].Reading - reversals[first].Reading;
                if (first % period == 0)
                {
                    sum += (double)(reversals[first + kind].Reading - reversals[first].Reading) / whole;
                    count++;
                }
            }

            places[kind] = count > 0 ? sum / count : (double)kind / period;
        }

        return places;
    }

    private static double Place(double[] places, int reversal, int period)
    {
        var turn = (int)Math.Floor((double)reversal / period);
        return turn + places[reversal - turn * period];
    }

    // The height of a turning point before the first or after the last is that of its like on another turn.
    private static double Level(List<Reversal> reversals, int reversal, int period)
    {
        while (reversal < 0)
        {
            reversal += period;
        }

        while (reversal >= reversals.Count)
        {
            reversal -= period;
        }

        return reversals[reversal].Millimetres;
    }
}

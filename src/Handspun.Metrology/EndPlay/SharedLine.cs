namespace Handspun.Metrology.EndPlay;

/// <summary>Two levels with one slope, drawn through holds so that most of them lie on it.</summary>
/// <param name="Low">The low stop at second 0.</param>
/// <param name="High">The high stop at second 0.</param>
/// <param name="Slope">Millimetres a second.</param>
internal readonly record struct SharedLine(double Low, double High, double Slope)
{
    /// <summary>How far a hold is off, in millimetres.</summary>
    public double Off(Hold hold) => hold.Millimetres - Slope * hold.Seconds - (hold.Stop == Stop.Low ? Low : High);

    /// <summary>The line that leaves the least sum of distances, each counted up to a reach; of all lines through two holds of one stop and one of the other, and those without slope.</summary>
    /// <param name="holds">The holds. At least one.</param>
    /// <param name="reach">The distance from which on a hold is off the line, no matter how far.</param>
    public static SharedLine Through(IReadOnlyList<Hold> holds, double reach)
    {
        const int most = 40;   // of a very long capture the first and the last strokes tell the slope
        var tried = holds.Count <= most ? holds : [.. holds.Take(most / 2), .. holds.Skip(holds.Count - most / 2)];
        var (lows, highs) = (tried.Where(hold => hold.Stop == Stop.Low).ToArray(), tried.Where(hold => hold.Stop == Stop.High).ToArray());
        var (best, least) = (default(SharedLine), double.PositiveInfinity);
        var enough = Math.Max(1, holds.Select(hold => hold.Places.Length).Order().ElementAt(holds.Count / 2) / 2.0);

        // A few readings that pass slowly look like a short hold, and the first hold is often a rest on the way.
        double Worth(Hold hold) => Math.Min(1, hold.Places.Length / enough) * (hold == holds[0] ? 0.7 : 1);
        void Try(double slope)
        {
            var low = Centre(lows, slope, reach, Worth);
            var high = Centre(highs, slope, reach, Worth);

            // A slope has to earn its place: few holds lie on some slope or other by chance.
            var sum = low.Sum + high.Sum + (slope == 0 ? 0 : 0.2 * reach);
            if (sum < least)
            {
                (best, least) = (new SharedLine(low.Level, high.Level, slope), sum);
            }
        }

        Try(0);
        foreach (var side in (Hold[][])[lows, highs])
        {
            for (var i = 0; i < side.Length; i++)
            {
                for (var j = i + 1; j < side.Length; j++)
                {
                    var apart = side[j].Seconds - side[i].Seconds;
                    var rise = side[j].Millimetres - side[i].Millimetres;

                    // A stand that creeps by more than this is no measurement, and a rest on the way would pass for a creep.
                    if (apart > 0 && Math.Abs(rise) < 0.06)
                    {
                        Try(rise / apart);
                    }
                }
            }
        }

        return best;
    }

    private static (double Level, double Sum) Centre(Hold[] side, double slope, double reach, Func<Hold, double> worth)
    {
        var (level, least) = (0.0, double.PositiveInfinity);
        foreach (var candidate in side)
        {
            var at = candidate.Millimetres - slope * candidate.Seconds;
            var sum = 0.0;
            foreach (var hold in side)
            {
                // A stroke may end short of the stop and never beyond it, so one beyond the level speaks twice against it.
                var beyond = (hold.Stop == Stop.High ? 1 : -1) * (hold.Millimetres - slope * hold.Seconds - at);
                sum += worth(hold) * (beyond > reach ? 2 : 1) * Math.Min(reach, Math.Abs(beyond));
            }

            if (sum < least)
            {
                (level, least) = (at, sum);
            }
        }

        return side.Length == 0 ? (0, 0) : (level, least);
    }
}

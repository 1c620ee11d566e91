namespace Handspun.Metrology.EndPlay;

/// <summary>A stretch in which the shaft rested near one end of its movement.</summary>
/// <param name="Stop">The end.</param>
/// <param name="Places">The readings that it rests on, by their place in the capture, in order. At least one.</param>
/// <param name="Seconds">The mean of their times.</param>
/// <param name="Millimetres">The mean of their values.</param>
/// <param name="Width">The width of the narrowest stretch of values that holds half of the visit's readings, in millimetres.</param>
internal sealed record Hold(Stop Stop, int[] Places, double Seconds, double Millimetres, double Width)
{
    private const double NearWidths = 5.2;   // 3.5 standard deviations, of which half of a normal distribution spans 1.35

    // Fewer readings than these beside a rest were on the way, however slowly.
    private const int FewestLeft = 5;
    private const double LeastShare = 0.25;

    /// <summary>The holds of one visit to an end: one, or more where the shaft rested on the way.</summary>
    /// <param name="stop">The end.</param>
    /// <param name="visit">The readings near that end, by their place, in order. At least one.</param>
    /// <param name="readings">What they are.</param>
    /// <param name="floor">The least standard deviation that the readings of a hold may be given.</param>
    public static IEnumerable<Hold> In(Stop stop, List<int> visit, SteadyReadings readings, double floor)
    {
        var (kept, width) = Rest(stop, visit, readings, floor);
        var before = visit.TakeWhile(place => place < kept[0]).ToList();
        var after = visit.SkipWhile(place => place <= kept[^1]).ToList();
        // The shaft still settles at first and is let go at last.
        var settling = kept.Length >= 12 ? kept.Length / 3 : kept.Length / 5;
        var core = kept.Length >= 4 ? kept[(settling + 1)..^(kept.Length / 10 + 1)] : kept;
        var hold = new Hold(stop, core, core.Average(place => readings.Seconds[place]), core.Average(place => readings.Millimetres[place]), width);
        var fewest = Math.Max(FewestLeft, LeastShare * kept.Length);
        return
        [
            .. before.Count >= fewest ? In(stop, before, readings, floor) : [],
            hold,
            .. after.Count >= fewest ? In(stop, after, readings, floor) : [],
        ];
    }

    // The readings near the narrowest stretch of values that holds half of them; those on the way there and back stay out.
    private static (int[] Kept, double Width) Rest(Stop stop, List<int> visit, SteadyReadings readings, double floor)
    {
        var middle = visit[visit.Count / 2];
        double[] sorted = [.. visit.Select(place => readings.WithoutDrift(place, middle)).Order()];
        var half = Math.Max(Math.Min(2, sorted.Length), (sorted.Length + 1) / 2);
        var first = 0;
        for (var i = 1; i + half <= sorted.Length; i++)
        {
            var (width, least) = (sorted[i + half - 1] - sorted[i], sorted[first + half - 1] - sorted[first]);

            // Of two that are as narrow, the one farther out: what lies further in was on the way.
            first = width < least - 1e-9 || (stop == Stop.High && width <= least + 1e-9) ? i : first;
        }

        var (from, to) = (sorted[first], sorted[first + half - 1]);
        var (centre, near) = ((from + to) / 2, Math.Max(NearWidths / 2 * (to - from), 3.5 * floor));
        return ([.. visit.Where(place => Math.Abs(readings.WithoutDrift(place, middle) - centre) <= near)], to - from);
    }
}

/// <summary>All readings of a capture, with the slope that its levels seem to have.</summary>
/// <param name="Seconds">Times from the start of the capture.</param>
/// <param name="Millimetres">Values.</param>
/// <param name="Slope">Millimetres a second.</param>
internal readonly record struct SteadyReadings(double[] Seconds, double[] Millimetres, double Slope)
{
    /// <summary>A reading as it would have been at the time of another.</summary>
    public double WithoutDrift(int place, int other) => Millimetres[place] - Slope * (Seconds[place] - Seconds[other]);
}

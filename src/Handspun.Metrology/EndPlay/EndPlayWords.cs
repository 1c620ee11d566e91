namespace Handspun.Metrology.EndPlay;

/// <summary>What a capture lacks, and what to do next.</summary>
internal static class EndPlayWords
{
    private const int FewestVisits = 3;
    private const double LeastShare = 0.35;

    /// <summary>Nothing moved.</summary>
    public const string NoMovement = "The readings do not move: push the shaft along its axis to its stop and hold it, then pull it to the other stop and hold it.";

    private const string OneStop = "Only one stop was held: move the shaft the other way until it stops, hold it there for about a second, and repeat.";
    private const string NoStop = "The readings move but rest nowhere: push until the shaft stops and hold it for about a second, then pull and hold.";
    private const string Once = "A stop that was seen once only may be none: push and pull again, and hold each stop for about a second.";
    private const string Unsteady = "One end comes out differently every time, so it is not a stop: push and pull firmly until the shaft stops each way.";

    /// <summary>The sentence; null where nothing is lacking.</summary>
    public static string? Lacking(Strokes strokes)
    {
        if (strokes.Held.Count == 0)
        {
            return NoMovement;
        }

        var (low, high) = (Count(strokes, Stop.Low).Counting, Count(strokes, Stop.High).Counting);
        return (low, high) switch
        {
            (0, 0) => NoStop,
            (0, _) or (_, 0) => OneStop,
            _ when Unsure(strokes, Stop.Low) || Unsure(strokes, Stop.High) => Unsteady,
            _ when Strokes.Visits(strokes.Counting) < FewestVisits || OnlyPassed(strokes, Stop.Low) || OnlyPassed(strokes, Stop.High) => Once,
            _ => null,
        };
    }

    // The far end of a single quick draw looks like a hold of two or three readings.
    private static bool OnlyPassed(Strokes strokes, Stop stop)
    {
        const int aHold = 4;
        return strokes.Held.Where(hold => hold.Stop == stop && hold.Counts).ToArray() is [{ Readings: < aHold }];
    }

    private static (int Counting, int Held) Count(Strokes strokes, Stop stop) =>
        (strokes.Held.Count(hold => hold.Stop == stop && hold.Counts), strokes.Held.Count(hold => hold.Stop == stop));

    // One hold of several, or few of their readings. The first hold is left aside where it does not count: it may be a rest on the way.
    private static bool Unsure(Strokes strokes, Stop stop)
    {
        const int several = 3;
        var (counting, all) = Count(strokes, stop);
        var held = strokes.Held.Where((hold, i) => hold.Stop == stop && (i > 0 || hold.Counts)).ToArray();
        return (counting == 1 && all >= several)
            || held.Where(hold => hold.Counts).Sum(hold => hold.Readings) < LeastShare * held.Sum(hold => hold.Readings);
    }
}

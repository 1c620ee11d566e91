using Handspun.Metrology.Runout;

namespace Handspun.Metrology.EndPlay;

/// <summary>The pushes and pulls of a capture, as far as they were held.</summary>
internal sealed record Strokes
{
    /// <summary>The gauge's step, in millimetres.</summary>
    public required double Step { get; init; }

    /// <summary>Standard deviation of the readings from one to the next, in millimetres.</summary>
    public required double Noise { get; init; }

    /// <summary>The two levels that the readings keep to.</summary>
    public required TwoLevels Levels { get; init; }

    /// <summary>Readings that stand alone.</summary>
    public required IReadOnlyList<int> Knocks { get; init; }

    /// <summary>Every hold, as the result shows it.</summary>
    public required IReadOnlyList<HeldStop> Held { get; init; }

    /// <summary>The holds that count, in order.</summary>
    public required IReadOnlyList<Hold> Counting { get; init; }

    /// <summary>Pairs of one stop and the other, holds that are near a stop and yet do not count included.</summary>
    public required int Cycles { get; init; }

    /// <summary>How often the readings went from one level to the other.</summary>
    public int Changes => Held.Where((hold, i) => i > 0 && hold.Stop != Held[i - 1].Stop).Count();

    /// <summary>Visits to one stop after the other; several holds in a row at the same stop are one.</summary>
    public static int Visits(IReadOnlyList<Hold> holds) => holds.Where((hold, i) => i == 0 || hold.Stop != holds[i - 1].Stop).Count();

    /// <summary>Finds them.</summary>
    /// <param name="seconds">Times; at least eight.</param>
    /// <param name="millimetres">Readings, as many.</param>
    /// <param name="resolution">The gauge's step; 0 where it is not known.</param>
    /// <param name="first">The place of the first of them in the capture.</param>
    public static Strokes Of(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, double resolution, int first)
    {
        var step = resolution > 0 ? resolution : ReadingNoise.Step(millimetres);
        var noise = ReadingNoise.Between(millimetres);
        var wild = Handspun.Metrology.Runout.Knocks.Find(millimetres, Math.Max(noise, 0.5 * step));
        var (times, values) = (seconds.ToArray(), millimetres.ToArray());
        var start = times[0];
        for (var i = 0; i < times.Length; i++)
        {
            times[i] -= start;
        }

        List<int> places = [.. Enumerable.Range(0, values.Length).Where(i => !wild[i])];
        var levels = TwoLevels.Find([.. places.Select(i => times[i])], [.. places.Select(i => values[i])]);
        var apart = levels.Apart > Math.Max(1.2 * step, 6 * noise);
        var holds = apart ? Holds.Find(places, times, values, levels, Math.Max(noise, 0.4 * step), step) : [];
        var (counts, near) = CountingHolds.Of(holds, levels, step);
        return new()
        {
            Step = step,
            Noise = noise,
            Levels = levels,
            Knocks = [.. Enumerable.Range(0, values.Length).Where(i => wild[i]).Select(i => first + i)],
            Held = [.. holds.Select((hold, i) => new HeldStop(hold.Stop, first + hold.Places[0], first + hold.Places[^1], hold.Places.Length, start + hold.Seconds, hold.Millimetres, counts[i]))],
            Counting = [.. holds.Where((_, i) => counts[i]).Select(hold => hold with { Places = [.. hold.Places.Select(place => first + place)], Seconds = start + hold.Seconds })],
            Cycles = Visits([.. holds.Where((_, i) => near[i])]) / 2,
        };
    }

    /// <summary>High minus low of each pair of visits, in order.</summary>
    /// <param name="level">The level of a hold, drift taken out.</param>
    public IReadOnlyList<double> ByCycle(Func<Hold, double> level)
    {
        List<(Stop Stop, List<double> Levels)> visits = [];
        foreach (var hold in Counting)
        {
            if (visits.Count == 0 || visits[^1].Stop != hold.Stop)
            {
                visits.Add((hold.Stop, []));
            }

            visits[^1].Levels.Add(level(hold));
        }

        return [.. visits.Chunk(2).Where(pair => pair.Length == 2).Select(pair => Math.Abs(pair[1].Levels.Average() - pair[0].Levels.Average()))];
    }
}

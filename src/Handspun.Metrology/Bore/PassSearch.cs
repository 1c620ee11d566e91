using Handspun.Metrology.Runout;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace Handspun.Metrology.Bore;

/// <summary>What a capture says of a bore, before it is put against a setting.</summary>
/// <param name="Rocks">Where the reading turned; null where it did not.</param>
/// <param name="Knocks">Readings that stand alone, by their place in the capture.</param>
/// <param name="Step">The gauge's step.</param>
/// <param name="Bore">What the gauge shows of the bore, larger where it spans more, in millimetres; NaN where there is no pass.</param>
/// <param name="Doubt">Its standard uncertainty.</param>
/// <param name="Passes">The passes that count.</param>
/// <param name="LeftOut">How many turned back early.</param>
internal sealed record PassSearch(
    Rocks? Rocks, int[] Knocks, double Step, double Bore, double Doubt, IReadOnlyList<BorePass> Passes, int LeftOut)
{
    private const double KnotsAPass = 4;
    private const double FewestKnots = 2.2;

    /// <summary>Looks for the passes and fits them.</summary>
    /// <param name="seconds">Times; at least eight.</param>
    /// <param name="millimetres">Readings, larger where the gauge spans more.</param>
    /// <param name="resolution">The gauge's step; 0 where it is not known.</param>
    /// <param name="first">The place of the first of them in the capture.</param>
    public static PassSearch Of(double[] seconds, double[] millimetres, double resolution, int first)
    {
        var step = resolution > 0 ? resolution : ReadingNoise.Step(millimetres);
        var noise = ReadingNoise.Between(millimetres);
        var wild = Runout.Knocks.Find(millimetres, Math.Max(noise, 0.5 * step));
        int[] places = [.. Enumerable.Range(0, wild.Length).Where(i => !wild[i])];
        int[] knocks = [.. Enumerable.Range(0, wild.Length).Where(i => wild[i]).Select(i => first + i)];
        double[] times = [.. places.Select(i => seconds[i])];
        double[] values = [.. places.Select(i => millimetres[i])];
        var rocks = Rocks.Find(values, noise, step);
        if (rocks is null || times[rocks.To - 1] <= times[rocks.From])
        {
            return new(null, knocks, step, double.NaN, double.NaN, [], 0);
        }

        var crosses = Crossing(rocks, values, noise, step);
        for (var round = 0; ; round++)
        {
            var (fit, passes) = Fit(rocks, crosses, times, values, step, noise);
            var stray = round < rocks.Bottoms.Count / 3 ? Stray(fit, passes.Length, step) : null;
            if (stray is { } pass)
            {
                crosses[passes[pass]] = false;
                continue;
            }

            var widening = StudentT.InvCDF(0, 1, Math.Max(1, passes.Length - 2), 0.975) / 2;
            return new(
                rocks,
                knocks,
                step,
                fit.Unknowns[RockModel.Bore],
                Math.Sqrt(Math.Max(0, fit.Covariance[0, 0])) * widening,
                WithoutTrend([.. passes.Select((bottom, i) => new BorePass(first + places[rocks.Bottoms[bottom]], times[rocks.Bottoms[bottom]], fit.InPass(i)))]),
                crosses.Count(cross => !cross));
        }
    }

    // Which bottoms go through the turning point: the low ones. A rock that turned back early stays above.
    private static bool[] Crossing(Rocks rocks, double[] values, double noise, double step)
    {
        const double ofTheHeight = 0.15;
        double[] bottoms = [.. rocks.Bottoms.Select(bottom => values[bottom])];
        double[] sorted = [.. bottoms.Order()];
        var low = sorted[sorted.Length / 3];
        var reach = Math.Max(ofTheHeight * rocks.Height, Math.Max(6 * noise, 1.5 * step));
        return [.. bottoms.Select(bottom => Math.Abs(bottom - low) <= reach)];
    }

    private static (RockFit Fit, int[] Passes) Fit(Rocks rocks, bool[] crosses, double[] times, double[] values, double step, double noise)
    {
        int[] passes = [.. Enumerable.Range(0, crosses.Length).Where(i => crosses[i])];
        var count = rocks.To - rocks.From;
        var bore = passes.Select(pass => values[rocks.Bottoms[pass]]).Median();
        var (pass, lean) = (new int[count], new double[count]);
        var (bottom, side, at) = (0, 1, 0);
        for (var i = 0; i < count; i++)
        {
            var place = rocks.From + i;
            while (bottom < rocks.Bottoms.Count && place > rocks.Bottoms[bottom])
            {
                side = crosses[bottom] ? -side : side;
                bottom++;
            }

            while (at + 1 < passes.Length && place > (passes[at] < rocks.Tops.Count ? rocks.Tops[passes[at]] : int.MaxValue))
            {
                at++;
            }

            (pass[i], lean[i]) = (at, side * Math.Sqrt(Math.Max(0, values[place] - bore)));
        }

        var seconds = times.AsSpan(rocks.From, count).ToArray();
        var usual = (seconds[^1] - seconds[0]) / Math.Max(1, rocks.Bottoms.Count);
        var knots = Math.Clamp(count / (double)rocks.Bottoms.Count / 2.4, FewestKnots, KnotsAPass);
        var model = new RockModel(seconds[0], seconds[^1], passes.Length, knots, usual);
        var readings = new RockReadings(seconds, values.AsSpan(rocks.From, count).ToArray(), pass, lean, step, rocks.Height);
        return (RockFit.Of(model, readings, bore, Math.Max(Math.Min(noise, 0.05 * rocks.Height), 0.3 * step)), passes);
    }

    // Seats that run one way are a creep that the fit took for seats.
    private static BorePass[] WithoutTrend(BorePass[] passes)
    {
        const int fewest = 4;
        var middle = passes.Average(pass => pass.Seconds);
        var squares = passes.Sum(pass => Math.Pow(pass.Seconds - middle, 2));
        var trend = passes.Length < fewest || squares == 0 ? 0 : passes.Sum(pass => (pass.Seconds - middle) * pass.Millimetres) / squares;
        return [.. passes.Select(pass => pass with { Millimetres = pass.Millimetres - trend * (pass.Seconds - middle) })];
    }

    // A pass far off all others, most likely one that turned back just before the turning point.
    private static int? Stray(RockFit fit, int passes, double step)
    {
        const int fewest = 4;
        if (passes < fewest)
        {
            return null;
        }

        double[] off = [.. Enumerable.Range(0, passes).Select(pass => fit.Unknowns[RockModel.Seat(pass)])];
        var middle = off.Median();
        var scatter = 1.4826 * off.Select(value => Math.Abs(value - middle)).Median();
        var worst = Enumerable.Range(0, passes).MaxBy(pass => Math.Abs(off[pass] - middle));
        return Math.Abs(off[worst] - middle) > Math.Max(6 * scatter, Math.Max(0.002, 0.5 * step)) ? worst : null;
    }
}

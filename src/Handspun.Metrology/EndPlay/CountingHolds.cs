using MathNet.Numerics.Distributions;

namespace Handspun.Metrology.EndPlay;

/// <summary>Which holds are at a stop, and which ended short of it, were a rest on the way or were disturbed.</summary>
internal static class CountingHolds
{
    // A hold that no stroke led to, the first, is a rest on the way as likely as not, so it has to fit better than the others.
    private const double Doubtful = 0.9;
    private const double Wrong = 0.9995;
    private const int FewestToJudge = 5;
    private const double LeastSure = 0.003;   // what the others have to say of the first for it to count, in millimetres
    private const double Spread = 1.4826;
    private const double WidestOfTheWay = 0.15;

    /// <summary>Whether each hold counts, and whether it is near a stop at least.</summary>
    /// <param name="holds">All holds, in order.</param>
    /// <param name="levels">The two levels.</param>
    /// <param name="step">The gauge's step.</param>
    public static (bool[] Counts, bool[] Near) Of(IReadOnlyList<Hold> holds, TwoLevels levels, double step)
    {
        if (holds.Count == 0)
        {
            return ([], []);
        }

        var reach = Math.Max(0.003, Math.Max(0.05 * levels.Apart, 1.2 * step));
        var line = SharedLine.Through(holds, reach);
        var offs = holds.Select(hold => Math.Abs(line.Off(hold))).ToArray();
        var usual = Spread * offs.Order().ElementAt(offs.Length / 2);
        var near = offs.Select(off => off <= Math.Max(reach, Math.Min(4 * usual, WidestOfTheWay * levels.Apart))).ToArray();
        var counts = near.ToArray();
        while (Worst(holds, counts, Math.Max(0.0005, step / Math.Sqrt(12))) is { } stray)
        {
            counts[stray] = false;
        }

        return (counts, near);
    }

    // The hold that the others contradict most, each held against a fit of all others (externally studentised residual, by the
    // leverages of one fit of all).
    private static int? Worst(IReadOnlyList<Hold> holds, bool[] counts, double floor)
    {
        int[] those = [.. Enumerable.Range(0, holds.Count).Where(i => counts[i])];
        if (those.Length <= FewestToJudge)
        {
            return null;
        }

        var kept = those.Select(i => holds[i]).ToArray();
        var model = StopModel.WithBestDrift(kept, floor);
        if (model.Fit([.. kept.Select(_ => 1.0)]) is not { } fit)
        {
            return null;
        }

        var (residuals, leverages) = (model.Residuals(fit), model.Leverages());
        var squares = residuals.Sum(residual => residual * residual);
        var free = kept.Length - model.Unknowns - 1;
        var (worst, furthest) = ((int?)null, 1.0);
        for (var k = 0; k < kept.Length && free > 0; k++)
        {
            if (leverages[k] > 1 - 1e-6)
            {
                continue;   // the only one of its stop: nothing contradicts it
            }

            var others = Math.Max(floor, Math.Sqrt(Math.Max(0, squares - residuals[k] * residuals[k] / (1 - leverages[k])) / free));
            var off = Math.Abs(residuals[k]) / (1 - leverages[k]);
            var allowed = StudentT.InvCDF(0, 1, free, 0.5 + (those[k] == 0 ? Doubtful : Wrong) / 2) * others / Math.Sqrt(1 - leverages[k]);
            if (those[k] == 0 && allowed > LeastSure)
            {
                return 0;
            }

            if (off / allowed > furthest)
            {
                (worst, furthest) = (those[k], off / allowed);
            }
        }

        return worst;
    }
}

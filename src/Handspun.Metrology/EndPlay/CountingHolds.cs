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

    // The hold that the others contradict most, each held against a fit of all others (externally studentised residual).
    private static int? Worst(IReadOnlyList<Hold> holds, bool[] counts, double floor)
    {
        int[] those = [.. Enumerable.Range(0, holds.Count).Where(i => counts[i])];
        var (worst, furthest) = ((int?)null, 1.0);
        foreach (var i in those)
        {
            var others = those.Where(other => other != i).Select(other => holds[other]).ToArray();
            if (others.Length < FewestToJudge || others.All(hold => hold.Stop != holds[i].Stop))
            {
                continue;
            }

            var model = StopModel.WithBestDrift(others, floor);
            if (model.Fit([.. others.Select(_ => 1.0)]) is not { } fit)
            {
                continue;
            }

            var free = others.Length - model.Unknowns;
            var scatter = Math.Max(floor, Math.Sqrt(model.Residuals(fit).Sum(residual => residual * residual) / free));
            var row = model.Row(holds[i]);
            var off = Math.Abs(holds[i].Millimetres - Enumerable.Range(0, row.Length).Sum(k => row[k] * fit[k]));
            var doubt = scatter * Math.Sqrt(1 + model.Leverage(row));
            var allowed = StudentT.InvCDF(0, 1, free, 0.5 + (i == 0 ? Doubtful : Wrong) / 2) * doubt;
            if (i == 0 && allowed > LeastSure)
            {
                return 0;
            }

            if (off / allowed > furthest)
            {
                (worst, furthest) = (i, off / allowed);
            }
        }

        return worst;
    }
}

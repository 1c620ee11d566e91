using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout.Rotation;

/// <summary>What the search for the angle came to.</summary>
/// <param name="Fit">The best fit; null where no whole turn could be made out.</param>
/// <param name="TurnsSeen">Turns that were seen, roughly where there is no fit.</param>
internal sealed record AngleFound(ProfileFit? Fit, double TurnsSeen);

/// <summary>Finds profile and angle together: several starts, several orders, the best by evidence.</summary>
internal static class AngleSearch
{
    private const int MostHarmonics = 8;
    private const double KnotsPerTurn = 24;
    private const double ReadingsPerKnot = 2.5;

    /// <summary>Searches.</summary>
    /// <param name="trace">The readings.</param>
    /// <param name="anchors">Angles that an index told; empty where there is none.</param>
    public static AngleFound Find(Trace trace, IReadOnlyList<AngleAnchor> anchors)
    {
        var starts = Starts(trace, anchors);
        if (starts.Count == 0)
        {
            return new(null, RoughTurns(trace));
        }

        var most = starts.Max(start => start.Turns[^1] - start.Turns[0]);
        var length = trace.Seconds[^1] - trace.Seconds[0];
        var intervals = (int)Math.Clamp(most * KnotsPerTurn, 4, Math.Max(4, trace.Seconds.Length / ReadingsPerKnot));
        var spline = new UniformSpline(trace.Seconds[0], length / intervals, intervals);
        AngleAnchor[] held = anchors.Count > 0 ? [.. anchors] : [new(trace.Seconds[0], 0, 1e-3)];
        var grid = new FitGrid(trace.Seconds, trace.Millimetres, held, spline, Math.Max(0.2 * trace.Resolution, 1e-6));

        JointFit? best = null;
        foreach (var start in starts)
        {
            var drift = start.Turns[^1] - start.Turns[0] < 1.5 ? 0 : 1;
            var fit = new JointFit(grid, Math.Max(2, start.HighsPerTurn + 1), drift);
            fit.StartFrom(anchors.Count > 0 ? start.Turns : [.. start.Turns.Select(turn => turn - start.Turns[0])]);
            fit.Run(3, robust: false);
            fit.Run(2);
            best = best is null || fit.Criterion < best.Criterion ? fit : best;
        }

        best = Grow(grid, best!);
        best.Run(4);
        return Describe(grid, best);
    }

    private static List<TurnStart> Starts(Trace trace, IReadOnlyList<AngleAnchor> anchors)
    {
        var starts = ReversalStarts.All(trace.Millimetres, trace.Noise);
        if (anchors.Count == 0)
        {
            return starts;
        }

        List<TurnStart> held = [.. starts.Select(start => IndexStarts.Bend(start, trace.Seconds, anchors)).OfType<TurnStart>()];
        if (IndexStarts.Even(trace.Seconds, anchors) is { } even)
        {
            held.Add(even);
        }

        return held;
    }

    // One wave more or less, and drift or none, as long as the evidence grows.
    private static JointFit Grow(FitGrid grid, JointFit best)
    {
        var turns = Math.Abs(best.Turns()[^1] - best.Turns()[0]);
        var most = (int)Math.Clamp(grid.Seconds.Length / Math.Max(turns, 1) / 3, 1, MostHarmonics);
        var mostDrift = turns < 1.5 ? 0 : 2;
        foreach (var step in new[] { -1, 1 })
        {
            for (var harmonics = best.Harmonics + step; harmonics >= 1 && harmonics <= most; harmonics += step)
            {
                var next = Next(grid, best, harmonics, best.DriftOrder);
                if (next.Criterion >= best.Criterion)
                {
                    break;
                }

                best = next;
            }
        }

        for (var drift = 0; drift <= mostDrift; drift++)
        {
            var next = Next(grid, best, best.Harmonics, drift);
            best = next.Criterion < best.Criterion ? next : best;
        }

        return best;
    }

    private static JointFit Next(FitGrid grid, JointFit from, int harmonics, int drift)
    {
        var next = new JointFit(grid, harmonics, drift);
        next.StartFrom(from);
        next.Run(3);
        return next;
    }

    private static AngleFound Describe(FitGrid grid, JointFit fit)
    {
        var turns = fit.Turns();
        var spline = fit.Spline.ToArray();
        return new(
            new ProfileFit
            {
                Harmonics = fit.Harmonics,
                Series = fit.Series.ToArray(),
                Covariance = fit.SeriesCovariance(),
                TurnsAt = seconds => grid.Spline.At(seconds, spline),
                Turns = turns,
                Residuals = fit.Residuals,
                Weights = fit.Weights,
                Sigma = fit.Sigma,
            },
            Math.Abs(turns[^1] - turns[0]));
    }

    // Without a whole turn every reversal is half a turn, and the ends are a part of one.
    private static double RoughTurns(Trace trace)
    {
        if (trace.Millimetres.Length < 2)
        {
            return 0;
        }

        var reversals = Reversals.Find(trace.Millimetres, Math.Max(0.3 * trace.Range, 4 * trace.Noise));
        return reversals.Count == 0 ? 0.25 : 0.5 * (reversals.Count - 1) + 0.4;
    }
}

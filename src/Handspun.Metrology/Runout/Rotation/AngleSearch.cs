using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout.Rotation;

/// <summary>What the search for the angle came to.</summary>
/// <param name="Fit">The best fit; null where no whole turn could be made out.</param>
/// <param name="TurnsSeen">Turns that were seen, roughly where there is no fit.</param>
internal sealed record AngleFound(ProfileFit? Fit, double TurnsSeen);

/// <summary>Finds profile and angle together: several starts, several orders, the best by evidence.</summary>
/// <remarks>
/// Starts and orders are compared on a sample of the readings, so that the choice costs about the same for a short
/// capture as for a long one. Only the chosen fit sees them all.
/// </remarks>
internal static class AngleSearch
{
    private const double KnotsPerTurn = 24;
    private const double ReadingsPerKnot = 1.6;
    private const double FewestPerTurn = 2.5;
    private const double SampleTurns = 10;
    /// <summary>Readings a turn that are enough to choose by.</summary>
    public const double SamplePerTurn = 48;
    private const double MostPerTurn = 96;
    private const int Many = 40_000;
    private const double Close = 50;
    private const int MostCompared = 2;
    /// <summary>Residuals beyond so many times the noise mean that something is wrong.</summary>
    public const double Misfit = 3;
    private static readonly double[] OtherStiffness = [0.001, 0.01, 0.03];

    // Any shape can pass for one that repeats itself within a turn; the plain count is believed unless the evidence is against it.
    private const double HighsCost = 15;

    /// <summary>Searches.</summary>
    /// <param name="trace">The readings.</param>
    /// <param name="capture">The capture, for its index.</param>
    public static AngleFound Find(Trace trace, RotationCapture capture)
    {
        var free = ReversalStarts.All(trace.Millimetres, trace.Noise);
        if (capture.IndexSeconds.IsEmpty)
        {
            return Find(trace, Marks(trace, capture, free), free);
        }

        var counted = IndexPulses.Count(capture.IndexSeconds.Span, capture.TurnsPerIndex, trace);
        var recounted = IndexPulses.Recount(counted, capture.TurnsPerIndex, trace.Seconds, free);
        var found = Find(trace, recounted ?? counted, free);
        return found with { Fit = found.Fit is null ? null : found.Fit with { IndexRecounted = recounted is not null } };
    }

    // Calls of the mark count turns only where they agree with the readings; a call may be left out, or come for another reason.
    private static List<AngleAnchor> Marks(Trace trace, RotationCapture capture, List<TurnStart> free)
    {
        var calls = IndexPulses.CountMarks(capture.MarkSeconds.Span, trace);
        var counted = IndexPulses.Recount(calls, 1, trace.Seconds, free) ?? calls;
        return counted.Count > 1 && free.Any(start => IndexStarts.Bend(start, trace.Seconds, counted) is not null) ? counted : [];
    }

    // What the readings alone tell, moved to the pulses, is a better start than an even hand between them.
    private static AngleFound Find(Trace trace, List<AngleAnchor> anchors, List<TurnStart> free)
    {
        var alone = anchors.Count == 0 || free.Count == 0 ? null : Choose(trace, [], free);
        var held = alone is null ? null : IndexStarts.Bend(new(0, alone.TurnsAt(trace, trace.Seconds)), trace.Seconds, anchors);
        return Choose(trace, anchors, held is null ? Starts(trace, anchors, free) : [held]) is not { } choice ? new(null, RoughTurns(trace))
            : choice.Whole ? Polished(trace, anchors, choice)
            : FitAll(trace, anchors, choice);
    }

    private static Choice? Choose(Trace trace, List<AngleAnchor> anchors, List<TurnStart> starts)
    {
        // A pulse train that has nothing to do with the shaft may ask for more turns than there are readings.
        starts = [.. starts.Where(start => start.Turns[^1] - start.Turns[0] < trace.Seconds.Length / FewestPerTurn)];
        if (starts.Count == 0)
        {
            return null;
        }

        var most = starts.Max(start => start.Turns[^1] - start.Turns[0]);
        var (sampleGrid, whole) = Sample(trace, anchors, most);
        List<(JointFit Fit, TurnStart Start)> tried = [];
        foreach (var start in starts)
        {
            tried.Add((OrderSearch.FromTurns(sampleGrid, TurnsAt(sampleGrid, trace, start), Math.Max(2, start.HighsPerTurn + 1)), start));
        }

        static double Cost(JointFit fit, TurnStart start) => fit.Criterion + HighsCost * Math.Max(0, start.HighsPerTurn - 1);
        tried.RemoveAll(one => !double.IsFinite(one.Fit.Criterion));
        if (tried.Count == 0)
        {
            return null;
        }

        Dwell.Shares(sampleGrid.Seconds, tried.MinBy(one => Cost(one.Fit, one.Start)).Fit.Turns()).CopyTo(sampleGrid.Shares, 0);
        var least = tried.Min(one => Cost(one.Fit, one.Start));
        var (best, chosen) = tried
            .Where(one => Cost(one.Fit, one.Start) <= least + Close)
            .OrderBy(one => Cost(one.Fit, one.Start))
            .Take(MostCompared)
            .Select(one => (Fit: OrderSearch.Best(sampleGrid, one.Fit), one.Start))
            .MinBy(one => Cost(one.Fit, one.Start));
        if (best.Sigma > Misfit * trace.Noise || LeftOut.InRows(best.Weights) > LeftOut.Most)
        {
            // Something is wrong: every start once more, with a more and a less stiff angle to begin with.
            (best, chosen) = tried
                .SelectMany(one => OtherStiffness, (one, bend) => (Fit: OrderSearch.Best(sampleGrid, one.Fit, bend), one.Start))
                .Append((Fit: best, Start: chosen))
                .MinBy(one => Cost(one.Fit, one.Start));
        }

        return new(best, chosen, most, whole);
    }

    private static List<TurnStart> Starts(Trace trace, List<AngleAnchor> anchors, List<TurnStart> free)
    {
        if (anchors.Count == 0)
        {
            return [.. free];
        }

        List<TurnStart> held = [.. free.Select(start => IndexStarts.Bend(start, trace.Seconds, anchors)).OfType<TurnStart>()];
        if (IndexStarts.Even(trace.Seconds, anchors) is { } even)
        {
            held.Add(even);
        }

        return held;
    }

    // The first turns, thinned; whole where that is every reading.
    private static (FitGrid Grid, bool Whole) Sample(Trace trace, IReadOnlyList<AngleAnchor> anchors, double turns)
    {
        var group = Thinning.Group(trace.Seconds.Length, turns, SamplePerTurn);
        var readings = turns <= SampleTurns * 1.3 ? trace.Seconds.Length : (int)(trace.Seconds.Length * SampleTurns / turns);
        var (seconds, millimetres) = Thinning.Means(trace.Seconds[..readings], trace.Millimetres[..readings], group);
        var share = (double)readings / trace.Seconds.Length;
        return (Lay(trace, seconds, millimetres, anchors, turns * share), group == 1 && readings == trace.Seconds.Length);
    }

    private static AngleFound Polished(Trace trace, IReadOnlyList<AngleAnchor> anchors, Choice choice)
    {
        choice.Best.Run(6);
        return Describe(trace, choice.Best.Grid, choice.Best, anchors);
    }

    private static AngleFound FitAll(Trace trace, IReadOnlyList<AngleAnchor> anchors, Choice choice)
    {
        var (best, most) = (choice.Best, choice.MostTurns);
        var group = trace.Seconds.Length < Many ? 1 : Thinning.Group(trace.Seconds.Length, most, MostPerTurn);
        var (seconds, millimetres) = Thinning.Means(trace.Seconds, trace.Millimetres, group);
        var grid = Lay(trace, seconds, millimetres, anchors, most);
        var fit = new JointFit(grid, best.Harmonics, best.DriftOrder);
        var turnsAt = choice.TurnsAt(trace, seconds);
        Dwell.Shares(seconds, turnsAt).CopyTo(grid.Shares, 0);
        if (grid.Spline.Equals(best.Grid.Spline))
        {
            fit.StartFrom(best);
        }
        else
        {
            fit.StartFrom(turnsAt, best.Series, best.Sigma, best.Smoothness);
        }

        fit.Run(12);
        return Describe(trace, grid, fit, anchors);
    }

    /// <summary>Lays readings on a spline that is fine enough for a hand.</summary>
    public static FitGrid Lay(Trace trace, double[] seconds, double[] millimetres, IReadOnlyList<AngleAnchor> anchors, double turns)
    {
        var length = seconds[^1] - seconds[0];
        var intervals = (int)Math.Clamp(turns * KnotsPerTurn, 4, Math.Max(4, seconds.Length / ReadingsPerKnot));
        AngleAnchor[] held = anchors.Count > 0
            ? [.. anchors.Where(anchor => anchor.Seconds >= seconds[0] && anchor.Seconds <= seconds[^1])]
            : [];
        return new FitGrid(
            seconds,
            millimetres,
            held.Length > 0 ? held : [new(seconds[0], 0, 1e-3)],
            new UniformSpline(seconds[0], length / intervals, intervals),
            Math.Max(0.2 * trace.Resolution, 1e-6));
    }

    private static double[] TurnsAt(FitGrid grid, Trace trace, TurnStart start)
    {
        var zero = grid.Anchors.Count == 1 && grid.Anchors[0].Turns == 0 && grid.Anchors[0].Seconds == grid.Seconds[0] ? start.Turns[0] : 0;
        var turns = new double[grid.Seconds.Length];
        for (var i = 0; i < turns.Length; i++)
        {
            turns[i] = EncoderAngle.Between(trace.Seconds, start.Turns, grid.Seconds[i]) - zero;
        }

        return turns;
    }

    /// <summary>Puts a fit into words that do not depend on how it was found.</summary>
    public static AngleFound Describe(Trace trace, FitGrid grid, JointFit fit, IReadOnlyList<AngleAnchor> anchors)
    {
        var spline = fit.Spline.ToArray();
        var series = fit.Series.ToArray();
        double TurnsAt(double seconds) => grid.Spline.At(seconds, spline);

        var full = grid.Seconds == trace.Seconds;
        double[] turns = full ? fit.Turns() : Array.ConvertAll(trace.Seconds, TurnsAt);
        var (residuals, weights) = full ? (fit.Residuals, fit.Weights) : RobustWeights.Of(trace, turns, series, fit.Harmonics, grid.NoiseFloor);
        var scatter = full ? fit.Sigma : Math.Max(fit.Sigma, trace.Noise);   // means of neighbours scatter less than the readings
        var (covariance, rounding) = fit.SeriesCovariance(new RoundingSums(series.Length, trace.Resolution, scatter * scatter));
        return new(
            new ProfileFit
            {
                Harmonics = fit.Harmonics,
                Series = series,
                Covariance = covariance,
                Rounding = rounding,
                TurnsAt = TurnsAt,
                End = trace.Seconds[^1],
                Turns = turns,
                Residuals = residuals,
                Weights = weights,
                Sigma = fit.Sigma,
                Smoothness = fit.Smoothness,
                Anchors = anchors,
            },
            Math.Abs(turns[^1] - turns[0]));
    }

    // Without a whole turn every reversal is taken for half a turn, and the ends for as much of one as a cosine would make.
    private static double RoughTurns(Trace trace)
    {
        var range = trace.Range;
        var reversals = Reversals.Find(trace.Millimetres, Math.Max(0.3 * range, 4 * trace.Noise));
        if (reversals.Count == 0)
        {
            return 0.25;
        }

        double Part(double from, double to) => Math.Acos(1 - 2 * Math.Min(1, Math.Abs(to - from) / range)) / (2 * Math.PI);
        return Part(trace.Millimetres[0], reversals[0].Millimetres)
            + 0.5 * (reversals.Count - 1)
            + Part(reversals[^1].Millimetres, trace.Millimetres[^1]);
    }

    /// <summary>The best fit to the sample, and the guess that it came from.</summary>
    private sealed record Choice(JointFit Best, TurnStart Start, double MostTurns, bool Whole)
    {
        /// <summary>The sample's angle as far as it goes, then the guess from where the sample ends.</summary>
        public double[] TurnsAt(Trace trace, double[] seconds)
        {
            var end = Best.Grid.Seconds[^1];
            double Guess(double at) => EncoderAngle.Between(trace.Seconds, Start.Turns, at);
            var step = Best.TurnsAt(end) - Guess(end);
            return Array.ConvertAll(seconds, at => at <= end ? Best.TurnsAt(at) : Guess(at) + step);
        }
    }
}

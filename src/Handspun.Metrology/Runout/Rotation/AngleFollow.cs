using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout.Rotation;

/// <summary>Angle and profile of a capture that has grown a little since it was last searched.</summary>
internal static class AngleFollow
{
    private const int Rounds = 4;
    private const double Tolerance = 0.5;
    private const double LastSeconds = 0.5;
    private const double Backwards = 0.02;
    private const double FarthestAhead = 0.3;
    private const double FarthestFromPulse = 0.1;
    private const double Worse = 1.5;

    /// <summary>Goes on from what was found before; null where that does not fit any more and a search is due.</summary>
    /// <param name="trace">The readings now.</param>
    /// <param name="capture">The capture now, for its index.</param>
    /// <param name="before">What was found when there were fewer of them.</param>
    public static AngleFound? From(Trace trace, RotationCapture capture, ProfileFit before)
    {
        if (trace.Seconds[^1] - before.End > FarthestAhead   // it stood, and moves again
            || before.IndexRecounted || (before.Anchors.Count == 0 && !capture.IndexSeconds.IsEmpty))
        {
            return null;
        }

        var anchors = capture.IndexSeconds.IsEmpty
            ? before.Anchors
            : IndexPulses.Count(capture.IndexSeconds.Span, capture.TurnsPerIndex, trace);
        var turnsAt = Ahead(before, anchors.Count == 0 ? trace.Seconds[0] : null);
        if (anchors.Count > 0 && Math.Abs(turnsAt(anchors[^1].Seconds) - anchors[^1].Turns) > FarthestFromPulse)
        {
            return null;
        }

        var turns = turnsAt(trace.Seconds[^1]) - turnsAt(trace.Seconds[0]);
        var group = Thinning.Group(trace.Seconds.Length, turns, AngleSearch.SamplePerTurn);
        var (seconds, millimetres) = Thinning.Means(trace.Seconds, trace.Millimetres, group);
        var grid = AngleSearch.Lay(trace, seconds, millimetres, anchors, turns);
        var fit = new JointFit(grid, before.Harmonics, before.DriftOrder);
        var angles = Array.ConvertAll(seconds, at => turnsAt(at));
        Dwell.Shares(seconds, angles).CopyTo(grid.Shares, 0);
        fit.StartFrom(angles, before.Series, before.Sigma, before.Smoothness);
        fit.Run(Rounds, Tolerance);
        var ran = fit.Turns();
        var back = ran.Max() - ran[^1];   // near a high or low the readings look alike both ways
        return back < Backwards && fit.Sigma < AngleSearch.Misfit * trace.Noise && fit.Sigma < Worse * before.Sigma && LeftOut.InRows(fit.Weights) <= LeftOut.Most
            ? AngleSearch.Describe(trace, grid, fit, anchors)
            : null;
    }

    // Beyond its end the hand is taken to go on as it last did; without an anchor the first reading is at zero.
    private static Func<double, double> Ahead(ProfileFit before, double? zeroAt)
    {
        var end = before.End;
        var last = before.TurnsAt(end);
        var speed = Math.Max(0, (last - before.TurnsAt(end - LastSeconds)) / LastSeconds);
        var zero = zeroAt is { } at ? before.TurnsAt(at) : 0;
        return seconds => (seconds <= end ? before.TurnsAt(seconds) : last + speed * (seconds - end)) - zero;
    }
}

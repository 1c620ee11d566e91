using Handspun.Metrology.Quantities;
using MathNet.Numerics.Statistics;

namespace Handspun.Metrology.Runout.Faults;

/// <summary>Finds narrow places that stand out of the fitted profile at the same angle on every turn.</summary>
/// <remarks>A knock stands out once; a fault comes back. So a place counts only when it was seen on nearly every turn on which a reading fell there, and on three turns at least.</remarks>
internal static class LocalFaults
{
    private const int FewestTurns = 3;
    private const double Share = 0.7;
    private const double Stands = 5;
    private const double StandsSteps = 2;
    private const double Apart = 4;
    private const double WidestDegrees = 60;
    private const double ScratchDegrees = 8;

    /// <summary>The faults that the readings show about a fit; single wild readings count as well, for a narrow fault looks like one on each turn.</summary>
    public static List<FoundFault> Find(RotationCapture capture, Trace trace, ProfileFit fit)
    {
        List<double> turns = [.. fit.Turns];
        List<double> residuals = [.. fit.Residuals];
        foreach (var left in trace.Rejected.Where(left => left.Reason is RejectionReason.Knock or RejectionReason.LocalFault))
        {
            var seconds = capture.Seconds.Span[left.Reading];
            var turn = fit.TurnsAt(seconds);
            turns.Add(turn);
            residuals.Add(capture.Millimetres.Span[left.Reading] - fit.HeightAt(turn) - fit.Drift(trace.CourseAt(seconds)));
        }

        return Find([.. turns], [.. residuals], Math.Max(Stands * fit.Sigma, StandsSteps * trace.Resolution));
    }

    private static List<FoundFault> Find(double[] turns, double[] residuals, double least)
    {
        List<FoundFault> faults = [];
        foreach (var sign in (int[])[1, -1])
        {
            int[] standing = [.. Enumerable.Range(0, turns.Length).Where(i => sign * residuals[i] > least).OrderBy(i => turns[i] - Math.Floor(turns[i]))];
            faults.AddRange(Groups(standing, turns).Select(group => Judge(group, turns, residuals, sign)).OfType<FoundFault>());
        }

        return faults;
    }

    // Neighbours in the turn, whichever turn they were read on; round the end of the turn too.
    private static List<List<int>> Groups(int[] standing, double[] turns)
    {
        List<List<int>> groups = [];
        double Place(int reading) => 360 * (turns[reading] - Math.Floor(turns[reading]));
        foreach (var reading in standing)
        {
            if (groups.Count > 0 && Place(reading) - Place(groups[^1][^1]) < Apart)
            {
                groups[^1].Add(reading);
            }
            else
            {
                groups.Add([reading]);
            }
        }

        if (groups.Count > 1 && Place(groups[0][0]) + 360 - Place(groups[^1][^1]) < Apart)
        {
            groups[^1].AddRange(groups[0]);
            groups.RemoveAt(0);
        }

        return groups;
    }

    private static FoundFault? Judge(List<int> group, double[] turns, double[] residuals, int sign)
    {
        var first = turns[group[0]];
        double FromFirst(double turn) => turn - first - Math.Round(turn - first);
        var (from, to) = (group.Min(i => FromFirst(turns[i])), group.Max(i => FromFirst(turns[i])));
        if (360 * (to - from) > WidestDegrees)
        {
            return null;
        }

        int Turn(int reading) => (int)Math.Round(turns[reading] - first - FromFirst(turns[reading]));
        bool Inside(int reading) => FromFirst(turns[reading]) is var at && at >= from && at <= to;
        var seen = group.GroupBy(Turn).ToList();
        var looked = Enumerable.Range(0, turns.Length).Where(i => double.IsFinite(turns[i]) && Inside(i)).Select(Turn).Distinct().Count();
        if (seen.Count < FewestTurns || seen.Count < Share * looked)
        {
            return null;
        }

        double[] heights = [.. seen.Select(turn => turn.Max(i => sign * residuals[i]))];
        var (mean, spread) = heights.MeanStandardDeviation();
        var width = 360 * (to - from);
        return new(
            first + from,
            first + to,
            sign > 0 ? LocalFaultKind.Raised : width <= ScratchDegrees ? LocalFaultKind.Scratch : LocalFaultKind.Recess,
            sign * mean,
            2 * spread / Math.Sqrt(heights.Length),
            seen.Count,
            looked);
    }
}

/// <summary>A fault and where its readings lie, in turns; heights in millimetres.</summary>
internal sealed record FoundFault(double Begins, double Ends, LocalFaultKind Kind, double Height, double HeightU95, int Turns, int TurnsLooked)
{
    private const double Flank = 3.0 / 360;

    /// <summary>Whether a reading at this angle is one of the fault, its flanks included.</summary>
    public bool Holds(double turns)
    {
        var off = turns - (Begins + Ends) / 2;
        return Math.Abs(off - Math.Round(off)) <= (Ends - Begins) / 2 + Flank;
    }

    /// <summary>The fault with its angle from zero, which is given in turns.</summary>
    public LocalFault From(double zero) => new(
        Kind,
        Angle.FromDegrees(360 * ((Begins + Ends) / 2 - zero)),
        360 * (Ends - Begins),
        Length.FromMillimetres(Height),
        Length.FromMillimetres(HeightU95),
        Turns,
        TurnsLooked);
}

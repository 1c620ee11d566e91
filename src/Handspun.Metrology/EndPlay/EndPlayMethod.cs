using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.EndPlay;

/// <summary>The end play of a shaft that a hand pushes and pulls from stop to stop under an indicator on its end.</summary>
public static class EndPlayMethod
{
    private const double ManyKnocksShare = 0.05;
    private const int MostChanges = 2;   // to where the strokes are, and away

    /// <summary>Measures the end play. The same for a finished capture, a replayed one, and one that still goes on.</summary>
    /// <param name="seconds">When each reading was taken, on one monotonic clock; never decreasing.</param>
    /// <param name="millimetres">What each reading was; finite, and as many as there are times.</param>
    /// <param name="gauge">What is known of the gauge; the lean is that of the plunger off the shaft's axis.</param>
    /// <param name="settings">What is asked for.</param>
    public static EndPlayResult Measure(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, GaugeTraits gauge, EndPlaySettings settings)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        ArgumentNullException.ThrowIfNull(settings);
        var bare = new EndPlayResult { Status = EndPlayStatus.Rejected, Readings = millimetres.Length, CyclesWanted = settings.CyclesWanted };
        if (CaptureCheck.FaultOfReadings(seconds, millimetres) is { } fault)
        {
            return bare with { Missing = fault };
        }

        bare = bare with { Status = EndPlayStatus.TooShort };
        if (millimetres.Length < CaptureCheck.FewestReadings)
        {
            return bare with { Missing = EndPlayWords.NoMovement };
        }

        var strokes = Found(seconds, millimetres, gauge.Resolution.Millimetres);
        bare = bare with { Knocks = strokes.Knocks, Holds = strokes.Held };
        return EndPlayWords.Lacking(strokes) is { } lacking
            ? bare with { Missing = lacking, Cycles = strokes.Cycles }
            : Measured(bare, strokes, millimetres, gauge);
    }

    // Before the pushes the plunger may have stood somewhere else altogether; then the stretch that keeps to one side holds them.
    private static Strokes Found(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, double resolution)
    {
        var whole = Strokes.Of(seconds, millimetres, resolution, first: 0);
        if (EndPlayWords.Lacking(whole) is null || whole.Changes > MostChanges)
        {
            return whole;
        }

        var (from, to) = whole.Levels.LongestVisit(seconds, millimetres);
        if (to - from < CaptureCheck.FewestReadings || to - from == seconds.Length)
        {
            return whole;
        }

        var part = Strokes.Of(seconds[from..to], millimetres[from..to], resolution, from);
        return EndPlayWords.Lacking(part) is null ? part : whole;
    }

    private static EndPlayResult Measured(EndPlayResult bare, Strokes strokes, ReadOnlySpan<double> millimetres, GaugeTraits gauge)
    {
        var holds = strokes.Counting;
        var values = new List<double[]>(holds.Count);
        foreach (var hold in holds)
        {
            var readings = new double[hold.Places.Length];
            for (var i = 0; i < readings.Length; i++)
            {
                readings[i] = millimetres[hold.Places[i]];
            }

            values.Add(readings);
        }

        var fit = StopFit.Of(holds, values, strokes.Step, 2 * strokes.Levels.Apart);
        var budget = EndPlayBudget.For(
            fit.Apart,
            fit.WithoutRounding,
            Math.Sqrt(Math.Max(0, fit.Uncertainty * fit.Uncertainty - fit.WithoutRounding * fit.WithoutRounding)),
            gauge);
        var byCycle = strokes.ByCycle(hold => hold.Millimetres - fit.Model.Drift(fit.Unknowns, hold.Seconds));
        var result = bare with
        {
            Status = EndPlayStatus.Measured,
            Cycles = strokes.Cycles,
            EndPlay = Length.FromMillimetres(fit.Apart),
            EndPlayU95 = budget.Expanded,
            Budget = budget,
            Spread = byCycle.Count > 1 ? Length.FromMillimetres(byCycle.Max() - byCycle.Min()) : null,
            ByCycleMillimetres = byCycle,
            StopsAtHolds = [.. strokes.Held.Select(hold => fit.Model.Drift(fit.Unknowns, hold.Seconds)).Select(drift => (fit.Unknowns[0] + drift, fit.Unknowns[1] + drift))],
        };
        return result with { Warnings = Warnings(result, strokes) };
    }

    private static List<EndPlayWarning> Warnings(EndPlayResult result, Strokes strokes)
    {
        List<EndPlayWarning> warnings = [];
        void Warn(EndPlayWarning warning, bool when)
        {
            if (when)
            {
                warnings.Add(warning);
            }
        }

        var (endPlay, expanded) = (result.EndPlay!.Value.Millimetres, result.EndPlayU95!.Value.Millimetres);
        Warn(EndPlayWarning.FewCycles, result.Cycles < result.CyclesWanted);
        Warn(EndPlayWarning.CyclesDisagree, result.Spread is { } spread && spread.Millimetres > 0.1 * endPlay + 3 * expanded + 2 * strokes.Step);
        Warn(EndPlayWarning.StopMissed, strokes.Held.Skip(1).Any(hold => !hold.Counts && hold.Readings >= 4));   // the first may be a rest on the way
        Warn(EndPlayWarning.ShortHolds, strokes.Counting.Count(hold => hold.Places.Length <= 2) > strokes.Counting.Count / 4);
        Warn(EndPlayWarning.ManyRejected, result.Knocks.Count > ManyKnocksShare * result.Readings);
        Warn(EndPlayWarning.CoarseResolution, endPlay < 10 * strokes.Step);
        return warnings;
    }
}

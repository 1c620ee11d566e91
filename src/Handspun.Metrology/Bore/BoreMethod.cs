using Handspun.Metrology.EndPlay;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Bore;

/// <summary>A bore from a two-point gauge that a hand rocks through its turning point, where it spans least; and the size of a round body that a hand rolls through under a gauge, where it spans most.</summary>
/// <remarks>A body under a round tip is as high as √(r² − x²) at x beside its middle, near there a square as a leaning gauge has it: the same fit upside down.</remarks>
public static class BoreMethod
{
    private const double ManyKnocksShare = 0.05;

    /// <summary>Measures the bore. The same for a finished capture, a replayed one, and one that still goes on.</summary>
    /// <param name="seconds">When each reading was taken, on one monotonic clock; never decreasing.</param>
    /// <param name="millimetres">What each reading was; finite, and as many as there are times.</param>
    /// <param name="gauge">What is known of the gauge.</param>
    /// <param name="settings">What is asked for, and what the gauge was set to.</param>
    public static BoreResult Measure(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, GaugeTraits gauge, BoreSettings settings)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        ArgumentNullException.ThrowIfNull(settings);
        var bare = new BoreResult { Status = BoreStatus.Rejected, Readings = millimetres.Length, PassesWanted = settings.PassesWanted, Outside = settings.Outside };
        if ((CaptureCheck.FaultOfReadings(seconds, millimetres) ?? BoreWords.FaultOf(settings)) is { } fault)
        {
            return bare with { Missing = fault };
        }

        bare = bare with { Status = BoreStatus.TooShort };
        if (millimetres.Length < CaptureCheck.FewestReadings)
        {
            return bare with { Missing = BoreWords.Of(settings).NoMovement };
        }

        var sense = settings.LargerReadsHigher == settings.Outside ? -1 : 1;
        var values = millimetres.ToArray();
        for (var i = 0; i < values.Length; i++)
        {
            values[i] *= sense;
        }

        var found = Found(seconds.ToArray(), values, gauge.Resolution.Millimetres);
        bare = bare with { Knocks = found.Knocks, Turnings = found.Rocks?.Bottoms.Count ?? 0 };
        return BoreWords.Of(settings).Lacking(found, values) is { } lacking
            ? bare with { Missing = lacking }
            : Measured(bare, found, sense, gauge, settings);
    }

    // Before it was in the bore the gauge may have shown anything; then the stretch that keeps to one side holds the rocks.
    private static PassSearch Found(double[] seconds, double[] values, double resolution)
    {
        // Beside the way into the bore the rocks are small, and all but the largest would go unseen in the whole.
        var whole = PassSearch.Of(seconds, values, resolution, first: 0);
        var (from, to) = TwoLevels.Find(seconds, values).LongestVisit(seconds, values);
        if (to - from < CaptureCheck.FewestReadings || to - from == seconds.Length)
        {
            return whole;
        }

        var part = PassSearch.Of(seconds[from..to], values[from..to], resolution, from);
        return part.Passes.Count > whole.Passes.Count && BoreWords.IsWhole(part) ? part : whole;
    }

    private static BoreResult Measured(BoreResult bare, PassSearch found, int sense, GaugeTraits gauge, BoreSettings settings)
    {
        var budget = BoreBudget.For(found.Doubt, found.Step, gauge, settings.Setting);
        var deviation = (settings.Outside ? -1 : 1) * (found.Bore - sense * (settings.Setting?.Shown.Millimetres ?? 0));
        var result = bare with
        {
            Status = BoreStatus.Measured,
            Deviation = Length.FromMillimetres(deviation),
            DeviationU95 = Length.FromMillimetres(budget.DeviationExpanded),
            Size = settings.Setting is { } setting ? setting.Size + Length.FromMillimetres(deviation) : null,
            SizeU95 = settings.Setting is not null ? Length.FromMillimetres(budget.SizeExpanded) : null,
            Budget = budget,
            Spread = found.Passes.Count > 1
                ? Length.FromMillimetres(found.Passes.Max(pass => pass.Millimetres) - found.Passes.Min(pass => pass.Millimetres))
                : null,
            ByPass = [.. found.Passes.Select(pass => pass with { Millimetres = sense * pass.Millimetres })],
        };
        return result with { Warnings = Warnings(result, found, settings) };
    }

    private static List<BoreWarning> Warnings(BoreResult result, PassSearch found, BoreSettings settings)
    {
        const int fewReadings = 5;
        List<BoreWarning> warnings = [];
        void Warn(BoreWarning warning, bool when)
        {
            if (when)
            {
                warnings.Add(warning);
            }
        }

        var rocks = found.Rocks!;
        Warn(BoreWarning.FewPasses, result.Passes < settings.PassesWanted);
        Warn(BoreWarning.PassesDisagree, result.Spread is { } spread && spread.Millimetres > Math.Max(0.003, 4 * result.Budget!.Value.Fit + found.Step / 2));
        Warn(BoreWarning.TurnedBackEarly, found.LeftOut > 0);
        Warn(BoreWarning.FewReadingsPerPass, rocks.To - rocks.From < fewReadings * rocks.Bottoms.Count);
        Warn(BoreWarning.ManyRejected, result.Knocks.Count > ManyKnocksShare * result.Readings);
        Warn(BoreWarning.ShallowRock, rocks.Height < 5 * found.Step);
        Warn(BoreWarning.NoSetting, settings.Setting is null);
        return warnings;
    }
}

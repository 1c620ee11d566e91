using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Runout;

/// <summary>The standard uncertainty of a runout, part by part, in millimetres (JCGM 100:2008, 4.3, 5.1.2).</summary>
/// <param name="Fit">From the scatter of the readings about the fit, the angle's doubt included (type A).</param>
/// <param name="Resolution">From the gauge's step: a rectangle one step wide (JCGM 100:2008, F.2.2.1), as far as noise does not even it out.</param>
/// <param name="GaugeError">From the gauge's error limit: a rectangle of twice the limit.</param>
/// <param name="Alignment">From the plunger's lean, or the lever's angle: a rectangle as wide as the share of the runout that it may be wrong by.</param>
internal readonly record struct RunoutBudget(double Fit, double Resolution, double GaugeError, double Alignment)
{
    /// <summary>The parts put together for a runout.</summary>
    public static RunoutBudget For(double tir, double fit, double scatter, double resolution, GaugeTraits gauge) =>
        new(fit, resolution / Math.Sqrt(12) * NotEvenedOut(scatter, resolution), gauge.ErrorDoubt, gauge.LeanDoubt(tir));

    // The rounding of each reading is in the scatter about the fit already, and so is averaged with it, where noise before
    // the rounding makes one reading's rounding tell nothing of the next one's; at the high and the low spot, where the
    // readings dwell, a part of it may be left even so.
    private static double NotEvenedOut(double scatter, double resolution)
    {
        if (resolution <= 0)
        {
            return 0;
        }

        const double least = 0.3;
        return Math.Max(least, ReadingNoise.RoundingLeft(scatter * scatter, resolution));
    }

    /// <summary>All parts together, expanded with k = 2.</summary>
    public Length Expanded =>
        Length.FromMillimetres(2 * Math.Sqrt(Fit * Fit + Resolution * Resolution + GaugeError * GaugeError + Alignment * Alignment));
}

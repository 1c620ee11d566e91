using Handspun.Metrology.Fitting;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Runout;

/// <summary>The standard uncertainty of a runout, part by part, in millimetres (JCGM 100:2008, 4.3, 5.1.2).</summary>
/// <param name="Fit">From the scatter of the readings about the fit, the angle's doubt included (type A).</param>
/// <param name="Resolution">From the gauge's step: a rectangle one step wide (JCGM 100:2008, F.2.2.1), as far as noise does not even it out.</param>
/// <param name="GaugeError">From the gauge's error limit: a rectangle of twice the limit.</param>
/// <param name="Alignment">From the plunger's lean, or the lever's angle: a rectangle as wide as the share of the runout that it may be wrong by.</param>
/// <param name="Temperature">From the temperature, where it is given: a rectangle as wide as the runout grows.</param>
internal readonly record struct RunoutBudget(double Fit, double Resolution, double GaugeError, double Alignment, double Temperature)
{
    /// <summary>The parts put together for a movement whose rounding is only known to be a part of the scatter.</summary>
    public static RunoutBudget For(double tir, double fit, double scatter, double resolution, GaugeTraits gauge) =>
        new(fit, NotEvenedOut(scatter, resolution), gauge.ErrorDoubt, gauge.LeanDoubt(tir), gauge.TemperatureDoubt(tir));

    /// <summary>The parts put together for a runout whose rounding was carried through the fit.</summary>
    /// <remarks>
    /// The fit follows the steps otherwise than a straight line does, for it finds angle and height together, so a part of what is not
    /// evened out comes to it: all of it where the runout is eight steps or less, less where it is more (found by simulation).
    /// </remarks>
    public static RunoutBudget For(double tir, double fit, double rounding, double scatter, double resolution, GaugeTraits gauge)
    {
        var beside = NotEvenedOut(scatter, resolution, part: Math.Min(1, 0.7 + 2.4 * resolution / tir));
        return new(fit, Math.Sqrt(rounding * rounding + beside * beside), gauge.ErrorDoubt, gauge.LeanDoubt(tir), gauge.TemperatureDoubt(tir));
    }

    // The rounding of each reading is in the scatter about the fit already, and so is averaged with it, where noise before
    // the rounding makes one reading's rounding tell nothing of the next one's; at the high and the low spot, where the
    // readings dwell, a part of it may be left even so.
    private static double NotEvenedOut(double scatter, double resolution, double part = 1)
    {
        if (resolution <= 0)
        {
            return 0;
        }

        const double least = 0.3;
        return resolution / Math.Sqrt(12) * Math.Max(least, part * RoundingSums.Left(scatter * scatter, resolution));
    }

    /// <summary>All parts together, expanded with k = 2.</summary>
    public Length Expanded =>
        Length.FromMillimetres(2 * Math.Sqrt(Fit * Fit + Resolution * Resolution + GaugeError * GaugeError + Alignment * Alignment + Temperature * Temperature));
}

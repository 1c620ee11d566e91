using Handspun.Metrology.Quantities;
using MathNet.Numerics.Distributions;

namespace Handspun.Metrology.Decision;

/// <summary>A verdict and the risk that goes with it.</summary>
/// <param name="Verdict">What may be said.</param>
/// <param name="ProbabilityOutside">The probability, 0 to 1, that the true value is outside the limit (JCGM 106:2012, clause 7).</param>
public readonly record struct ConformityDecision(Verdict Verdict, double ProbabilityOutside);

/// <summary>The decision rule of ISO 14253-1: conformity and non-conformity are both to be proved with the expanded uncertainty.</summary>
public static class ConformityRule
{
    /// <summary>Holds a value with its expanded uncertainty (k = 2) against a tolerance.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is negative.</exception>
    public static ConformityDecision Decide(Length value, Length expandedUncertainty, Tolerance tolerance)
    {
        ArgumentNullException.ThrowIfNull(tolerance);
        if (expandedUncertainty < Length.Zero)
        {
            throw new ArgumentOutOfRangeException(nameof(expandedUncertainty), expandedUncertainty, "An uncertainty is zero or more.");
        }

        var (least, most) = (value - expandedUncertainty, value + expandedUncertainty);
        var verdict = (tolerance.Upper is { } upper && least > upper) || (tolerance.Lower is { } lower && most < lower)
            ? Verdict.Over
            : (tolerance.Upper is { } top && most > top) || (tolerance.Lower is { } bottom && least < bottom)
                ? Verdict.Undecided
                : Verdict.Within;
        return new(verdict, ProbabilityOutside(value.Millimetres, expandedUncertainty.Millimetres / 2, tolerance));
    }

    // JCGM 106:2012, 7.4, with a normal distribution about the value; both tails are added, so that small risks keep their digits.
    private static double ProbabilityOutside(double value, double standard, Tolerance tolerance)
    {
        double Above(double limit) => standard > 0 ? Normal.CDF(0, 1, (value - limit) / standard) : value > limit ? 1 : 0;
        double Below(double limit) => standard > 0 ? Normal.CDF(0, 1, (limit - value) / standard) : value < limit ? 1 : 0;

        var outside = (tolerance.Upper is { } upper ? Above(upper.Millimetres) : 0)
            + (tolerance.Lower is { } lower ? Below(lower.Millimetres) : 0);
        return Math.Min(1, outside);
    }
}

using Handspun.Metrology.Quantities;

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
    public static ConformityDecision Decide(Length value, Length expandedUncertainty, Tolerance tolerance) =>
        throw new NotImplementedException();
}

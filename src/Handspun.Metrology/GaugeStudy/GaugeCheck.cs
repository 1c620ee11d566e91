using Handspun.Metrology.Quantities;
using MathNet.Numerics.Distributions;

namespace Handspun.Metrology.GaugeStudy;

/// <summary>Where a gauge stands after a check against a block or a ring.</summary>
public enum GaugeStanding
{
    /// <summary>Its error is within its limit, by more than the uncertainty, and the check is not overdue.</summary>
    Good,

    /// <summary>Its error is too close to the limit to call.</summary>
    Undecided,

    /// <summary>Its error is beyond the limit, by more than the uncertainty.</summary>
    Failed,

    /// <summary>The check was passed, but is due anew.</summary>
    Overdue,
}

/// <summary>A gauge held against a block or a ring whose size is known.</summary>
/// <param name="Error">What the gauge shows minus what is true, with its expanded uncertainty.</param>
/// <param name="Repeatability">Standard deviation of the readings; zero where they do not differ.</param>
/// <param name="Standing">What follows for the gauge.</param>
public sealed record GaugeCheck(Measured<Length> Error, Length Repeatability, GaugeStanding Standing)
{
    private const int FewestReadings = 3;

    /// <summary>What is wrong with a check and what to do, in one sentence; null where nothing is.</summary>
    /// <param name="millimetres">What the gauge showed, time after time, set down anew each time.</param>
    /// <param name="size">The block's or ring's size with its expanded uncertainty, as its certificate has it.</param>
    public static string? Fault(ReadOnlySpan<double> millimetres, Measured<Length> size)
    {
        if (size.U95 < Length.Zero)
        {
            return "The uncertainty of the block or ring must be 0 or more: take it from its certificate.";
        }

        foreach (var value in millimetres)
        {
            if (!double.IsFinite(value))
            {
                return "A reading is no number: take it again.";
            }
        }

        return millimetres.Length < FewestReadings
            ? $"A check takes {FewestReadings} readings or more, the gauge lifted off and set down anew each time: {millimetres.Length} came in."
            : null;
    }

    /// <summary>Works a check out.</summary>
    /// <param name="millimetres">What the gauge showed; three readings or more.</param>
    /// <param name="size">The size of block or ring, with its expanded uncertainty (k = 2).</param>
    /// <param name="resolution">The gauge's step.</param>
    /// <param name="errorLimit">The largest error that the gauge may have, ± this much; above zero.</param>
    /// <param name="due">The last day on which the check still counts.</param>
    /// <param name="today">Today.</param>
    /// <exception cref="ArgumentException">The readings do not serve, or the limit is not above zero.</exception>
    public static GaugeCheck Work(
        ReadOnlySpan<double> millimetres, Measured<Length> size, Length resolution, Length errorLimit, DateOnly due, DateOnly today)
    {
        if (Fault(millimetres, size) is { } fault)
        {
            throw new ArgumentException(fault, nameof(millimetres));
        }

        if (errorLimit <= Length.Zero)
        {
            throw new ArgumentException("The gauge's error limit must be more than 0: take it from its papers.", nameof(errorLimit));
        }

        var (count, mean, squares) = (millimetres.Length, 0.0, 0.0);
        foreach (var value in millimetres)
        {
            mean += value / count;
        }

        foreach (var value in millimetres)
        {
            squares += (value - mean) * (value - mean);
        }

        // Few readings know their own scatter badly: Student's factor in place of 2 (JCGM 100:2008, G.3), so that k = 2 holds for the whole.
        var scatter = Math.Sqrt(squares / (count - 1));
        var student = StudentT.InvCDF(0, 1, count - 1, 0.977_25) / 2;
        var standard = Math.Sqrt(
            scatter * scatter * student * student / count
            + resolution.Millimetres * resolution.Millimetres / 12
            + size.U95.Millimetres * size.U95.Millimetres / 4);
        var error = new Measured<Length>(Length.FromMillimetres(mean) - size.Value, Length.FromMillimetres(2 * standard));
        return new(error, Length.FromMillimetres(scatter), Stands(error, errorLimit, today > due));
    }

    private static GaugeStanding Stands(Measured<Length> error, Length limit, bool overdue)
    {
        var tolerance = Decision.Tolerance.Between(Length.Zero - limit, limit);
        return Decision.ConformityRule.Decide(error.Value, error.U95, tolerance).Verdict switch
        {
            Decision.Verdict.Over => GaugeStanding.Failed,
            Decision.Verdict.Undecided => GaugeStanding.Undecided,
            _ => overdue ? GaugeStanding.Overdue : GaugeStanding.Good,
        };
    }
}

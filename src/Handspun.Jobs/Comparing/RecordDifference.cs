using Handspun.Jobs.Lengths;
using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Jobs.Comparing;

/// <summary>What two records tell of a difference between them.</summary>
/// <param name="Value">The second result less the first; below zero where the second is smaller.</param>
/// <param name="U95">Its expanded uncertainty (k = 2).</param>
/// <remarks>
/// The uncertainties are added in quadrature, as of results that have nothing in common (JCGM 100:2008, 5.1.2, from memory). What
/// two results of one gauge do have in common cancels in part, so that the difference is known no worse than is said here.
/// </remarks>
public sealed record RecordDifference(Length Value, Length U95)
{
    /// <summary>Whether the results differ by more than both can be wrong by; the same reserve that ISO 14253-1 keeps at a limit.</summary>
    public bool IsTold => Math.Abs(Value.Millimetres) > U95.Millimetres;

    /// <summary>The difference; null where there is none to be had (<see cref="Reason"/>).</summary>
    public static RecordDifference? Of(MeasuredAt first, MeasuredAt second) => Reason(first, second) is null
        ? new(second.Figures.Value!.Value - first.Figures.Value!.Value, Length.FromMillimetres(Math.Sqrt(Square(first.Figures.ValueU95!.Value) + Square(second.Figures.ValueU95!.Value))))
        : null;

    /// <summary>Why nothing can be said of a difference, and what to do; null where something can.</summary>
    public static string? Reason(MeasuredAt first, MeasuredAt second) =>
        !first.IsLike(second) ? $"'{first.Title}' and '{second.Title}' are two different things: look at both, but do not subtract them."
        : HasLength(first.Figures) && HasLength(second.Figures) ? first.Figures.NotJudged ?? second.Figures.NotJudged
        : "One of them has no single length as its result, so no difference can be worked out: look at the pictures and the figures.";

    /// <summary>Why the angles of two runouts cannot be held against each other, and what to do; null where they can, or there are none.</summary>
    public static string? AnglesReason(ResultFigures first, ResultFigures second) =>
        (first, second) is not (RunoutFigures { AngleReference: { } zero, HighSpotDegrees: not null }, RunoutFigures { AngleReference: { } other, HighSpotDegrees: not null }) ? null
        : zero == RunoutCodes.Of(AngleReference.FirstReading) || other == RunoutCodes.Of(AngleReference.FirstReading) ? "Their angles count from a first reading that is elsewhere each time: do not hold the high spots against each other. With an index or a mark they could be."
        : zero != other ? "Their angles count from different zeros: do not hold the high spots against each other."
        : null;

    /// <summary>What it says, in a plain sentence or two.</summary>
    /// <param name="unit">The unit of lengths.</param>
    /// <param name="first">What the first is called, such as <c>A</c>.</param>
    /// <param name="second">What the second is called.</param>
    public string InWords(LengthUnit unit, string first, string second)
    {
        var apart = Length.FromMillimetres(Math.Abs(Value.Millimetres));
        return IsTold
            ? $"{second} is {LengthText.WithUncertainty(apart, U95, unit)} {(Value > Length.Zero ? "larger" : "smaller")} than {first}: more than both can be wrong by."
            : $"{first} and {second} differ by {LengthText.Of(apart, unit)}. That is no more than the ± {LengthText.Uncertainty(U95, unit)} to which both together can tell: it shows no difference, and does not prove that there is none.";
    }

    private static bool HasLength(ResultFigures figures) => figures is { Value: not null, ValueU95: not null };

    private static double Square(Length length) => length.Millimetres * length.Millimetres;
}

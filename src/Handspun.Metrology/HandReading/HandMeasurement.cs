using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.HandReading;

/// <summary>A length that was read by eye and typed.</summary>
/// <param name="Value">The length; null where the entry cannot be used.</param>
/// <param name="U95">Its expanded uncertainty (k = 2, JCGM 100); null likewise.</param>
/// <param name="Missing">What is wrong and what to do, in one sentence; null where nothing is.</param>
public sealed record HandMeasurement(Length? Value, Length? U95, string? Missing)
{
    /// <summary>One length, read once or the same each time.</summary>
    /// <remarks>The division is a rectangle as wide as itself: standard uncertainty division / √12 (JCGM 100:2008, F.2.2.1); the error limit one of twice the limit (4.3.7).</remarks>
    /// <param name="tool">The tool.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="plausible">What such a length may be; null where anything above zero may be.</param>
    /// <param name="what">What it is, for the sentence, such as <c>a tensioner shoe</c>.</param>
    public static HandMeasurement Once(HandTool tool, Length typed, PlausibleLength? plausible, string what)
    {
        ArgumentNullException.ThrowIfNull(tool);
        return (tool.Fault ?? Odd(typed, plausible, what)) is { } fault ? Refused(fault) : Good(typed.Millimetres, tool, divisions: 1);
    }

    /// <summary>A gap by feeler gauge: the thickest leaf that goes in, and the next, which does not. The gap is anywhere between the two.</summary>
    public static HandMeasurement Gap(HandTool tool, Length goes, Length doesNot, PlausibleLength? plausible, string what)
    {
        ArgumentNullException.ThrowIfNull(tool);
        if ((tool.Fault ?? Odd(goes, plausible, what)) is { } fault)
        {
            return Refused(fault);
        }

        return doesNot <= goes
            ? Refused("The leaf that does not go in is no thicker than the one that does: type the thickest that goes in first, then the next one up.")
            : Good((goes.Millimetres + doesNot.Millimetres) / 2, tool with { Division = doesNot - goes }, divisions: 1);
    }

    /// <summary>The needle's highest less its lowest over a movement; both are read by eye, so the division counts twice.</summary>
    /// <param name="tool">The dial.</param>
    /// <param name="highest">The needle's highest place.</param>
    /// <param name="lowest">Its lowest, on the same turn of the dial.</param>
    /// <param name="largest">The most that such a movement can sensibly be.</param>
    /// <param name="what">What moves, for the sentence.</param>
    public static HandMeasurement Needle(HandTool tool, Length highest, Length lowest, Length largest, string what)
    {
        ArgumentNullException.ThrowIfNull(tool);
        if (tool.Fault is { } fault)
        {
            return Refused(fault);
        }

        if (highest < lowest)
        {
            return Refused("The highest reading is below the lowest: swap them or read the needle again.");
        }

        var moved = highest - lowest;
        return moved > largest
            ? Refused(new PlausibleLength(Length.FromMillimetres(1e-6), largest).Doubt(moved, what)!)
            : Good(moved.Millimetres, tool, divisions: 2);
    }

    private static string? Odd(Length typed, PlausibleLength? plausible, string what) =>
        typed <= Length.Zero ? "The length has to be above zero: type it again with its unit."
        : plausible?.Doubt(typed, what);

    private static HandMeasurement Refused(string sentence) => new(null, null, sentence);

    private static HandMeasurement Good(double millimetres, HandTool tool, int divisions)
    {
        var reading = divisions * Math.Pow(tool.Division.Millimetres, 2) / 12;
        var limit = Math.Pow(tool.ErrorLimit.Millimetres, 2) / 3;
        return new(Length.FromMillimetres(millimetres), Length.FromMillimetres(2 * Math.Sqrt(reading + limit)), null);
    }
}

using System.Globalization;

namespace Handspun.Metrology.Quantities;

/// <summary>The lengths that a typed value may sensibly have, to catch inches typed for millimetres and the other way round.</summary>
/// <param name="Least">The least that is sensible; above zero.</param>
/// <param name="Most">The most.</param>
public readonly record struct PlausibleLength(Length Least, Length Most)
{
    /// <summary>Whether a length is one of them, both ends included.</summary>
    public bool Holds(Length typed) => typed >= Least && typed <= Most;

    /// <summary>One sentence that says what is odd about a typed length and what to do; null where nothing is.</summary>
    /// <param name="typed">The length as it was taken.</param>
    /// <param name="what">What it is of, for the sentence, such as <c>a lifter bore</c>.</param>
    public string? Doubt(Length typed, string what)
    {
        var (low, high) = (Least.Millimetres, Most.Millimetres);
        var (asInches, asMillimetres) = (typed.Millimetres * Length.MillimetresPerInch, typed.Millimetres / Length.MillimetresPerInch);
        return Holds(typed) ? null
            : asInches >= low && asInches <= high
                ? string.Create(CultureInfo.InvariantCulture, $"{typed.Millimetres:0.####} mm is too small for {what}, but {typed.Millimetres:0.####} in would be {asInches:0.###} mm: type it again with its unit.")
            : asMillimetres >= low && asMillimetres <= high
                ? string.Create(CultureInfo.InvariantCulture, $"{typed.Inches:0.####} in is too large for {what}, but {typed.Inches:0.####} mm would fit: type it again with its unit.")
            : string.Create(CultureInfo.InvariantCulture, $"{typed.Millimetres:0.####} mm ({typed.Inches:0.####} in) cannot be {what}, which is {low:0.###} to {high:0.###} mm: measure again and type it with its unit.");
    }
}

using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.ShaftLine;

/// <summary>How far a line leans away from another: so much sideways for so much along.</summary>
/// <remarks>Zero or more, finite. For the small leans of a crank it is the angle in radians, to within a part in a million.</remarks>
public readonly record struct Slope
{
    private Slope(double ratio) => Ratio = ratio;

    /// <summary>Millimetres sideways for each millimetre along.</summary>
    public double Ratio { get; }

    /// <summary>Millimetres sideways over 100 mm along.</summary>
    public double MillimetresPerHundred => 100 * Ratio;

    /// <summary>A slope given as a ratio of two lengths.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static Slope FromRatio(double value) => double.IsFinite(value) && value >= 0
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A slope is a finite number, zero or more.");

    /// <summary>How far aside the slope leads over a length.</summary>
    public Length Over(Length along) => Length.FromMillimetres(Ratio * along.Millimetres);
}

namespace Handspun.Metrology.Quantities;

/// <summary>A direction on the shaft, from its reference, in the direction of rotation.</summary>
/// <remarks>0 ≤ a &lt; 360 degrees. The default is zero.</remarks>
public readonly record struct Angle
{
    private Angle(double degrees) => Degrees = degrees;

    /// <summary>Degrees, 0 ≤ a &lt; 360.</summary>
    public double Degrees { get; }

    /// <summary>The direction reached by turning so many degrees from the reference; whole turns are taken out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Angle FromDegrees(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "An angle is a finite number.");
        }

        var within = value - 360 * Math.Floor(value / 360);
        return new(within < 360 ? within : 0);   // a tiny negative angle rounds up to a full turn
    }
}

namespace Handspun.Gauges.Readings;

/// <summary>One value of a gauge at one instant.</summary>
/// <remarks>Positive is plunger in; always finite. Time counts on the station's monotonic clock (<see cref="GaugeClock"/>).</remarks>
public readonly record struct Reading
{
    private const double MillimetresPerInch = 25.4;   // exact by definition

    private Reading(double millimetres, TimeSpan at) => (Millimetres, At) = (millimetres, at);

    /// <summary>The value in millimetres.</summary>
    public double Millimetres { get; }

    /// <summary>When the last byte of its frame arrived.</summary>
    public TimeSpan At { get; }

    /// <summary>A reading in millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Reading FromMillimetres(double value, TimeSpan at) => double.IsFinite(value)
        ? new(value, at)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A reading is a finite length.");

    /// <summary>A reading in inches.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Reading FromInches(double value, TimeSpan at) => FromMillimetres(value * MillimetresPerInch, at);

    /// <summary>A reading in the given unit.</summary>
    public static Reading From(double value, GaugeUnit unit, TimeSpan at) =>
        unit == GaugeUnit.Inch ? FromInches(value, at) : FromMillimetres(value, at);

    /// <summary>A reading in the given unit, where the value makes one.</summary>
    /// <returns>False where the length is not finite.</returns>
    public static bool TryFrom(double value, GaugeUnit unit, TimeSpan at, out Reading reading)
    {
        var millimetres = unit == GaugeUnit.Inch ? value * MillimetresPerInch : value;
        var finite = double.IsFinite(millimetres);
        reading = finite ? new(millimetres, at) : default;
        return finite;
    }
}

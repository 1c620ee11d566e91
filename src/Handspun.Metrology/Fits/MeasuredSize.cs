using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Fits;

/// <summary>A size that was measured, inside or outside, with its expanded uncertainty (k = 2).</summary>
/// <remarks>The size is above zero and the uncertainty zero or more. A size at a temperature can be brought to 20 °C, where sizes are stated (ISO 1).</remarks>
public readonly record struct MeasuredSize
{
    /// <summary>The temperature at which sizes are stated (ISO 1), in degrees Celsius.</summary>
    public const double ReferenceCelsius = 20;

    private MeasuredSize(Length size, Length u95) => (Size, U95) = (size, u95);

    /// <summary>The size.</summary>
    public Length Size { get; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public Length U95 { get; }

    /// <summary>A size from a capture or a record.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The size is not above zero, or the uncertainty is negative.</exception>
    public static MeasuredSize Of(Length size, Length u95) =>
        size <= Length.Zero ? throw new ArgumentOutOfRangeException(nameof(size), size, "A size is above zero.")
        : u95 < Length.Zero ? throw new ArgumentOutOfRangeException(nameof(u95), u95, "An uncertainty is zero or more.")
        : new(size, u95);

    /// <summary>The size that this would be at 20 °C.</summary>
    /// <remarks>Linear growth, size × coefficient × difference of temperature; the uncertainty by its partial derivatives (JCGM 100:2008, 5.1.2, H.1).</remarks>
    /// <param name="material">What it is made of.</param>
    /// <param name="celsius">Its temperature when it was measured.</param>
    /// <param name="celsiusU95">How well that is known (k = 2), in kelvin; zero or more.</param>
    public MeasuredSize AtReference(ThermalGrowth material, double celsius, double celsiusU95)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(celsiusU95);
        var away = celsius - ReferenceCelsius;
        var growth = material.Of(Size, away);
        var fromTemperature = material.PerKelvin * celsiusU95 * Size.Millimetres;
        var fromMaterial = material.PerKelvinU95 * away * Size.Millimetres;
        return new(
            Size - growth,
            Length.FromMillimetres(Math.Sqrt(U95.Millimetres * U95.Millimetres + fromTemperature * fromTemperature + fromMaterial * fromMaterial)));
    }
}

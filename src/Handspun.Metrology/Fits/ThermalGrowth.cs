using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Fits;

/// <summary>How a material grows with temperature.</summary>
/// <param name="PerKelvin">Linear expansion coefficient, in parts a kelvin; such as 11.5e-6 for steel.</param>
/// <param name="PerKelvinU95">How well it is known (k = 2); tables differ by a few parts in a hundred.</param>
public readonly record struct ThermalGrowth(double PerKelvin, double PerKelvinU95)
{
    /// <summary>Carbon steel (handbook tables: 11.5e-6, which differ by about 4 %).</summary>
    public static ThermalGrowth Steel { get; } = new(11.5e-6, 0.5e-6);

    /// <summary>Grey cast iron (handbook tables: 10.8e-6).</summary>
    public static ThermalGrowth CastIron { get; } = new(10.8e-6, 0.5e-6);

    /// <summary>Aluminium alloy, as crankcases are made of (handbook tables: 23.8e-6).</summary>
    public static ThermalGrowth AluminiumAlloy { get; } = new(23.8e-6, 1e-6);

    /// <summary>How much a length grows over a difference of temperature; negative where it cools.</summary>
    public Length Of(Length length, double kelvin) => Length.FromMillimetres(length.Millimetres * PerKelvin * kelvin);
}

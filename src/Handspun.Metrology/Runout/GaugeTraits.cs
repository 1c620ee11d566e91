using Handspun.Metrology.Fits;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Runout;

/// <summary>What is known of the gauge beforehand, from its profile.</summary>
/// <remarks>A default is a gauge of which nothing is known: the method then takes the step that the readings show.</remarks>
public sealed record GaugeTraits
{
    private const double ReferenceCelsius = 20;

    /// <summary>The smallest step that the gauge shows; zero where it is not known.</summary>
    public Length Resolution { get; init; }

    /// <summary>The largest error of the indication, as the gauge's maker states it (± this much); zero where it is not known.</summary>
    public Length ErrorLimit { get; init; }

    /// <summary>How far the plunger's axis may lean away from square to the shaft, in degrees. 0 ≤ lean &lt; 45.</summary>
    public double PlungerLeanDegrees { get; init; } = 3;

    /// <summary>For a lever indicator, the angle between lever and surface in degrees by which its readings have been corrected (<see cref="Misalignment.LeverFactor"/>); null for a plunger.</summary>
    public double? LeverDegrees { get; init; }

    /// <summary>How far the lever may stand from that angle, in degrees; as an eye judges it.</summary>
    public double LeverDoubtDegrees { get; init; } = 5;

    /// <summary>The temperature of shaft and gauge while it is measured, in degrees Celsius; null where it is not known.</summary>
    public double? Celsius { get; init; }

    /// <summary>Standard uncertainty for the error limit, in millimetres: a rectangle of twice the limit (JCGM 100:2008, 4.3.7).</summary>
    internal double ErrorDoubt => Math.Abs(ErrorLimit.Millimetres) / Math.Sqrt(3);

    /// <summary>Standard uncertainty for how the gauge stands over a movement, in millimetres: a rectangle from none of <see cref="Misalignment.LargestShare"/> to all of it.</summary>
    internal double LeanDoubt(double movement) => movement * Misalignment.LargestShare(this) / Math.Sqrt(3);

    /// <summary>Standard uncertainty for the temperature over a movement, in millimetres; lengths hold at 20 degrees Celsius (ISO 1).</summary>
    /// <remarks>Shaft and gauge are of steel and grow alike, nobody knows how nearly: a rectangle from nothing to all of the shaft's growth.</remarks>
    internal double TemperatureDoubt(double movement) =>
        Celsius is { } celsius ? ThermalGrowth.Steel.Of(Length.FromMillimetres(movement), Math.Abs(celsius - ReferenceCelsius)).Millimetres / Math.Sqrt(3) : 0;

    /// <summary>The same gauge as a lever at an angle to the surface, whose readings are multiplied by <see cref="Misalignment.LeverFactor"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not 0 to less than 90 degrees.</exception>
    public GaugeTraits AtLever(double degrees)
    {
        var factor = Misalignment.LeverFactor(degrees);
        return this with
        {
            Resolution = Length.FromMillimetres(Resolution.Millimetres * factor),
            ErrorLimit = Length.FromMillimetres(ErrorLimit.Millimetres * factor),
            LeverDegrees = degrees,
        };
    }
}

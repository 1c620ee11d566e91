using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Runout;

/// <summary>What is known of the gauge beforehand, from its profile.</summary>
/// <remarks>A default is a gauge of which nothing is known: the method then takes the step that the readings show.</remarks>
public sealed record GaugeTraits
{
    /// <summary>The smallest step that the gauge shows; zero where it is not known.</summary>
    public Length Resolution { get; init; }

    /// <summary>The largest error of the indication, as the gauge's maker states it (± this much); zero where it is not known.</summary>
    public Length ErrorLimit { get; init; }

    /// <summary>How far the plunger's axis may lean away from square to the shaft, in degrees. 0 ≤ lean &lt; 45.</summary>
    public double PlungerLeanDegrees { get; init; } = 3;

    /// <summary>Standard uncertainty for the error limit, in millimetres: a rectangle of twice the limit (JCGM 100:2008, 4.3.7).</summary>
    internal double ErrorDoubt => Math.Abs(ErrorLimit.Millimetres) / Math.Sqrt(3);

    /// <summary>Standard uncertainty for the plunger's lean over a movement, in millimetres: a rectangle from none of its cosine error to all of it.</summary>
    internal double LeanDoubt(double movement)
    {
        var lean = Math.Clamp(Math.Abs(PlungerLeanDegrees), 0, 45) * Math.PI / 180;
        return movement * (1 - Math.Cos(lean)) / Math.Sqrt(3);
    }
}

namespace Handspun.Metrology.Runout;

/// <summary>What an indicator shows that does not stand square to the shaft.</summary>
/// <remarks>
/// A plunger that leans by an angle moves by one over its cosine of what the shaft moves. A lever's tip moves on an arc about
/// its pivot: where the lever stands at an angle to the surface, the shaft moves by the cosine of it times the reading
/// (geometry; for small movements against the lever's length).
/// </remarks>
public static class Misalignment
{
    /// <summary>By what a lever indicator's readings are multiplied.</summary>
    /// <param name="leverDegrees">The angle between lever and surface, in degrees. 0 ≤ angle &lt; 90; where it lies along the surface nothing is to be corrected.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not one of those.</exception>
    public static double LeverFactor(double leverDegrees) => leverDegrees is >= 0 and < 90
        ? Math.Cos(leverDegrees * Math.PI / 180)
        : throw new ArgumentOutOfRangeException(nameof(leverDegrees), leverDegrees, "A lever stands at 0 to less than 90 degrees to the surface.");

    /// <summary>The largest share by which a corrected reading may be wrong, because the gauge may stand so many degrees otherwise than was said.</summary>
    public static double LargestShare(GaugeTraits gauge)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        var (said, doubt) = gauge.LeverDegrees is { } lever
            ? (lever, gauge.LeverDoubtDegrees)
            : (0, Math.Min(Math.Abs(gauge.PlungerLeanDegrees), 45));
        var farther = Math.Min(said + Math.Abs(doubt), 90) * Math.PI / 180;
        return 1 - Math.Cos(farther) / LeverFactor(said);
    }
}

using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Lift;

/// <summary>Top dead centre by a positive stop: a stop in the plug's hole holds the piston at the same height on its way up and on its way back.</summary>
/// <param name="Angle">Where top dead centre is, in degrees of the crank from the same reference as the stops, 0 ≤ a &lt; 360; null where it is not known.</param>
/// <param name="Missing">What is missing and what to do next; null where it is known.</param>
public sealed record TopDeadCentre(Measured<CrankAngle>? Angle, string? Missing)
{
    /// <summary>What to mind at this step.</summary>
    public const string Caution =
        "Turn by hand only, with a wrench on the crank, plugs out and the ignition off; go up to the stop gently and never push on against it. Take the stop out before anything turns on.";

    // A stop that blocks as much as it leaves does not say on which side the top is.
    private const double MostBlocked = 170;
    private const double LeastBlocked = 2;

    /// <summary>The mean of both stops, in the middle of the arc that the piston cannot go through.</summary>
    /// <param name="one">Where the crank stopped one way, with its expanded uncertainty.</param>
    /// <param name="other">Where it stopped the other way.</param>
    public static TopDeadCentre ByPositiveStop(Measured<CrankAngle> one, Measured<CrankAngle> other)
    {
        var across = (other.Value - one.Value).ShortWay();
        var blocked = Math.Abs(across.Degrees);
        if (blocked < LeastBlocked)
        {
            return new(null, "Both stops are at the same angle: turn back the other way until the piston meets the stop again, and take that angle as the second.");
        }

        if (blocked > MostBlocked)
        {
            return new(null, $"The stops are {blocked:0.0}° apart, so it is not clear which side is the top: screw the stop in less far, so that the piston is held nearer to the top.");
        }

        // Half of each, so half of each one's doubt, independent (JCGM 100:2008, 5.1.2).
        var middle = CrankAngle.FromDegrees(one.Value.Degrees + across.Degrees / 2).WithinTurn();
        return new(new(middle, CrankAngle.FromDegrees(Math.Sqrt(Math.Pow(one.U95.Degrees, 2) + Math.Pow(other.U95.Degrees, 2)) / 2)), null);
    }
}

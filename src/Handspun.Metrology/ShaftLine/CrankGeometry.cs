using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.ShaftLine;

/// <summary>Where both ends of a crank were measured, and where its crankpin stands.</summary>
/// <param name="DriveSideFromBearing">Axial distance of the drive side's measuring point from the middle of its bearing, outward.</param>
/// <param name="PinionSideFromBearing">The same of the pinion side.</param>
/// <param name="BetweenBearings">Axial distance of the two bearings' middles.</param>
/// <param name="Crankpin">The direction of the crankpin from the reference of both ends; null where it was not noted.</param>
/// <param name="CrankpinU95Degrees">Its expanded uncertainty (k = 2) in degrees.</param>
public sealed record CrankGeometry(
    ReadLength DriveSideFromBearing, ReadLength PinionSideFromBearing, ReadLength BetweenBearings, Angle? Crankpin = null, double CrankpinU95Degrees = 0);

/// <summary>A length read off a tool by eye.</summary>
/// <param name="Value">What was read.</param>
/// <param name="Division">The tool's division.</param>
/// <remarks>
/// A rule is read at both of its ends, each within half a division: together a triangle of one division to either side, whose
/// standard deviation is a division over √6 (JCGM 100:2008, 4.3.9). Twice that is 0.82 of a division; one division stands for it.
/// </remarks>
public readonly record struct ReadLength(Length Value, Length Division)
{
    /// <summary>Expanded uncertainty (k = 2).</summary>
    public Length U95 => Division;
}

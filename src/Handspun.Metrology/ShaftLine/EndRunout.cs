using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.ShaftLine;

/// <summary>What was measured at one end of a crank.</summary>
/// <param name="Eccentricity">How far the shaft's centre is off the axis of rotation at the measuring point: half the runout of a round shaft.</param>
/// <param name="EccentricityU95">Its expanded uncertainty (k = 2).</param>
/// <param name="Toward">The direction of the eccentricity (of the profile's first wave, not of the highest place), from the reference that both ends and the crankpin share.</param>
/// <param name="TowardU95Degrees">Its expanded uncertainty (k = 2) in degrees; null where the angle has no reference.</param>
/// <param name="FromBearing">Axial distance of the measuring point from the middle of this end's bearing, outward.</param>
/// <param name="FromBearingU95">Its expanded uncertainty (k = 2).</param>
public sealed record EndRunout(
    Length Eccentricity, Length EccentricityU95, Angle Toward, double? TowardU95Degrees, Length FromBearing, Length FromBearingU95);

/// <summary>A built-up crank with what was measured at both ends.</summary>
/// <param name="DriveSide">The end that carries the sprocket.</param>
/// <param name="PinionSide">The end that carries the pinion.</param>
/// <param name="BetweenBearings">Axial distance of the two bearings' middles.</param>
/// <param name="BetweenBearingsU95">Its expanded uncertainty (k = 2).</param>
/// <param name="Crankpin">The direction of the crankpin from the same reference; null where it was not noted.</param>
/// <param name="CrankpinU95Degrees">Its expanded uncertainty (k = 2) in degrees.</param>
public sealed record CrankRunout(
    EndRunout DriveSide, EndRunout PinionSide, Length BetweenBearings, Length BetweenBearingsU95, Angle? Crankpin, double CrankpinU95Degrees);

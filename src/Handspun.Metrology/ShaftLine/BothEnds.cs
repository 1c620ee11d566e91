using Handspun.Metrology.Runout;

namespace Handspun.Metrology.ShaftLine;

/// <summary>The shaft lines of a crank from the runouts that were measured at its ends.</summary>
public static class BothEnds
{
    /// <summary>Why directions are not known, in one sentence that says what to do; null where they are known well enough to be compared.</summary>
    public static string? Doubt(MeasuredEnd driveSide, MeasuredEnd pinionSide)
    {
        ArgumentNullException.ThrowIfNull(driveSide);
        ArgumentNullException.ThrowIfNull(pinionSide);
        var ends = new[] { (Name: "drive side", End: driveSide), (Name: "pinion side", End: pinionSide) };
        if (ends.FirstOrDefault(end => end.End.TowardU95Degrees is null) is { End: not null } without)
        {
            return without.End.Reference == AngleReference.Index
                ? $"The {without.Name}'s index does not come once a turn of the shaft, so its zero is elsewhere in each capture: call one mark at both ends."
                : $"The {without.Name} was measured without a mark or an index: measure both ends again from one mark.";
        }

        if (driveSide.Reference != pinionSide.Reference)
        {
            return $"The drive side's angle counts from {Word(driveSide.Reference)} and the pinion side's from {Word(pinionSide.Reference)}: measure both ends again from one and the same.";
        }

        return ends.FirstOrDefault(end => end.End.TowardU95Degrees > ShaftLineMethod.MostAngleU95Degrees) is { End: not null } vague
            ? $"The direction of the {vague.Name}'s runout is known only within {Math.Ceiling(vague.End.TowardU95Degrees!.Value):0} degrees, and {ShaftLineMethod.MostAngleU95Degrees:0} are needed: turn it more often and more slowly, and call the mark on every turn."
            : null;
    }

    /// <summary>The shaft lines. Where <see cref="Doubt"/> has a reason, the result holds the sizes and no directions.</summary>
    public static ShaftLineResult Of(MeasuredEnd driveSide, MeasuredEnd pinionSide, CrankGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(driveSide);
        ArgumentNullException.ThrowIfNull(pinionSide);
        ArgumentNullException.ThrowIfNull(geometry);
        var comparable = driveSide.Reference == pinionSide.Reference && driveSide.TowardU95Degrees is not null && pinionSide.TowardU95Degrees is not null;
        return ShaftLineMethod.Of(new(
            End(driveSide, geometry.DriveSideFromBearing),
            End(pinionSide, geometry.PinionSideFromBearing),
            geometry.BetweenBearings.Value,
            geometry.BetweenBearings.U95,
            comparable ? geometry.Crankpin : null,
            geometry.CrankpinU95Degrees));

        EndRunout End(MeasuredEnd end, ReadLength fromBearing) => new(
            end.Eccentricity, end.EccentricityU95, end.Toward, comparable ? end.TowardU95Degrees : null, fromBearing.Value, fromBearing.U95);
    }

    private static string Word(AngleReference reference) => reference switch
    {
        AngleReference.Encoder => "the encoder's zero",
        AngleReference.Index => "the index",
        AngleReference.Mark => "the mark",
        _ => "the first reading",
    };
}

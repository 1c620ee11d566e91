using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.ShaftLine;

/// <summary>Puts the runouts of both ends of a built-up crank together.</summary>
/// <remarks>
/// The bearings' middles lie on the axis of rotation and each shaft is straight, so a shaft that is off the axis by e at a distance
/// d outside its bearing leans by t = e/d. With t₁ of the drive side, t₂ of the pinion side and L between the bearings, the lines
/// stand at an angle of t₁ + t₂ to each other and pass each other midway by (t₁ − t₂)·L/2 (vectors; similar triangles).
/// Uncertainties are carried to first order (JCGM 100:2008, 5.1), every input taken as independent of the others.
/// </remarks>
public static class ShaftLineMethod
{
    /// <summary>The greatest expanded uncertainty of an angle, in degrees, with which a direction is still named; a choice of this program.</summary>
    public const double MostAngleU95Degrees = 30;

    /// <summary>What every sentence ends with.</summary>
    public const string Caution = "Truing a crank is work for a specialist; do not strike, wedge or clamp the flywheels on the strength of this alone.";

    /// <summary>What the answer takes for granted, one plain sentence each.</summary>
    public static IReadOnlyList<string> Assumptions { get; } =
    [
        "The crank turned in its own bearings, or on rests at their places, without play.",
        "Each shaft is straight and stiff from its flywheel to the measuring point, and round there.",
        "Both measuring points are outside the bearings.",
        "Both angles and the crankpin's are counted from one mark, in one direction, with the indicators on the same side of the crank.",
        "What the crank does under load is not seen.",
    ];

    /// <summary>The shaft lines, how they lie to each other and to the crankpin, and what that means in words.</summary>
    /// <returns>The lines, or a rejection where a distance is not positive or an uncertainty is negative or not a number. Directions are
    /// null where an angle's expanded uncertainty is above <see cref="MostAngleU95Degrees"/> or an eccentricity is not greater than its own.</returns>
    /// <exception cref="ArgumentNullException">Nothing was measured.</exception>
    public static ShaftLineResult Of(CrankRunout crank)
    {
        ArgumentNullException.ThrowIfNull(crank);
        if (Fault(crank) is { } fault)
        {
            return new() { Status = ShaftLineStatus.Rejected, Missing = fault, Sentence = $"{fault} {Caution}" };
        }

        var (drive, pinion) = (Tilt(crank.DriveSide), Tilt(crank.PinionSide));
        var (half, halfDeviation) = (crank.BetweenBearings.Millimetres / 2, crank.BetweenBearingsU95.Millimetres / 4);
        var known = Known(crank.DriveSide) && Known(crank.PinionSide);
        var (kink, offset) = (drive.Plus(pinion), drive.Minus(pinion).Times(half, halfDeviation));
        HighSpots? spots = known ? Directions.Between(drive, pinion) : null;
        var result = new ShaftLineResult
        {
            Status = ShaftLineStatus.Measured,
            DriveSide = End(drive, crank.DriveSide),
            PinionSide = End(pinion, crank.PinionSide),
            Apart = known
                ? new(Slope.FromRatio(kink.Length), Slope.FromRatio(2 * kink.Deviation), Named(kink), Mm(offset.Length), Mm(2 * offset.Deviation), Named(offset))
                : null,
            HighSpots = spots,
            Against = spots switch
            {
                HighSpots.SameSide => Directions.Against(kink, crank, eitherEnd: false),
                HighSpots.Opposite => Directions.Against(offset, crank, eitherEnd: true),
                _ => null,
            },
            Sentence = "",
        };
        return result with { Sentence = $"{ShaftLineWords.For(crank, result)} {Caution}" };

        EndLine End(PlaneVector tilt, EndRunout end)
        {
            var aside = tilt.Times(half, halfDeviation);
            return new(
                Slope.FromRatio(tilt.Length),
                Slope.FromRatio(2 * tilt.Deviation),
                Mm(aside.Length),
                Mm(2 * aside.Deviation),
                Known(end) ? end.Toward : null,
                Known(end) ? Directions.Against(tilt, crank, eitherEnd: false) : null);
        }
    }

    /// <summary>Whether an eccentricity is greater than its expanded uncertainty.</summary>
    internal static bool Significant(EndRunout end) => end.Eccentricity > end.EccentricityU95;

    private static bool Known(EndRunout end) => Significant(end) && end.TowardU95Degrees <= MostAngleU95Degrees;

    private static PlaneVector Tilt(EndRunout end)
    {
        var (distance, deviation) = (end.FromBearing.Millimetres, end.FromBearingU95.Millimetres / 2);
        return PlaneVector
            .FromPolar(end.Eccentricity.Millimetres, end.EccentricityU95.Millimetres / 2, end.Toward.Degrees, (end.TowardU95Degrees ?? 0) / 2)
            .Times(1 / distance, deviation / (distance * distance));
    }

    private static Angle? Named(PlaneVector vector) =>
        vector.Length > 2 * vector.Deviation && 2 * vector.DegreesDeviation <= MostAngleU95Degrees ? Angle.FromDegrees(vector.Degrees) : null;

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static string? Fault(CrankRunout crank)
    {
        var ends = new[] { crank.DriveSide, crank.PinionSide };
        Length[] lengths = [crank.BetweenBearings, .. ends.SelectMany(end => new[] { end.Eccentricity, end.FromBearing })];
        Length[] lengthsU95 = [crank.BetweenBearingsU95, .. ends.SelectMany(end => new[] { end.EccentricityU95, end.FromBearingU95 })];
        double[] anglesU95 = [crank.CrankpinU95Degrees, .. ends.Select(end => end.TowardU95Degrees ?? 0)];
        return ends.Any(end => end.FromBearing <= Length.Zero) ? "A measuring point must lie outside its bearing, by more than nothing."
            : crank.BetweenBearings <= Length.Zero ? "The bearings must be apart from each other."
            : ends.Any(end => end.Eccentricity < Length.Zero) ? "An eccentricity cannot be less than nothing."
            : lengthsU95.Any(u => u < Length.Zero) || !anglesU95.All(u => u is >= 0 and < 1e6) ? "An uncertainty must be a number, zero or more."
            : lengths.Concat(lengthsU95).Any(length => length.Millimetres > 1e4) ? "A length of more than ten metres is not that of a crank."
            : ends.Any(end => end.Eccentricity >= end.FromBearing || end.EccentricityU95 >= end.FromBearing || end.FromBearingU95 >= end.FromBearing)
                ? "A measuring point must be farther from its bearing than the shaft runs out there, and by a distance that is known."
            : null;
    }
}

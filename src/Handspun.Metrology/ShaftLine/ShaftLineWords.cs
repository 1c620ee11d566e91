namespace Handspun.Metrology.ShaftLine;

/// <summary>What the shaft lines mean, in the words of those who true cranks (common practice, no source; the geometry is that of the tests).</summary>
internal static class ShaftLineWords
{
    /// <summary>One or two plain sentences.</summary>
    public static string For(CrankRunout crank, ShaftLineResult result)
    {
        var (drive, pinion) = (ShaftLineMethod.Significant(crank.DriveSide), ShaftLineMethod.Significant(crank.PinionSide));
        return (drive, pinion, result.Apart) switch
        {
            (false, false, _) => "Neither shaft runs out by more than its measurement can tell.",
            (true, false, _) => "Only the drive side shaft runs out by more than its measurement can tell.",
            (false, true, _) => "Only the pinion side shaft runs out by more than its measurement can tell.",
            (_, _, null) => "Both shafts run out, but where their high spots lie is not known well enough; measure both ends again from one mark.",
            _ => Both(result),
        };
    }

    private static string Both(ShaftLineResult result) => (result.HighSpots, result.Against) switch
    {
        (HighSpots.SameSide, CrankpinSide.AtCrankpin) =>
            "Both shafts are high on the crankpin's side: the flywheels stand open, wider apart opposite the crankpin than at it.",
        (HighSpots.SameSide, CrankpinSide.OppositeCrankpin) =>
            "Both shafts are high opposite the crankpin: the flywheels are pinched, closer together opposite the crankpin than at it.",
        (HighSpots.SameSide, CrankpinSide.SquareToCrankpin) =>
            "Both shafts are high on the same side, square to the crankpin: the flywheels lean against each other about the crank throw.",
        (HighSpots.SameSide, null) =>
            "Both shafts are high on the same side; how that lies to the crankpin is not known well enough.",
        (HighSpots.Opposite, CrankpinSide.SquareToCrankpin) =>
            "The shafts are high on opposite sides, square to the crankpin: one flywheel is turned on the crankpin against the other.",
        (HighSpots.Opposite, CrankpinSide.AtCrankpin) =>
            "The shafts are high on opposite sides, in line with the crankpin: the shafts stand offset along the crank throw.",
        (HighSpots.Opposite, _) =>
            "The shafts are high on opposite sides; how that lies to the crankpin is not known well enough.",
        (HighSpots.Crosswise, _) =>
            "The high spots lie crosswise: the shafts are both offset and at an angle to each other.",
        _ => "Both shafts run out; whether they are high on the same side is too close to call.",
    };
}

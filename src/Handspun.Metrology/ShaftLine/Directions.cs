namespace Handspun.Metrology.ShaftLine;

/// <summary>Names directions, and only those that are still the same at both ends of their expanded uncertainty.</summary>
internal static class Directions
{
    /// <summary>How two vectors lie to each other; null where it is too close to call.</summary>
    public static HighSpots? Between(PlaneVector one, PlaneVector other)
    {
        var apart = Apart(one.Degrees, other.Degrees);
        var u = 2 * Math.Sqrt(Math.Pow(one.DegreesDeviation, 2) + Math.Pow(other.DegreesDeviation, 2));
        return apart + u < 60 ? HighSpots.SameSide
            : apart - u > 120 ? HighSpots.Opposite
            : apart - u > 60 && apart + u < 120 ? HighSpots.Crosswise
            : null;
    }

    /// <summary>How a vector lies to the crankpin; null where it is too close to call, or the crankpin was not noted well enough.</summary>
    /// <param name="vector">The vector.</param>
    /// <param name="crank">Where the crankpin is.</param>
    /// <param name="eitherEnd">Whether the vector has no sense, only a line: at the crankpin and across from it are then the same.</param>
    public static CrankpinSide? Against(PlaneVector vector, CrankRunout crank, bool eitherEnd)
    {
        if (crank.Crankpin is not { } crankpin || vector.Length <= 2 * vector.Deviation || crank.CrankpinU95Degrees > ShaftLineMethod.MostAngleU95Degrees)
        {
            return null;
        }

        var apart = Apart(vector.Degrees, crankpin.Degrees);
        apart = eitherEnd ? Math.Min(apart, 180 - apart) : apart;
        var u = Math.Sqrt(Math.Pow(2 * vector.DegreesDeviation, 2) + Math.Pow(crank.CrankpinU95Degrees, 2));
        return apart + u < 45 ? CrankpinSide.AtCrankpin
            : apart - u > 135 ? CrankpinSide.OppositeCrankpin
            : apart - u > 45 && (eitherEnd || apart + u < 135) ? CrankpinSide.SquareToCrankpin
            : null;
    }

    private static double Apart(double one, double other)
    {
        var apart = Math.Abs(one - other) % 360;
        return apart > 180 ? 360 - apart : apart;
    }
}

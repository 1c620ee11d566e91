namespace Handspun.Jobs.Cranks;

/// <summary>What is typed of a crank so that the runouts of its two ends can be put together; where the indicators stood is in the points' own setups.</summary>
public sealed record CrankSheet
{
    private const double Longest = 1000;

    /// <summary>Axial distance of the two bearings' middles, in millimetres; more than 0.</summary>
    public required double BetweenBearingsMillimetres { get; init; }

    /// <summary>The division of the tool that it was measured with, in millimetres. It stands for the expanded uncertainty (k = 2).</summary>
    public required double DivisionMillimetres { get; init; }

    /// <summary>The direction of the crankpin from the reference of both ends, in the direction of rotation, in degrees, 0 ≤ a &lt; 360; null where it was not noted.</summary>
    public double? CrankpinDegrees { get; init; }

    /// <summary>The division of the degree wheel that it was read on, in degrees. It stands for the expanded uncertainty (k = 2).</summary>
    public double CrankpinDivisionDegrees { get; init; }

    /// <summary>All that cannot be, one sentence each, and what to do; empty where it can be used.</summary>
    public IEnumerable<string> Problems()
    {
        if (BetweenBearingsMillimetres is not (> 0 and < Longest))
        {
            yield return "Give the distance between the middles of the two bearings: more than nothing and less than a metre.";
        }

        if (DivisionMillimetres is not (> 0 and < Longest) || DivisionMillimetres >= BetweenBearingsMillimetres)
        {
            yield return "Give the division of the tool that the distances were measured with: more than nothing and less than the distances themselves.";
        }

        if (CrankpinDegrees is not (null or (>= 0 and < 360)))
        {
            yield return "Give the crankpin's direction in degrees from the mark, from 0 to less than 360, or leave it empty.";
        }

        if (CrankpinDegrees is not null && CrankpinDivisionDegrees is not (> 0 and <= 90))
        {
            yield return "Give the division of the degree wheel that the crankpin was read on, in degrees: more than nothing and at most 90.";
        }
    }
}

using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.ShaftLine;

/// <summary>Whether the two runouts could be put together.</summary>
public enum ShaftLineStatus
{
    /// <summary>The shaft lines are known, with their uncertainty.</summary>
    Measured,

    /// <summary>A distance or an uncertainty cannot be; <see cref="ShaftLineResult.Missing"/> says which.</summary>
    Rejected,
}

/// <summary>How the high spots of the two ends lie to each other.</summary>
public enum HighSpots
{
    /// <summary>Less than 60 degrees apart.</summary>
    SameSide,

    /// <summary>More than 120 degrees apart.</summary>
    Opposite,

    /// <summary>Between the two: a mixture of both.</summary>
    Crosswise,
}

/// <summary>How a direction lies to the crankpin.</summary>
public enum CrankpinSide
{
    /// <summary>Within 45 degrees of the crankpin.</summary>
    AtCrankpin,

    /// <summary>Within 45 degrees of the place across from the crankpin.</summary>
    OppositeCrankpin,

    /// <summary>More than 45 degrees from both.</summary>
    SquareToCrankpin,
}

/// <summary>The line of one shaft against the line through the bearings.</summary>
/// <param name="Tilt">How far the shaft leans, from its bearing outward.</param>
/// <param name="TiltU95">Its expanded uncertainty (k = 2).</param>
/// <param name="Offset">How far its line, made longer, passes the bearing line midway between the bearings; it passes on the side across from <paramref name="Toward"/>.</param>
/// <param name="OffsetU95">Its expanded uncertainty (k = 2).</param>
/// <param name="Toward">Where the shaft leans to; null where the angle is not known well enough.</param>
/// <param name="Against">How that lies to the crankpin; null where it cannot be told.</param>
public sealed record EndLine(Slope Tilt, Slope TiltU95, Length Offset, Length OffsetU95, Angle? Toward, CrankpinSide? Against);

/// <summary>The line of one shaft against that of the other; drive side to pinion side.</summary>
/// <param name="Kink">The angle between the two lines.</param>
/// <param name="KinkU95">Its expanded uncertainty (k = 2).</param>
/// <param name="KinkToward">Where both outer ends lean to in common; null where it is not known well enough.</param>
/// <param name="Offset">How far the two lines pass each other midway between the bearings.</param>
/// <param name="OffsetU95">Its expanded uncertainty (k = 2).</param>
/// <param name="OffsetToward">Where the pinion side's line lies there, seen from the drive side's; null where it is not known well enough.</param>
public sealed record LinesApart(Slope Kink, Slope KinkU95, Angle? KinkToward, Length Offset, Length OffsetU95, Angle? OffsetToward);

/// <summary>What the runouts of both ends say about a built-up crank.</summary>
public sealed record ShaftLineResult
{
    /// <summary>Whether the shaft lines are known.</summary>
    public required ShaftLineStatus Status { get; init; }

    /// <summary>One plain sentence that says what cannot be; null where measured.</summary>
    public string? Missing { get; init; }

    /// <summary>The drive side's shaft.</summary>
    public EndLine? DriveSide { get; init; }

    /// <summary>The pinion side's shaft.</summary>
    public EndLine? PinionSide { get; init; }

    /// <summary>One against the other; null where the angles are not known well enough, for without them it cannot be worked out.</summary>
    public LinesApart? Apart { get; init; }

    /// <summary>How the high spots lie to each other; null where it cannot be told.</summary>
    public HighSpots? HighSpots { get; init; }

    /// <summary>How what both have in common lies to the crankpin: the kink where they are on the same side, the offset (either end of it) where they are opposite; else null.</summary>
    public CrankpinSide? Against { get; init; }

    /// <summary>What was found, in plain words, and that truing is specialist work.</summary>
    public required string Sentence { get; init; }
}

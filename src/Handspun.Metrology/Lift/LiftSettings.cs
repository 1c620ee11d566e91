using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Lift;

/// <summary>Which shaft the index, the marks or the encoder are on.</summary>
public enum AngleShaft
{
    /// <summary>Nobody said: told from how often the lobe comes by.</summary>
    NotSaid,

    /// <summary>On the crank, or on what turns with it.</summary>
    Crank,

    /// <summary>On the cam itself.</summary>
    Cam,
}

/// <summary>What the mechanic asks of a lift curve.</summary>
public sealed record LiftSettings
{
    /// <summary>The checking lift that most cam cards use: 0.050 in at the tappet (common practice, no source).</summary>
    public static Length UsualCheckingLift { get; } = Length.FromInches(0.050);

    /// <summary>Which shaft the angle is told of.</summary>
    public AngleShaft AngleOf { get; init; }

    /// <summary>Whether zero is at the marks although pulses tell the angle: where several come in a turn and none of them is known to be at zero.</summary>
    public bool ZeroAtMark { get; init; }

    /// <summary>The lift, at the lobe, at which the lobe counts as open: 0.050 in, 1 mm, or what the card says. Above zero.</summary>
    public Length CheckingLift { get; init; } = UsualCheckingLift;

    /// <summary>Valve movement for one of the tappet; null where no rocker is asked about. Above 0.</summary>
    public double? RockerRatio { get; init; }

    /// <summary>Expanded uncertainty (k = 2) of <see cref="RockerRatio"/>; 0 or more.</summary>
    public double RockerRatioU95 { get; init; }
}

using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Lift;

/// <summary>What the card that came with a cam says, as the mechanic typed it. Null where the card does not say.</summary>
/// <remarks>All in degrees of the crank but the lobe separation, as cards have it (common practice, no source).</remarks>
public sealed record CamCard
{
    /// <summary>The lift, at the tappet, that opening and closing count from; above zero.</summary>
    public required Length CheckingLift { get; init; }

    /// <summary>Intake opens before top dead centre; negative after it.</summary>
    public CrankAngle? IntakeOpens { get; init; }

    /// <summary>Intake closes after bottom dead centre.</summary>
    public CrankAngle? IntakeCloses { get; init; }

    /// <summary>Exhaust opens before bottom dead centre.</summary>
    public CrankAngle? ExhaustOpens { get; init; }

    /// <summary>Exhaust closes after top dead centre; negative before it.</summary>
    public CrankAngle? ExhaustCloses { get; init; }

    /// <summary>Intake duration.</summary>
    public CrankAngle? IntakeDuration { get; init; }

    /// <summary>Exhaust duration.</summary>
    public CrankAngle? ExhaustDuration { get; init; }

    /// <summary>Intake centreline after top dead centre.</summary>
    public CrankAngle? IntakeCentreline { get; init; }

    /// <summary>Exhaust centreline before top dead centre.</summary>
    public CrankAngle? ExhaustCentreline { get; init; }

    /// <summary>Overlap.</summary>
    public CrankAngle? Overlap { get; init; }

    /// <summary>Angle between the lobes on the cam.</summary>
    public CamAngle? LobeSeparation { get; init; }
}

using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Lift;

/// <summary>Intake and exhaust lobe of one cylinder, measured from the same reference.</summary>
/// <remarks>Both are held against each other and against top dead centre without knowing which of two turns of the crank a reference on the crank meant.</remarks>
public sealed record LobePair
{
    private LobePair()
    {
    }

    /// <summary>Half the way of the crank from the exhaust's centreline to the intake's, which is the way between the lobes on the cam.</summary>
    public required Measured<CamAngle> Separation { get; init; }

    /// <summary>From the intake's opening to the exhaust's closing; negative where both are never open together at the checking lift.</summary>
    public required Measured<CrankAngle> Overlap { get; init; }

    /// <summary>The lift that the overlap counts from, at the tappet.</summary>
    public required Length CheckingLift { get; init; }

    /// <summary>The intake's centreline after top dead centre; null where that is not known.</summary>
    public Measured<CrankAngle>? IntakeCentreline { get; init; }

    /// <summary>The exhaust's centreline before top dead centre; null where that is not known.</summary>
    public Measured<CrankAngle>? ExhaustCentreline { get; init; }

    /// <summary>The intake's opening before top dead centre; negative after it.</summary>
    public Measured<CrankAngle>? IntakeOpens { get; init; }

    /// <summary>The intake's closing after bottom dead centre; negative before it.</summary>
    public Measured<CrankAngle>? IntakeCloses { get; init; }

    /// <summary>The exhaust's opening before bottom dead centre; negative after it.</summary>
    public Measured<CrankAngle>? ExhaustOpens { get; init; }

    /// <summary>The exhaust's closing after top dead centre; negative before it.</summary>
    public Measured<CrankAngle>? ExhaustCloses { get; init; }

    /// <summary>Why two lift curves make no pair, and what to do; null where they do.</summary>
    public static string? Fault(LiftResult intake, LiftResult exhaust)
    {
        ArgumentNullException.ThrowIfNull(intake);
        ArgumentNullException.ThrowIfNull(exhaust);
        return intake.Status != LiftStatus.Measured ? "The intake lobe is not measured yet: take its lift curve first."
            : exhaust.Status != LiftStatus.Measured ? "The exhaust lobe is not measured yet: take its lift curve first."
            : intake.Reference != exhaust.Reference || intake.AngleOf != exhaust.AngleOf ? "The two lobes were measured from different references: take both with the same index, mark or encoder, left where it is."
            : !intake.ZeroTold || !exhaust.ZeroTold ? "Several pulses come in a turn and nothing tells which of them is at zero, so the two lobes cannot be laid beside each other: take a disc with a missing tooth, or press for the mark each time it passes."
            : intake.CheckingLift != exhaust.CheckingLift ? "The two lobes were measured at different checking lifts: measure both at the same one."
            : null;
    }

    /// <summary>Puts two lift curves together.</summary>
    /// <param name="intake">The intake lobe.</param>
    /// <param name="exhaust">The exhaust lobe.</param>
    /// <param name="top">Top dead centre from the same reference; null where it is not known.</param>
    /// <exception cref="ArgumentException">They make no pair; the message is the sentence of <see cref="Fault"/>.</exception>
    public static LobePair Of(LiftResult intake, LiftResult exhaust, Measured<CrankAngle>? top)
    {
        if (Fault(intake, exhaust) is { } fault)
        {
            throw new ArgumentException(fault, nameof(exhaust));
        }

        var (into, outOf) = (AtCrank(intake.Centreline), AtCrank(exhaust.Centreline));
        var (opens, closes) = (AtCrank(intake.Opening), AtCrank(exhaust.Closing));

        // The exhaust comes first, and the intake less than a turn of the crank after it.
        var apart = (into.Value - outOf.Value).WithinTurn();
        var overlap = closes.Value - outOf.Value - apart - (opens.Value - into.Value);
        return new()
        {
            Separation = new(apart.AtCam(), Both(into, outOf).AtCam()),
            Overlap = new(overlap, Both(opens, closes)),
            CheckingLift = intake.CheckingLift,
            IntakeCentreline = After(into, top, 0),
            ExhaustCentreline = Before(outOf, top, 0),
            IntakeOpens = Before(opens, top, 0),
            IntakeCloses = After(AtCrank(intake.Closing), top, 180),
            ExhaustOpens = Before(AtCrank(exhaust.Opening), top, 180),
            ExhaustCloses = After(closes, top, 0),
        };
    }

    private static Measured<CrankAngle> AtCrank(Measured<CamAngle>? angle) => new(angle!.Value.Value.AtCrank(), angle.Value.U95.AtCrank());

    private static Measured<CrankAngle>? After(Measured<CrankAngle> angle, Measured<CrankAngle>? top, double deadCentre) =>
        top is { } centre ? new((angle.Value - centre.Value - CrankAngle.FromDegrees(deadCentre)).ShortWay(), Both(angle, centre)) : null;

    private static Measured<CrankAngle>? Before(Measured<CrankAngle> angle, Measured<CrankAngle>? top, double deadCentre) =>
        After(angle, top, deadCentre) is { } after ? new(CrankAngle.FromDegrees(-after.Value.Degrees), after.U95) : null;

    private static CrankAngle Both(Measured<CrankAngle> one, Measured<CrankAngle> other) =>
        CrankAngle.FromDegrees(Math.Sqrt(Math.Pow(one.U95.Degrees, 2) + Math.Pow(other.U95.Degrees, 2)));
}

using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Lift;

/// <summary>Lays a measured pair of lobes beside its card.</summary>
public static class CardComparison
{
    /// <summary>Why they cannot be laid side by side, and what to do; null where they can.</summary>
    public static string? Fault(CamCard card, LiftResult intake, LiftResult exhaust)
    {
        ArgumentNullException.ThrowIfNull(card);
        if (LobePair.Fault(intake, exhaust) is { } fault)
        {
            return fault;
        }

        const double same = 1e-6;
        return Math.Abs((card.CheckingLift - intake.CheckingLift).Millimetres) > same
            ? $"The card counts from {card.CheckingLift.Millimetres:0.000} mm and the lobes were measured at {intake.CheckingLift.Millimetres:0.000} mm: measure again at the card's checking lift."
            : null;
    }

    /// <summary>The lines that both the card and the measurement have, in the card's order.</summary>
    /// <param name="card">The card.</param>
    /// <param name="intake">The intake lobe.</param>
    /// <param name="exhaust">The exhaust lobe.</param>
    /// <param name="top">Top dead centre from the same reference; null where it is not known, and then only what needs none is compared.</param>
    /// <param name="allowed">The largest difference that is allowed, in degrees of the crank; half as much for what is of the cam. Above zero.</param>
    /// <exception cref="ArgumentException">They cannot be laid side by side; the message is the sentence of <see cref="Fault"/>.</exception>
    public static IReadOnlyList<CardDifference> Of(CamCard card, LiftResult intake, LiftResult exhaust, Measured<CrankAngle>? top, CrankAngle allowed)
    {
        if (Fault(card, intake, exhaust) is { } fault)
        {
            throw new ArgumentException(fault, nameof(card));
        }

        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(allowed.Degrees);
        var pair = LobePair.Of(intake, exhaust, top);
        List<CardDifference> lines = [];
        void Lay(string what, CrankAngle? says, Measured<CrankAngle>? measured)
        {
            if (says is { } wanted && measured is { } found)
            {
                lines.Add(Line(what, false, wanted.Degrees, found.Value.Degrees, found.U95.Degrees, allowed.Degrees));
            }
        }

        Lay("Intake opens before top dead centre", card.IntakeOpens, pair.IntakeOpens);
        Lay("Intake closes after bottom dead centre", card.IntakeCloses, pair.IntakeCloses);
        Lay("Exhaust opens before bottom dead centre", card.ExhaustOpens, pair.ExhaustOpens);
        Lay("Exhaust closes after top dead centre", card.ExhaustCloses, pair.ExhaustCloses);
        Lay("Intake duration", card.IntakeDuration, AtCrank(intake.Duration));
        Lay("Exhaust duration", card.ExhaustDuration, AtCrank(exhaust.Duration));
        Lay("Intake centreline after top dead centre", card.IntakeCentreline, pair.IntakeCentreline);
        Lay("Exhaust centreline before top dead centre", card.ExhaustCentreline, pair.ExhaustCentreline);
        Lay("Overlap", card.Overlap, pair.Overlap);
        if (card.LobeSeparation is { } separation)
        {
            lines.Add(Line("Lobe separation", true, separation.Degrees, pair.Separation.Value.Degrees, pair.Separation.U95.Degrees, allowed.AtCam().Degrees));
        }

        return lines;
    }

    private static Measured<CrankAngle>? AtCrank(Measured<CamAngle>? angle) =>
        angle is { } cam ? new(cam.Value.AtCrank(), cam.U95.AtCrank()) : null;

    private static CardDifference Line(string what, bool ofCam, double card, double measured, double u95, double allowed)
    {
        var off = Math.Abs(measured - card);
        var verdict = off + u95 <= allowed ? Verdict.Within : off - u95 > allowed ? Verdict.Over : Verdict.Undecided;
        return new(what, ofCam, card, measured, u95, verdict);
    }
}

using System.Text.Json.Serialization;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Points;

/// <summary>What the card that came with a cam says, as the mechanic typed it. Degrees of the crank, but the lobe separation; null where the card does not say.</summary>
public sealed record CamCardSetup : PointSetup
{
    private const double UsuallyAllowed = 2;

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.CamTiming;

    /// <summary>The lift at the lifter that the card counts from; null takes the usual 0.050 in.</summary>
    public double? CheckingLiftMillimetres { get; init; }

    /// <summary>Intake opens before top dead centre; below zero after it.</summary>
    public double? IntakeOpensDegrees { get; init; }

    /// <summary>Intake closes after bottom dead centre.</summary>
    public double? IntakeClosesDegrees { get; init; }

    /// <summary>Exhaust opens before bottom dead centre.</summary>
    public double? ExhaustOpensDegrees { get; init; }

    /// <summary>Exhaust closes after top dead centre; below zero before it.</summary>
    public double? ExhaustClosesDegrees { get; init; }

    /// <summary>Intake duration.</summary>
    public double? IntakeDurationDegrees { get; init; }

    /// <summary>Exhaust duration.</summary>
    public double? ExhaustDurationDegrees { get; init; }

    /// <summary>Intake centreline after top dead centre.</summary>
    public double? IntakeCentrelineDegrees { get; init; }

    /// <summary>Exhaust centreline before top dead centre.</summary>
    public double? ExhaustCentrelineDegrees { get; init; }

    /// <summary>Overlap.</summary>
    public double? OverlapDegrees { get; init; }

    /// <summary>Angle between the lobes, in degrees of the cam.</summary>
    public double? SeparationCamDegrees { get; init; }

    /// <summary>The largest difference that still counts as what the card says, in degrees of the crank; half as much of the cam. The default is common practice, no source.</summary>
    public double AllowedDegrees { get; init; } = UsuallyAllowed;

    /// <summary>The card.</summary>
    public CamCard ToCard() => new()
    {
        CheckingLift = CheckingLiftMillimetres is { } lift ? Length.FromMillimetres(lift) : LiftSettings.UsualCheckingLift,
        IntakeOpens = Crank(IntakeOpensDegrees),
        IntakeCloses = Crank(IntakeClosesDegrees),
        ExhaustOpens = Crank(ExhaustOpensDegrees),
        ExhaustCloses = Crank(ExhaustClosesDegrees),
        IntakeDuration = Crank(IntakeDurationDegrees),
        ExhaustDuration = Crank(ExhaustDurationDegrees),
        IntakeCentreline = Crank(IntakeCentrelineDegrees),
        ExhaustCentreline = Crank(ExhaustCentrelineDegrees),
        Overlap = Crank(OverlapDegrees),
        LobeSeparation = SeparationCamDegrees is { } cam ? CamAngle.FromDegrees(cam) : null,
    };

    /// <inheritdoc/>
    public override IEnumerable<string> Problems()
    {
        if (CheckingLiftMillimetres is { } lift && !(lift is >= 0.1 and < 8))
        {
            yield return "Give the checking lift as the card has it, with its unit: usually 0.050 in or 1 mm.";
        }

        foreach (var (what, degrees, least, most) in Lines)
        {
            if (degrees is { } said && !(said >= least && said <= most))
            {
                yield return $"{what} of {said:0.#}° cannot be: the card's number lies from {least:0} to {most:0}; read it again, and mind crank and cam degrees.";
            }
        }

        if (!(AllowedDegrees is > 0 and <= 20))
        {
            yield return "Give the difference that is allowed as more than 0 and up to 20 degrees of the crank.";
        }
    }

    // Far outside what cams have (from memory): they catch a mix-up of crank and cam, or of two lines of the card.
    private IEnumerable<(string What, double? Degrees, double Least, double Most)> Lines =>
    [
        ("Intake opening", IntakeOpensDegrees, -60, 90),
        ("Intake closing", IntakeClosesDegrees, -30, 110),
        ("Exhaust opening", ExhaustOpensDegrees, -30, 110),
        ("Exhaust closing", ExhaustClosesDegrees, -60, 90),
        ("Intake duration", IntakeDurationDegrees, 120, 360),
        ("Exhaust duration", ExhaustDurationDegrees, 120, 360),
        ("Intake centreline", IntakeCentrelineDegrees, 60, 150),
        ("Exhaust centreline", ExhaustCentrelineDegrees, 60, 150),
        ("Overlap", OverlapDegrees, -120, 150),
        ("Lobe separation", SeparationCamDegrees, 80, 130),
    ];

    private static CrankAngle? Crank(double? degrees) => degrees is { } said ? CrankAngle.FromDegrees(said) : null;
}

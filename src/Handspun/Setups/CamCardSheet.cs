using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;

namespace Handspun.Setups;

/// <summary>What the card that came with a cam says.</summary>
internal sealed class CamCardSheet : ISetupSheet
{
    private const string Before = "before; \u2212 where it is after";
    private const string After = "after; \u2212 where it is before";

    /// <inheritdoc/>
    public PointKind Kind => PointKind.CamTiming;

    /// <inheritdoc/>
    public string Title => "The cam's card";

    /// <inheritdoc/>
    public string Tell(PointSetup? setup, LengthUnit unit) => setup is CamCardSetup card
        ? string.Create(CultureInfo.InvariantCulture, $"Typed as the card says; up to {card.AllowedDegrees:0.#}° of the crank off is taken as the same.")
        : "Nobody typed the card yet. Type what it says and leave the rest empty; all in degrees of the crank but the lobe separation.";

    /// <inheritdoc/>
    public IReadOnlyList<SetupField> Fields(PointSetup? setup, LengthUnit unit)
    {
        var card = setup as CamCardSetup;
        return
        [
            new("intake_opens", "Intake opens before top", Number(card?.IntakeOpensDegrees)) { Hint = Before },
            new("intake_closes", "Intake closes after bottom", Number(card?.IntakeClosesDegrees)) { Hint = After },
            new("intake_duration", "Intake duration", Number(card?.IntakeDurationDegrees)),
            new("exhaust_opens", "Exhaust opens before bottom", Number(card?.ExhaustOpensDegrees)) { Hint = Before },
            new("exhaust_closes", "Exhaust closes after top", Number(card?.ExhaustClosesDegrees)) { Hint = After },
            new("exhaust_duration", "Exhaust duration", Number(card?.ExhaustDurationDegrees)),
            new("intake_centreline", "Intake centreline after top", Number(card?.IntakeCentrelineDegrees)),
            new("exhaust_centreline", "Exhaust centreline before top", Number(card?.ExhaustCentrelineDegrees)),
            new("overlap", "Overlap", Number(card?.OverlapDegrees)),
            new("separation", "Lobe separation", Number(card?.SeparationCamDegrees)) { Hint = "degrees of the cam" },
            new("checking_lift", "Checking lift", LengthText.AsTyped(card?.CheckingLiftMillimetres, unit)) { Hint = "empty for 0.050 in" },
            new("allowed", "Off by this much is the same", card is null ? "" : Number(card.AllowedDegrees)) { Hint = "degrees of the crank; empty for 2" },
        ];
    }

    /// <inheritdoc/>
    public PointSetup Read(TypedSheet typed)
    {
        double? Degrees(string name, string called) => typed.SignedNumber(name, called, "20");

        var card = new CamCardSetup
        {
            IntakeOpensDegrees = Degrees("intake_opens", "Where the intake opens"),
            IntakeClosesDegrees = Degrees("intake_closes", "Where the intake closes"),
            IntakeDurationDegrees = Degrees("intake_duration", "The intake's duration"),
            ExhaustOpensDegrees = Degrees("exhaust_opens", "Where the exhaust opens"),
            ExhaustClosesDegrees = Degrees("exhaust_closes", "Where the exhaust closes"),
            ExhaustDurationDegrees = Degrees("exhaust_duration", "The exhaust's duration"),
            IntakeCentrelineDegrees = Degrees("intake_centreline", "The intake's centreline"),
            ExhaustCentrelineDegrees = Degrees("exhaust_centreline", "The exhaust's centreline"),
            OverlapDegrees = Degrees("overlap", "The overlap"),
            SeparationCamDegrees = Degrees("separation", "The lobe separation"),
            CheckingLiftMillimetres = typed.Length("checking_lift", "The checking lift")?.Millimetres,
            AllowedDegrees = typed.Number("allowed", "The difference that is allowed", "2") ?? new CamCardSetup().AllowedDegrees,
        };
        return TypedSheet.Sound(card);
    }

    private static string Number(double? value) => value?.ToString("0.##", CultureInfo.InvariantCulture).Replace('-', '\u2212') ?? "";
}

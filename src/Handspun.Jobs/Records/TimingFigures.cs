using System.Globalization;
using System.Text.Json.Serialization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Records;

/// <summary>What both lobes of a cylinder do together, as it is kept. Degrees of the crank, but the lobe separation; null where it is not known.</summary>
public sealed record TimingFigures : ResultFigures
{
    private static readonly string[] OnCardOnly = ["Intake duration", "Exhaust duration", "Lobe separation"];

    /// <summary>Angle between the lobes, in degrees of the cam.</summary>
    public double? SeparationCamDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? SeparationCamU95Degrees { get; init; }

    /// <summary>From the intake's opening to the exhaust's closing; below zero where both are never open together.</summary>
    public double? OverlapDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? OverlapU95Degrees { get; init; }

    /// <summary>The lift, at the lifter, that opening and closing count from.</summary>
    public double CheckingLiftMillimetres { get; init; }

    /// <summary>Intake opens before top dead centre.</summary>
    public double? IntakeOpensDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? IntakeOpensU95Degrees { get; init; }

    /// <summary>Intake closes after bottom dead centre.</summary>
    public double? IntakeClosesDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? IntakeClosesU95Degrees { get; init; }

    /// <summary>Exhaust opens before bottom dead centre.</summary>
    public double? ExhaustOpensDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? ExhaustOpensU95Degrees { get; init; }

    /// <summary>Exhaust closes after top dead centre.</summary>
    public double? ExhaustClosesDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? ExhaustClosesU95Degrees { get; init; }

    /// <summary>Intake centreline after top dead centre.</summary>
    public double? IntakeCentrelineDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? IntakeCentrelineU95Degrees { get; init; }

    /// <summary>Exhaust centreline before top dead centre.</summary>
    public double? ExhaustCentrelineDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? ExhaustCentrelineU95Degrees { get; init; }

    /// <summary>The lines that both the card and the measurement have; empty where no card was typed.</summary>
    public IReadOnlyList<TimingLine> Lines { get; init; } = [];

    /// <summary>The card that it was laid beside; null where none was typed.</summary>
    public CamCardSetup? Card { get; init; }

    /// <summary>The record of the intake lobe.</summary>
    public required string IntakeRecord { get; init; }

    /// <summary>The record of the exhaust lobe.</summary>
    public required string ExhaustRecord { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.CamTiming;

    /// <inheritdoc/>
    public override Length? Value => null;

    /// <inheritdoc/>
    public override Length? ValueU95 => null;

    /// <inheritdoc/>
    public override string ValueTitle => "Lobe separation";

    /// <inheritdoc/>
    public override string SurerBy => "Take both lift curves again with a sensor that has more pulses a turn.";

    /// <inheritdoc/>
    public override ShownResult? InFigures(LengthUnit unit) => SeparationCamDegrees is null ? null : new(Degrees(SeparationCamDegrees), Doubt(SeparationCamU95Degrees));

    /// <inheritdoc/>
    public override string? InWords(LengthUnit unit)
    {
        if (SeparationCamDegrees is null)
        {
            return null;
        }

        var off = Lines.Where(line => line.Verdict != "within").ToArray();
        var judged = Lines.Count == 0 ? "Type what the cam's card says to see the difference."
            : off.Length == 0 ? string.Create(CultureInfo.InvariantCulture, $"All {Lines.Count} lines are as the card says.")
            : string.Join(" ", off.Select(line => line.Sentence));
        return $"The lobes are {Degrees(SeparationCamDegrees)} ± {Doubt(SeparationCamU95Degrees)} of the cam apart. {judged}";
    }

    /// <inheritdoc/>
    public override IEnumerable<Figure> ToShow(LengthUnit unit)
    {
        if (SeparationCamDegrees is null)
        {
            yield break;
        }

        yield return new("Counted from", $"{LengthText.Of(Length.FromMillimetres(CheckingLiftMillimetres), unit)} of lift at the lifter");
        var says = Lines.ToDictionary(line => line.What, line => line);
        (string What, double? Degrees, double? U95)[] all =
        [
            ("Overlap", OverlapDegrees, OverlapU95Degrees),
            ("Intake opens before top dead centre", IntakeOpensDegrees, IntakeOpensU95Degrees),
            ("Intake closes after bottom dead centre", IntakeClosesDegrees, IntakeClosesU95Degrees),
            ("Intake centreline after top dead centre", IntakeCentrelineDegrees, IntakeCentrelineU95Degrees),
            ("Exhaust opens before bottom dead centre", ExhaustOpensDegrees, ExhaustOpensU95Degrees),
            ("Exhaust closes after top dead centre", ExhaustClosesDegrees, ExhaustClosesU95Degrees),
            ("Exhaust centreline before top dead centre", ExhaustCentrelineDegrees, ExhaustCentrelineU95Degrees),
        ];
        foreach (var (what, degrees, u95) in all.Where(one => one.Degrees is not null))
        {
            yield return new(what, $"{Degrees(degrees)} ± {Doubt(u95)}{Card(what)}");
        }

        foreach (var what in OnCardOnly.Where(says.ContainsKey))
        {
            yield return new(what, $"{Degrees(says[what].MeasuredDegrees)} ± {Doubt(says[what].MeasuredU95Degrees)}{Card(what)}");
        }

        string Card(string what) => says.TryGetValue(what, out var line) ? $", card {Degrees(line.CardDegrees)}" : "";
    }

    private static string Degrees(double? degrees) => string.Create(CultureInfo.InvariantCulture, $"{degrees:0.0}°").Replace('-', '\u2212');

    private static string Doubt(double? degrees) => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(10 * (degrees ?? 0) - 1e-6) / 10:0.0}°");
}

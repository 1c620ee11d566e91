using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;

namespace Handspun.Setups;

/// <summary>What is asked of a lift curve, and where top dead centre stands against the index or the mark.</summary>
internal sealed class LiftSheet : ISetupSheet
{
    private const string None = "none";
    private const string Missing = "missing";

    /// <inheritdoc/>
    public PointKind Kind => PointKind.LiftCurve;

    /// <inheritdoc/>
    public string Title => "Rocker, angle and top dead centre";

    /// <inheritdoc/>
    public string Tell(PointSetup? setup, LengthUnit unit)
    {
        var said = setup as LiftSetup ?? new LiftSetup();
        var lift = said.CheckingLiftMillimetres is { } typed ? Length.FromMillimetres(typed) : LiftSettings.UsualCheckingLift;
        var rocker = said.RockerRatio is { } ratio
            ? string.Create(CultureInfo.InvariantCulture, $"Rocker ratio {ratio:0.###}.")
            : "The rocker ratio was not typed: records tell the lobe's lift, not the valve's.";
        var top = said.Top is { } angle
            ? string.Create(CultureInfo.InvariantCulture, $"Top dead centre is at {angle.Value.Degrees:0.0}° ± {angle.U95.Degrees:0.0}° of the crank.")
            : "Where top dead centre is was not typed: angles count from the index or the mark only. " + TopDeadCentre.Caution;
        return $"Opening and closing count from {LengthText.Of(lift, unit)} of lift. {rocker} {top}";
    }

    /// <inheritdoc/>
    public IReadOnlyList<SetupField> Fields(PointSetup? setup, LengthUnit unit)
    {
        var said = setup as LiftSetup;
        return
        [
            new("rocker_ratio", "Rocker ratio", SetupField.Number(said?.RockerRatio)) { Hint = "such as 1.625" },
            new("rocker_ratio_u95", "Known to within ±", said?.RockerRatioU95 > 0 ? SetupField.Number(said.RockerRatioU95) : "") { Hint = "such as 0.02" },
            new("checking_lift", "Checking lift", LengthText.AsTyped(said?.CheckingLiftMillimetres, unit)) { Hint = "as the card says; empty for 0.050 in" },
            new("angle_of", "Sensor or mark is on", said?.AngleOf ?? "") { Choices = [("", "not said"), ("crank", "the crank"), ("cam", "the cam")] },
            new("pulses", "Pulses in one turn", SetupField.Number(said?.PulsesPerTurn)) { Hint = "empty: as the gauge's profile says" },
            new("tooth", "One of them is missing", said?.MissingTooth == true ? Missing : None) { Choices = [(None, "no"), (Missing, "yes, zero is after the gap")] },
            new("stop", "Piston stop, turned one way", SetupField.Number(said?.StopDegrees)) { Hint = "degrees of the crank from the index" },
            new("other_stop", "Piston stop, turned back", SetupField.Number(said?.OtherStopDegrees)) { Hint = "likewise; the middle is the top" },
            new("top", "Or top dead centre itself", SetupField.Number(said?.TopDegrees)) { Hint = "where it is known without the stops" },
            new("angle_u95", "Angles read to within ±", said is null ? "" : SetupField.Number(said.AngleU95Degrees)) { Hint = "degrees of the crank; empty for 1" },
        ];
    }

    /// <inheritdoc/>
    public PointSetup Read(TypedSheet typed)
    {
        var setup = new LiftSetup
        {
            RockerRatio = typed.Number("rocker_ratio", "The rocker ratio", "1.625"),
            RockerRatioU95 = typed.Number("rocker_ratio_u95", "How well the rocker ratio is known", "0.02") ?? 0,
            CheckingLiftMillimetres = typed.Length("checking_lift", "The checking lift")?.Millimetres,
            AngleOf = typed.Choice("angle_of", "angle_of", "", "crank", "cam") is { Length: > 0 } shaft ? shaft : null,
            PulsesPerTurn = typed.Number("pulses", "The pulses in one turn", "36"),
            MissingTooth = typed.Choice("tooth", "tooth", None, Missing) == Missing,
            StopDegrees = typed.Number("stop", "The first stop", "12.5"),
            OtherStopDegrees = typed.Number("other_stop", "The other stop", "347.5"),
            TopDegrees = typed.Number("top", "Top dead centre", "12.5"),
            AngleU95Degrees = typed.Number("angle_u95", "How well the angles were read", "1") ?? 1,
        };
        return TypedSheet.Sound(setup);
    }
}

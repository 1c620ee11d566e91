using Handspun.Http;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Setups;

namespace Handspun.Tests.Setups;

public sealed class LiftSheetTests
{
    private static readonly ISetupSheet Lift = SetupSheets.Find(PointKind.LiftCurve)!;
    private static readonly ISetupSheet Card = SetupSheets.Find(PointKind.CamTiming)!;

    [Fact]
    public void Lift_FilledIn_IsRead() => Assert.Equal(
        new LiftSetup { RockerRatio = 1.625, RockerRatioU95 = 0.02, CheckingLiftMillimetres = 1, AngleOf = "crank", PulsesPerTurn = 36, MissingTooth = true, StopDegrees = 350, OtherStopDegrees = 14, AngleU95Degrees = 0.5 },
        Read(Lift, ("rocker_ratio", "1,625"), ("rocker_ratio_u95", "0.02"), ("checking_lift", "1 mm"), ("angle_of", "crank"), ("pulses", "36"), ("tooth", "missing"), ("stop", "350"), ("other_stop", "14"), ("angle_u95", "0.5")));

    [Fact]
    public void Lift_LeftEmpty_SaysWhatIsNotKnown()
    {
        var told = Lift.Tell(Read(Lift), LengthUnit.Inch);

        Assert.Contains("count from 0.0500 in", told, StringComparison.Ordinal);
        Assert.Contains("rocker ratio was not typed", told, StringComparison.Ordinal);
        Assert.Contains("Turn by hand only", told, StringComparison.Ordinal);   // before somebody turns up to a stop
    }

    [Theory]
    [InlineData("rocker_ratio", "16", "mostly 1.5 to 1.8")]
    [InlineData("checking_lift", "0.050", "Give the length with its unit")]
    [InlineData("checking_lift", "0.050 mm", "0.05 in would be 1.27 mm")]
    [InlineData("angle_of", "wheel", "angle_of is one of")]
    [InlineData("stop", "350", "Give both stops")]
    [InlineData("tooth", "missing", "Give the teeth in one turn")]
    public void Lift_WithSomethingThatCannotBe_SaysWhatToType(string name, string text, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<RequestSentenceException>(() => Read(Lift, (name, text))).Message, StringComparison.Ordinal);

    [Fact]
    public void Card_FilledIn_IsReadWithItsSigns() => Assert.Equal(
        new CamCardSetup { IntakeOpensDegrees = -4, IntakeClosesDegrees = 38.5, SeparationCamDegrees = 108 },
        Read(Card, ("intake_opens", "\u22124"), ("intake_closes", "38,5°"), ("separation", "108")));

    [Theory]
    [InlineData("separation", "216", "mind crank and cam degrees")]
    [InlineData("overlap", "some", "is no number")]
    public void Card_WithSomethingThatCannotBe_SaysWhatToType(string name, string text, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<RequestSentenceException>(() => Read(Card, (name, text))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(LengthUnit.Inch)]
    [InlineData(LengthUnit.Millimetre)]
    public void Sheets_ShownAndSentAgain_ChangeNothing(LengthUnit unit)
    {
        var lift = Read(Lift, ("rocker_ratio", "1.6"), ("checking_lift", "1 mm"), ("pulses", "36"), ("tooth", "missing"), ("top", "12.5"), ("angle_u95", "0.5"));
        var again = (LiftSetup)Read(Lift, [.. Lift.Fields(lift, unit).Select(field => (field.Name, field.Value))]);
        Assert.Equal(lift, again with { CheckingLiftMillimetres = Math.Round(again.CheckingLiftMillimetres!.Value, 4) });

        var card = Read(Card, ("intake_opens", "-4"), ("overlap", "22.5"), ("allowed", "1.5"));
        Assert.Equal(card, Read(Card, [.. Card.Fields(card, unit).Select(field => (field.Name, field.Value))]));
    }

    private static PointSetup Read(ISetupSheet sheet, params (string Name, string Text)[] typed) =>
        sheet.Read(new TypedSheet(typed.ToDictionary(pair => pair.Name, pair => (string?)pair.Text), sheet));
}

using Handspun.Http;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Setups;

namespace Handspun.Tests.Setups;

public sealed class RunoutSheetTests
{
    private static readonly ISetupSheet Sheet = SetupSheets.Find(PointKind.Runout)!;

    [Fact]
    public void Stand_FilledIn_IsRead() => Assert.Equal(
        new RunoutSetup { LeverDegrees = 12.5, Celsius = -4, FromBearingMillimetres = 40, DivisionMillimetres = 1 },
        Read(("lever_deg", "12,5"), ("celsius", "\u22124"), ("from_bearing", "40 mm"), ("division", "1 mm")));

    [Fact]
    public void Stand_LeftEmpty_IsAPlungers()
    {
        Assert.Equal(new RunoutSetup(), Read());
        Assert.Contains("taken as they are", Sheet.Tell(null, LengthUnit.Inch), StringComparison.Ordinal);
    }

    [Fact]
    public void Lever_IsToldWithItsFactor() =>
        Assert.Equal("A lever at 60° to the surface: its readings are multiplied by 0.5000. Measured at 22 °C.", Sheet.Tell(new RunoutSetup { LeverDegrees = 60, Celsius = 22 }, LengthUnit.Inch));

    [Theory]
    [InlineData("lever_deg", "90", "from 0 to less than 90")]
    [InlineData("lever_deg", "flat", "is no number")]
    [InlineData("celsius", "72", "in degrees Celsius")]
    [InlineData("from_bearing", "40 mm", "Give the division of the tool")]
    [InlineData("division", "1 mm", "Give the distance of the plunger")]
    public void Stand_ThatCannotBe_SaysWhatToType(string name, string text, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<RequestSentenceException>(() => Read((name, text))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(LengthUnit.Inch)]
    [InlineData(LengthUnit.Millimetre)]
    public void Stand_ShownAndSentAgain_ChangesNothing(LengthUnit unit)
    {
        var stand = new RunoutSetup { LeverDegrees = 15, Celsius = 21.5, FromBearingMillimetres = 50.8, DivisionMillimetres = 0.508 };

        Assert.Equal(stand, Read([.. Sheet.Fields(stand, unit).Select(field => (field.Name, field.Value))]));
    }

    private static PointSetup Read(params (string Name, string Text)[] typed) =>
        Sheet.Read(new TypedSheet(typed.ToDictionary(field => field.Name, field => (string?)field.Text), Sheet));
}

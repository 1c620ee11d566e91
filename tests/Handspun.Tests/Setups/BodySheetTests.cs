using Handspun.Http;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Setups;

namespace Handspun.Tests.Setups;

public sealed class BodySheetTests
{
    private static readonly ISetupSheet Sheet = SetupSheets.Find(PointKind.OutsideSize)!;

    [Fact]
    public void Sheet_FilledIn_IsReadAndTold()
    {
        var setup = Read(("setting", "21.382 mm"), ("setting_u95", "0,001 mm"), ("shown", "\u22120.002 mm"), ("reads", "higher"));

        Assert.Equal(new BodySetup { SettingMillimetres = 21.382, SettingU95Millimetres = 0.001, ShownMillimetres = -0.002 }, setup);
        Assert.Contains("Set to 21.382 mm \u00b1 0.001 mm, where it shows \u22120.002 mm; a larger body reads higher.", Sheet.Tell(setup, LengthUnit.Millimetre), StringComparison.Ordinal);
        Assert.Equal(setup, Read([.. Sheet.Fields(setup, LengthUnit.Millimetre).Select(field => (field.Name, field.Value))]));
    }

    [Fact]
    public void Sheet_LeftEmpty_SaysWhatIsLost() =>
        Assert.Contains("no size and no verdict", Sheet.Tell(null, LengthUnit.Inch), StringComparison.Ordinal);

    [Theory]
    [InlineData("setting", "21.382", "Give the length with its unit")]
    [InlineData("setting", "0.842 mm", "0.842 in would be 21.387 mm")]
    [InlineData("setting", "21.382 mm", "pin or block and how well it is known together, or neither")]
    [InlineData("depth", "12 mm", "Nothing is asked under 'depth'")]
    public void Sheet_WithSomethingThatCannotBe_SaysWhatToType(string name, string text, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<RequestSentenceException>(() => Read((name, text))).Message, StringComparison.Ordinal);

    private static BodySetup Read(params (string Name, string Text)[] typed) =>
        (BodySetup)Sheet.Read(new TypedSheet(typed.ToDictionary(pair => pair.Name, string? (pair) => pair.Text), Sheet));
}

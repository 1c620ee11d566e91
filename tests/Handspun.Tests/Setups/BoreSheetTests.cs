using Handspun.Http;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Setups;

namespace Handspun.Tests.Setups;

public sealed class BoreSheetTests
{
    private static readonly ISetupSheet Sheet = SetupSheets.Find(PointKind.Bore)!;

    [Fact]
    public void Sheet_FilledIn_IsRead()
    {
        var setup = Read(("setting", "0.8430 in"), ("setting_u95", "0,002 mm"), ("shown", "-0.012 mm"), ("reads", "lower"), ("depth", "12 mm"), ("clock", "3"));

        Assert.Equal(
            new BoreSetup { SettingMillimetres = 21.4122, SettingU95Millimetres = 0.002, ShownMillimetres = -0.012, LargerReadsLower = true, DepthMillimetres = 12, ClockHours = 3 },
            setup with { SettingMillimetres = Math.Round(setup.SettingMillimetres!.Value, 9) });
    }

    [Fact]
    public void Sheet_LeftEmpty_SaysThatThereIsNoSetting() =>
        Assert.Contains("no size and no verdict", Sheet.Tell(Read(("depth", " ")), LengthUnit.Inch), StringComparison.Ordinal);

    [Theory]
    [InlineData("setting", "21.4", "Give the length with its unit")]
    [InlineData("setting", "about an inch", "'about an inch' is no length")]
    [InlineData("clock", "noon", "'noon' is no number")]
    [InlineData("reads", "sideways", "is one of higher, lower")]
    [InlineData("ring", "21.4 mm", "Nothing is asked under 'ring'")]
    [InlineData("setting", "21.4 mm", "together, or neither")]
    public void Sheet_WithSomethingThatCannotBe_SaysWhatToType(string name, string text, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<RequestSentenceException>(() => Read((name, text))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(LengthUnit.Inch)]
    [InlineData(LengthUnit.Millimetre)]
    public void Sheet_ShownAndSentAgain_ChangesNothing(LengthUnit unit)
    {
        var setup = new BoreSetup { SettingMillimetres = 21.41237, SettingU95Millimetres = 0.0018, ShownMillimetres = 0.0015, DepthMillimetres = 12.7, ClockHours = 12 };

        var again = Read([.. Sheet.Fields(setup, unit).Select(field => (field.Name, field.Value))]);

        Assert.Equal(setup.SettingMillimetres!.Value, again.SettingMillimetres!.Value, 0.00002);
        Assert.Equal(setup.ShownMillimetres, again.ShownMillimetres, 0.00002);
        Assert.Equal((setup.ClockHours, setup.LargerReadsLower), (again.ClockHours, again.LargerReadsLower));
        Assert.Contains("across 12 o'clock", Sheet.Tell(again, unit), StringComparison.Ordinal);
    }

    private static BoreSetup Read(params (string Name, string Text)[] typed) =>
        (BoreSetup)Sheet.Read(new TypedSheet(typed.ToDictionary(pair => pair.Name, string? (pair) => pair.Text), Sheet));
}

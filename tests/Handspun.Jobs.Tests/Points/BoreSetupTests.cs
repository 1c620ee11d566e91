using System.Text.Json;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;

namespace Handspun.Jobs.Tests.Points;

public sealed class BoreSetupTests
{
    private static readonly BoreSetup Good = new() { SettingMillimetres = 21.4, SettingU95Millimetres = 0.002, DepthMillimetres = 12, ClockHours = 3 };

    [Fact]
    public void Setup_ThatCanBe_HasNoProblem()
    {
        Assert.Empty(Good.Problems());
        Assert.Empty(new BoreSetup().Problems());
    }

    [Theory]
    [InlineData(0.9, "0.9 mm is too small for what a bore gauge is set to, but 0.9 in would be 22.86 mm")]
    [InlineData(543.56, "21.4 mm would fit")]
    public void Setting_InTheOtherUnit_IsRefusedAndSaysWhichUnitWouldFit(double millimetres, string sentence) =>
        Assert.Contains(sentence, Assert.Single((Good with { SettingMillimetres = millimetres }).Problems()), StringComparison.Ordinal);

    [Fact]
    public void Setup_InWhichSomethingCannotBe_SaysWhat()
    {
        Assert.Contains("together", Assert.Single((Good with { SettingU95Millimetres = null }).Problems()), StringComparison.Ordinal);
        Assert.Contains("tenth of a millimetre", Assert.Single((Good with { SettingU95Millimetres = 0.2 }).Problems()), StringComparison.Ordinal);
        Assert.Contains("tenth of a millimetre", Assert.Single((Good with { SettingU95Millimetres = double.NaN }).Problems()), StringComparison.Ordinal);
        Assert.Contains("showed there", Assert.Single((Good with { ShownMillimetres = 21.4 }).Problems()), StringComparison.Ordinal);
        Assert.Contains("depth and the clock position", Assert.Single((Good with { ClockHours = null }).Problems()), StringComparison.Ordinal);
        Assert.Contains("mouth", Assert.Single((Good with { DepthMillimetres = -1 }).Problems()), StringComparison.Ordinal);
        Assert.Contains("1 to 12", Assert.Single((Good with { ClockHours = 13 }).Problems()), StringComparison.Ordinal);
    }

    [Fact]
    public void Setup_OfABody_SpeaksOfItsReference_AndComesBackFromJson()
    {
        PointSetup setup = new BodySetup { SettingMillimetres = 21.382, SettingU95Millimetres = 0.001, ShownMillimetres = 0.002 };

        Assert.Empty(setup.Problems());
        Assert.Contains("pin or block", Assert.Single(((BodySetup)setup with { SettingU95Millimetres = null }).Problems()), StringComparison.Ordinal);
        Assert.Equal(setup, JsonSerializer.Deserialize<PointSetup>(JsonSerializer.Serialize(setup, FiguresJson.Options), FiguresJson.Options));
    }

    [Fact]
    public void Setup_KeptAsJson_ComesBackAsItWas()
    {
        PointSetup setup = Good with { ShownMillimetres = -0.012, LargerReadsLower = true };

        Assert.Equal(setup, JsonSerializer.Deserialize<PointSetup>(JsonSerializer.Serialize(setup, FiguresJson.Options), FiguresJson.Options));
    }
}

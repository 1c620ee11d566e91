using Handspun.Metrology.Bore;

namespace Handspun.Metrology.Tests.Bore;

public class RolledBodyTests
{
    // Closed form: a round body of radius r under a round tip of radius t lifts it to √((r + t)² − x²) − t above its own middle, x beside
    // the tip; most at x = 0, the diameter above the table.
    [Theory]
    [InlineData(0.0134, 0.0001, 2e-5)]
    [InlineData(-0.0271, 0.001, 3e-4)]
    [InlineData(0.0038, 0.01, 2e-3)]
    public void Deviation_OfABodyRolledUnderARoundTip_IsTheLargestReading(double larger, double step, double tolerance)
    {
        var result = RockedBores.Measure(Rolled(larger, step), step, new BoreSettings { Outside = true });

        Assert.Equal(BoreStatus.Measured, result.Status);
        Assert.Equal(larger, result.Deviation!.Value.Millimetres, tolerance);
        Assert.True(Math.Abs(result.Deviation.Value.Millimetres - larger) <= result.DeviationU95!.Value.Millimetres);
        Assert.Equal((8, true), (result.Passes, result.Outside));
        Assert.Equal([BoreWarning.NoSetting], result.Warnings);
    }

    [Fact]
    public void Size_FromAPin_IsThePinAndTheDifference()
    {
        var result = RockedBores.Measure(Rolled(0.0215, 0.001), settings: new BoreSettings { Outside = true, Setting = RockedBores.Ring(21.39, shown: 0.002) });

        Assert.Equal(21.4095, result.Size!.Value.Millimetres, 3e-4);
        Assert.Equal(
            Math.Sqrt(Math.Pow(result.DeviationU95!.Value.Millimetres, 2) + 0.0012 * 0.0012), result.SizeU95!.Value.Millimetres, 1e-9);   // JCGM 100:2008, 5.1.2
        Assert.All(result.ByPass, pass => Assert.Equal(0.0215, pass.Millimetres, 1e-3));
        Assert.Empty(result.Warnings);
    }

    [Fact]
    public void Deviation_OfAGaugeThatReadsTheOtherWay_HasItsSignTurned()
    {
        var (seconds, millimetres) = Rolled(0.0215, 0.001);
        double[] turned = [.. millimetres.Select(value => -value)];

        var result = RockedBores.Measure((seconds, turned), settings: new BoreSettings { Outside = true, LargerReadsHigher = false, Setting = RockedBores.Ring(21.39, shown: -0.002) });

        Assert.Equal(0.0195, result.Deviation!.Value.Millimetres, 3e-4);
        Assert.All(result.ByPass, pass => Assert.Equal(-0.0215, pass.Millimetres, 1e-3));
    }

    [Fact]
    public void Body_ThatLies_IsToldToRoll()
    {
        double[] seconds = [.. Enumerable.Range(0, 100).Select(i => i / 40.0)];

        var result = RockedBores.Measure((seconds, new double[100]), settings: new BoreSettings { Outside = true });

        Assert.Equal(BoreStatus.TooShort, result.Status);
        Assert.Contains("roll the body slowly through", result.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void Body_RolledToOneSideOnly_HasNoTurningPoint()
    {
        double[] seconds = [.. Enumerable.Range(0, 120).Select(i => i / 40.0)];

        var result = RockedBores.Measure((seconds, [.. seconds.Select(time => 0.05 * time)]), settings: new BoreSettings { Outside = true });

        Assert.Contains("roll the body through until the gauge has passed its largest size", result.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void Setting_InAnotherUnit_IsRefused() => Assert.Contains(
        "what a gauge is set to",
        RockedBores.Measure(Rolled(0, 0.001), settings: new BoreSettings { Outside = true, Setting = RockedBores.Ring(0.842) }).Missing,
        StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void Warnings_OfABody_SpeakOfTheBody() => Assert.All(
        Enum.GetValues<BoreWarning>(),
        warning => Assert.DoesNotContain("bore", BoreWarningText.Sentence(warning, outside: true), StringComparison.OrdinalIgnoreCase));

    private static (double[] Seconds, double[] Millimetres) Rolled(double larger, double step)
    {
        const double body = 10.7, tip = 1.5, reach = 1.2;
        double[] seconds = [.. Enumerable.Range(0, 321).Select(i => i / 40.0)];
        return (seconds, [.. seconds.Select(time =>
        {
            var beside = reach * Math.Cos(Math.PI * time);
            var height = larger + Math.Sqrt((body + tip) * (body + tip) - beside * beside) - (body + tip);
            return Math.Round(height / step) * step;
        })]);
    }
}

using Handspun.Metrology.GaugeStudy;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Tests.GaugeStudy;

public class GaugeCheckTests
{
    private static readonly DateOnly Today = new(2026, 3, 1);
    private static readonly Measured<Length> Block = new(Mm(10), Mm(0.0002));

    // Student's factor for two degrees of freedom at 95.45 % is 4.526551 (GUM, JCGM 100:2008, table G.2).
    [Fact]
    public void GaugeCheck_OfThreeReadings_AddsScatterStepAndBlock()
    {
        var check = GaugeCheck.Work([10.003, 10.004, 10.002], Block, Mm(0.001), Mm(0.01), Today, Today);

        var scatter = 4.526551 / 2 * 0.001 / Math.Sqrt(3);
        var expected = 2 * Math.Sqrt(scatter * scatter + 0.001 * 0.001 / 12 + 0.0001 * 0.0001);
        Assert.Equal(0.003, check.Error.Value.Millimetres, 1e-12);
        Assert.Equal(0.001, check.Repeatability.Millimetres, 1e-12);
        Assert.Equal(expected, check.Error.U95.Millimetres, 1e-8);
        Assert.Equal(GaugeStanding.Good, check.Standing);
    }

    // The decision rule of ISO 14253-1: beyond or within only by more than the uncertainty.
    [Theory]
    [InlineData(0.002, 0, GaugeStanding.Good)]
    [InlineData(0.002, 1, GaugeStanding.Overdue)]
    [InlineData(0.0098, 0, GaugeStanding.Undecided)]
    [InlineData(-0.0098, 0, GaugeStanding.Undecided)]
    [InlineData(0.012, 0, GaugeStanding.Failed)]
    [InlineData(-0.012, 1, GaugeStanding.Failed)]
    public void GaugeCheck_OfAnError_StandsAsTheRuleSays(double error, int daysLate, GaugeStanding standing)
    {
        double[] readings = [10 + error, 10 + error, 10 + error];

        Assert.Equal(standing, GaugeCheck.Work(readings, Block, Mm(0.001), Mm(0.01), Today, Today.AddDays(daysLate)).Standing);
    }

    [Fact]
    public void GaugeCheck_OfWhatDoesNotServe_SaysWhatToDo()
    {
        Assert.Contains("set down anew", GaugeCheck.Fault([10.001, 10.002], Block), StringComparison.Ordinal);
        Assert.Contains("no number", GaugeCheck.Fault([10.001, double.NaN, 10], Block), StringComparison.Ordinal);
        Assert.Contains("certificate", GaugeCheck.Fault([10, 10, 10], new(Mm(10), Mm(-1))), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => GaugeCheck.Work([10, 10, 10], Block, Mm(0.001), Mm(0), Today, Today));
    }

    [Fact]
    public void GaugeStandingText_OfEachStanding_HasACodeAndASentence()
    {
        foreach (var standing in Enum.GetValues<GaugeStanding>())
        {
            Assert.Matches("^[a-z]+$", GaugeStandingText.Code(standing));
            Assert.Equal(standing, GaugeStandingText.Read(GaugeStandingText.Code(standing)));
            Assert.EndsWith(".", GaugeStandingText.Sentence(standing), StringComparison.Ordinal);
        }

        Assert.Throws<FormatException>(() => GaugeStandingText.Read("fine"));
    }

    private static Length Mm(double value) => Length.FromMillimetres(value);
}

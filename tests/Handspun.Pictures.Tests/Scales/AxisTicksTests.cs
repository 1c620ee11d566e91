using Handspun.Jobs.Lengths;
using Handspun.Pictures.Scales;

namespace Handspun.Pictures.Tests.Scales;

public sealed class AxisTicksTests
{
    [Fact]
    public void Ticks_OfThreeThousandths_AreWholeThousandths() => Assert.Equal(
        ["0.000", "0.001", "0.002", "0.003"],
        AxisTicks.ForLength(-0.0004, 0.0035, 5, LengthUnit.Inch).Marks.Select(mark => mark.Text));

    [Fact]
    public void Ticks_OfLessThanAThousandth_GainADecimal() => Assert.Equal(
        ["\u22120.0002", "0.0000", "0.0002", "0.0004"],
        AxisTicks.ForLength(-0.0002, 0.0005, 4, LengthUnit.Inch).Marks.Select(mark => mark.Text));

    [Theory]
    [InlineData(0, 1e-9)]
    [InlineData(-3, 7)]
    [InlineData(12.1, 12.3)]
    [InlineData(-0.00021, 0.00019)]
    [InlineData(0, 86400)]
    public void Ticks_OfAnyRange_AreFewRisingAndInside(double low, double high)
    {
        var ticks = AxisTicks.Round(low, high, wanted: 6);
        Assert.InRange(ticks.Marks.Count, 1, 7);
        Assert.All(ticks.Marks, mark => Assert.InRange(mark.Value, low - 1e-12, high + 1e-12));
        Assert.Equal(ticks.Marks.OrderBy(mark => mark.Value), ticks.Marks);
        Assert.Equal(ticks.Marks.Count, ticks.Marks.Select(mark => mark.Text).Distinct().Count());
    }

    [Fact]
    public void OneBeyond_WhenTheLastMarkLiesBelow_ReachesTheValue()
    {
        var ticks = AxisTicks.ForLength(0, 0.0021, 4, LengthUnit.Inch);
        Assert.Equal("0.003", ticks.WithOneBeyond(0.0021).Marks[^1].Text);
        Assert.Equal("0.002", ticks.WithOneBeyond(0.002).Marks[^1].Text);
    }
}

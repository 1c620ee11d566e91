using Handspun.Metrology.HandReading;
using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Tests.HandReading;

public class HandMeasurementTests
{
    private static readonly HandTool Micrometer = new(HandToolKind.ThicknessGauge, Mm(0.01), Length.Zero);

    // JCGM 100:2008, F.2.2.1: a reading to a step δ has the standard uncertainty 0.29 δ.
    [Fact]
    public void Once_ReadToADivision_HasItsRectangle()
    {
        var shoe = HandMeasurement.Once(Micrometer, Mm(3.25), new PlausibleLength(Mm(1), Mm(12)), "a tensioner shoe");

        Assert.Equal(3.25, shoe.Value!.Value.Millimetres);
        Assert.Equal(0.29, shoe.U95!.Value.Millimetres / 2 / 0.01, 0.002);
        Assert.Null(shoe.Missing);
    }

    [Fact]
    public void Once_WithAnErrorLimit_AddsItsRectangle()
    {
        var tool = Micrometer with { ErrorLimit = Mm(0.004) };

        Assert.Equal(2 * Math.Sqrt(0.01 * 0.01 / 12 + 0.004 * 0.004 / 3), HandMeasurement.Once(tool, Mm(3.25), null, "a shoe").U95!.Value.Millimetres, 1e-12);
    }

    [Fact]
    public void Gap_BetweenTwoLeaves_IsTheMiddle()
    {
        var gap = HandMeasurement.Gap(new(HandToolKind.FeelerGauge, Mm(0.05), Length.Zero), Mm(0.10), Mm(0.15), null, "a rotor tip's gap");

        Assert.Equal(0.125, gap.Value!.Value.Millimetres, 1e-12);
        Assert.Equal(2 * 0.05 / Math.Sqrt(12), gap.U95!.Value.Millimetres, 1e-12);
    }

    [Fact]
    public void Needle_HighAndLow_CountsTheDivisionTwice()
    {
        var dial = new HandTool(HandToolKind.Needle, Mm(0.01), Length.Zero);
        var moved = HandMeasurement.Needle(dial, Mm(0.34), Mm(0.29), Mm(2), "a runout");

        Assert.Equal(0.05, moved.Value!.Value.Millimetres, 1e-12);
        Assert.Equal(2 * 0.01 / Math.Sqrt(6), moved.U95!.Value.Millimetres, 1e-12);   // two rectangles make a triangle (JCGM 100:2008, 4.3.9)
    }

    [Theory]
    [InlineData(0.9, "22.86 mm")]   // inches where millimetres were expected: 0.9 × 25.4
    [InlineData(543.56, "21.4 mm")]   // millimetres where inches were expected: 21.4 × 25.4
    [InlineData(99, "cannot be")]
    [InlineData(0, "above zero")]
    public void Once_OfAnImplausibleLength_IsAskedForAgain(double millimetres, string words)
    {
        var odd = HandMeasurement.Once(Micrometer, Mm(millimetres), new PlausibleLength(Mm(15), Mm(30)), "a lifter body");

        Assert.Null(odd.Value);
        Assert.Contains(words, odd.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void Entries_ThatContradictThemselves_SayWhatToDo()
    {
        Assert.Contains("division", HandMeasurement.Once(Micrometer with { Division = Length.Zero }, Mm(3), null, "a shoe").Missing, StringComparison.Ordinal);
        Assert.Contains("thicker", HandMeasurement.Gap(Micrometer, Mm(0.2), Mm(0.15), null, "a gap").Missing, StringComparison.Ordinal);
        Assert.Contains("below the lowest", HandMeasurement.Needle(Micrometer, Mm(0.1), Mm(0.2), Mm(2), "a runout").Missing, StringComparison.Ordinal);
        Assert.NotNull(HandMeasurement.Needle(Micrometer, Mm(9.1), Mm(0.2), Mm(2), "a runout").Missing);
    }

    private static Length Mm(double value) => Length.FromMillimetres(value);
}

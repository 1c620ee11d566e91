using Handspun.Metrology.Quantities;
using Handspun.Pictures.Units;

namespace Handspun.Pictures.Tests.Units;

public sealed class LengthTextTests
{
    [Theory]
    [InlineData(0.0762, "0.0030 in")]     // 0.003 in is 0.0762 mm, by 25.4 mm to the inch
    [InlineData(25.4, "1.0000 in")]
    [InlineData(-0.0254, "\u22120.0010 in")]
    [InlineData(-0.0001, "0.0000 in")]
    public void Length_InInches_ShowsTenThousandths(double millimetres, string text) =>
        Assert.Equal(text, LengthText.Of(Length.FromMillimetres(millimetres), DisplayUnit.Inch));

    [Theory]
    [InlineData(0.0762, "0.076 mm")]
    [InlineData(-1.25, "\u22121.250 mm")]
    public void Length_InMillimetres_ShowsThousandths(double millimetres, string text) =>
        Assert.Equal(text, LengthText.Of(Length.FromMillimetres(millimetres), DisplayUnit.Millimetre));

    [Theory]
    [InlineData(DisplayUnit.Inch, "0.0001 in")]
    [InlineData(DisplayUnit.Millimetre, "0.001 mm")]
    public void Uncertainty_BelowTheLastDigit_IsNotShownAsZero(DisplayUnit unit, string text) =>
        Assert.Equal(text, LengthText.OfUncertainty(Length.FromMillimetres(0.0002), unit));
}

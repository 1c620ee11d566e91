using System.Globalization;
using CsCheck;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Tests.Lengths;

public class LengthTextTests
{
    // 1 in = 25.4 mm exactly, by the international yard and pound agreement of 1959.
    [Theory]
    [InlineData("0.005 in", 0.127)]
    [InlineData("0,127 mm", 0.127)]
    [InlineData(".005\"", 0.127)]
    [InlineData("1in", 25.4)]
    [InlineData("1 INCH", 25.4)]
    [InlineData("  2.5  mm ", 2.5)]
    [InlineData("0 mm", 0)]
    public void Length_WithItsUnit_IsRead(string text, double millimetres)
    {
        Assert.True(LengthText.TryParse(text, out var length));
        Assert.Equal(millimetres, length.Millimetres, 1e-12);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("0.005")]
    [InlineData("in")]
    [InlineData("five mm")]
    [InlineData("-0.1 mm")]
    [InlineData("+0.1 mm")]
    [InlineData("1e-3 in")]
    [InlineData("1,000.5 mm")]
    [InlineData("1 000 mm")]
    [InlineData("0.1 mm in")]
    [InlineData("0.1 cm")]
    [InlineData("0.1''")]
    [InlineData("1/8 in")]
    [InlineData(". mm")]
    [InlineData("٠.١ mm")]
    public void Length_WithoutANumberOrAUnit_IsNotRead(string? text)
    {
        Assert.False(LengthText.TryParse(text, out var length));
        Assert.Equal(Length.Zero, length);
    }

    [Theory]
    [InlineData(0.127, LengthUnit.Inch, "0.0050 in")]
    [InlineData(0.127, LengthUnit.Millimetre, "0.127 mm")]
    [InlineData(0, LengthUnit.Inch, "0.0000 in")]
    [InlineData(25.4, LengthUnit.Inch, "1.0000 in")]
    [InlineData(1234.5678, LengthUnit.Millimetre, "1234.568 mm")]
    public void Length_IsWritten_InTenThousandthsOfAnInchOrThousandthsOfAMillimetre(double millimetres, LengthUnit unit, string text) =>
        Assert.Equal(text, LengthText.Of(Length.FromMillimetres(millimetres), unit));

    [Theory]
    [InlineData(0.0050, LengthUnit.Millimetre, "0.005")]   // just on a step it stays
    [InlineData(0.0051, LengthUnit.Millimetre, "0.006")]
    [InlineData(0.0001, LengthUnit.Millimetre, "0.001")]
    [InlineData(0, LengthUnit.Millimetre, "0.000")]
    [InlineData(0.0127, LengthUnit.Inch, "0.0005")]
    [InlineData(0.0128, LengthUnit.Inch, "0.0006")]
    public void Uncertainty_IsRoundedUp(double millimetres, LengthUnit unit, string text) =>
        Assert.Equal(text, LengthText.UncertaintyNumber(Length.FromMillimetres(millimetres), unit));

    [Fact]
    public void Uncertainty_AsItIsWritten_IsNeverSmallerThanItIs_AndNeverAStepLarger() => Gen.Select(Gen.Double[0, 5], Gen.Enum<LengthUnit>())
        .Sample((millimetres, unit) =>
        {
            var (value, step) = (millimetres / InMillimetres(unit), StepOf(unit));
            var written = double.Parse(LengthText.UncertaintyNumber(Length.FromMillimetres(millimetres), unit), CultureInfo.InvariantCulture);

            Assert.InRange(written, value - 2e-6 * step, value + step + 2e-6 * step);   // a millionth of the last digit is forgiven
        });

    [Fact]
    public void Length_AsItIsWritten_IsReadAsTheSame() => Gen.Select(Gen.Double[0, 900], Gen.Enum<LengthUnit>())
        .Sample((millimetres, unit) =>
        {
            var half = 0.5 * StepOf(unit) * InMillimetres(unit);
            Assert.True(LengthText.TryParse(LengthText.Of(Length.FromMillimetres(millimetres), unit), out var read));
            Assert.Equal(millimetres, read.Millimetres, half * 1.000001);
        });

    [Fact]
    public void Value_WithItsUncertainty_NamesTheUnitOfBoth() => Assert.Equal(
        "0.0020 in ± 0.0003 in",
        LengthText.WithUncertainty(Length.FromInches(0.00204), Length.FromInches(0.00021), LengthUnit.Inch));

    [Fact]
    public void HowToWrite_ShowsLengthsThatCanBeRead() => Assert.All(
        LengthText.HowToWrite.Split('\'').Where((_, place) => place % 2 == 1),
        example => Assert.True(LengthText.TryParse(example, out _)));

    [Theory]
    [InlineData(-0.0254, LengthUnit.Inch, "\u22120.0010 in")]
    [InlineData(-0.0001, LengthUnit.Inch, "0.0000 in")]
    [InlineData(-1.25, LengthUnit.Millimetre, "\u22121.250 mm")]
    public void Of_ALengthBelowZero_HasATrueMinusSignAndNoMinusZero(double millimetres, LengthUnit unit, string text) =>
        Assert.Equal(text, LengthText.Of(Length.FromMillimetres(millimetres), unit));

    [Theory]
    [InlineData(LengthUnit.Inch, "0.0001 in")]
    [InlineData(LengthUnit.Millimetre, "0.001 mm")]
    public void Uncertainty_BelowTheLastDigit_IsNotShownAsZero(LengthUnit unit, string text) =>
        Assert.Equal(text, LengthText.Uncertainty(Length.FromMillimetres(0.0002), unit));

    private static double InMillimetres(LengthUnit unit) => unit is LengthUnit.Inch or LengthUnit.InchThousandths ? 25.4 : 1;

    private static double StepOf(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => 1e-4,
        LengthUnit.MillimetreHundredths => 1e-2,
        _ => 1e-3,
    };
}

using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Tests.Lengths;

public sealed class LengthUnitTests
{
    // 0.0031 in is 0.07874 mm: 1 in = 25.4 mm exactly, by the international yard and pound agreement of 1959.
    [Theory]
    [InlineData(LengthUnit.Inch, "0.0031 in ± 0.0003 in")]
    [InlineData(LengthUnit.InchThousandths, "0.003 in ± 0.001 in")]
    [InlineData(LengthUnit.Millimetre, "0.079 mm ± 0.006 mm")]
    [InlineData(LengthUnit.MillimetreHundredths, "0.08 mm ± 0.01 mm")]
    public void Length_IsShownToTheLastPlaceOfItsUnit_AndItsUncertaintyNeverSmallerThanItIs(LengthUnit unit, string shown) =>
        Assert.Equal(shown, LengthText.WithUncertainty(Length.FromInches(0.0031), Length.FromMillimetres(0.0055), unit));

    [Theory]
    [InlineData(0.005, LengthUnit.Inch, "0.0050 in")]
    [InlineData(0.005, LengthUnit.InchThousandths, "0.005 in")]
    [InlineData(0.0025, LengthUnit.InchThousandths, "0.0025 in")]   // 0.003 in would be another limit
    [InlineData(0.005, LengthUnit.MillimetreHundredths, "0.127 mm")]
    [InlineData(1, LengthUnit.MillimetreHundredths, "25.40 mm")]
    public void Limit_KeepsThePlacesWithoutWhichItWouldBeAnother(double inches, LengthUnit unit, string shown) =>
        Assert.Equal(shown, LengthText.Bound(Length.FromInches(inches), unit));

    [Theory]
    [InlineData("in", 4L, LengthUnit.Inch)]
    [InlineData("in", 3L, LengthUnit.InchThousandths)]
    [InlineData("mm", 3L, LengthUnit.Millimetre)]
    [InlineData("mm", 2L, LengthUnit.MillimetreHundredths)]
    [InlineData("mm", null, LengthUnit.Millimetre)]
    [InlineData("mm", 4L, null)]
    [InlineData("in", 2L, null)]
    [InlineData("cm", 3L, null)]
    [InlineData(null, 3L, null)]
    public void Unit_IsFoundByItsSymbolAndItsPlaces(string? symbol, long? places, LengthUnit? unit) => Assert.Equal(unit, LengthUnits.Find(symbol, places));

    [Fact]
    public void GaugeBlock_IsWrittenAsFinely_WhateverTheShopShows()
    {
        Assert.Equal(LengthText.Fine(Length.FromMillimetres(5), LengthUnit.Millimetre), LengthText.Fine(Length.FromMillimetres(5), LengthUnit.MillimetreHundredths));
        Assert.Equal(LengthText.Fine(Length.FromInches(0.2), LengthUnit.Inch), LengthText.Fine(Length.FromInches(0.2), LengthUnit.InchThousandths));
    }
}

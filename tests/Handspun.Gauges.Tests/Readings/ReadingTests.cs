using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Readings;

public class ReadingTests
{
    private static readonly TimeSpan At = TimeSpan.FromSeconds(1);

    // 1 in = 25.4 mm exactly, by the international yard and pound agreement of 1959.
    [Theory]
    [InlineData(1, 25.4)]
    [InlineData(-10, -254)]
    [InlineData(0, 0)]
    public void Reading_InInches_IsTheSameLengthInMillimetres(double inches, double millimetres)
    {
        Assert.Equal(millimetres, Reading.FromInches(inches, At).Millimetres);
        Assert.Equal(millimetres, Reading.From(inches, GaugeUnit.Inch, At).Millimetres);
        Assert.Equal(At, Reading.FromInches(inches, At).At);
    }

    [Fact]
    public void Reading_InMillimetres_IsKeptAsItIs() =>
        Assert.Equal(-0.308, Reading.From(-0.308, GaugeUnit.Millimetre, At).Millimetres);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Reading_ThatIsNotFinite_IsRefused(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Reading.FromMillimetres(value, At));
        Assert.Throws<ArgumentOutOfRangeException>(() => Reading.FromInches(value, At));
    }

    [Fact]
    public void Reading_ThatOverflowsInMillimetres_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Reading.FromInches(double.MaxValue, At));
}

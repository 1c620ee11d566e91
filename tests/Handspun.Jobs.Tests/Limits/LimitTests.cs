using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Tests.Limits;

public class LimitTests
{
    [Theory]
    [InlineData(null, 0.127, "at most 0.0050 in", "at most 0.127 mm")]
    [InlineData(0.254, null, "at least 0.0100 in", "at least 0.254 mm")]
    [InlineData(0.254, 0.508, "0.0100 in to 0.0200 in", "0.254 mm to 0.508 mm")]
    [InlineData(null, null, "no limit", "no limit")]
    public void Bounds_AreSaidInTheShopsUnit(double? lower, double? upper, string inches, string millimetres)
    {
        var limit = new Limit { LowerMillimetres = lower, UpperMillimetres = upper, Source = "invented" };

        Assert.Equal(inches, LimitSentence.Bounds(limit, LengthUnit.Inch));
        Assert.Equal(millimetres, LimitSentence.Bounds(limit, LengthUnit.Millimetre));
    }

    [Fact]
    public void Source_SaysWhoStandsByIt()
    {
        var limit = new Limit { UpperMillimetres = 1, Source = "invented manual, page 12" };

        Assert.Equal("invented manual, page 12; nobody has confirmed it yet", LimitSentence.Source(limit));
        Assert.Equal("invented manual, page 12; confirmed by A. Nobody", LimitSentence.Source(limit with { ConfirmedBy = "A. Nobody" }));
        Assert.Equal((false, true), (limit.Confirmed, (limit with { ConfirmedBy = "A. Nobody" }).Confirmed));
    }

    [Fact]
    public void Tolerance_HasTheBoundsOfTheLimit()
    {
        var limit = new Limit { LowerMillimetres = 1, UpperMillimetres = 2, Source = "invented" };

        Assert.Equal((Length.FromMillimetres(1), Length.FromMillimetres(2)), (limit.Tolerance.Lower, limit.Tolerance.Upper));
        Assert.Null((limit with { LowerMillimetres = null }).Tolerance.Lower);
        Assert.Null((limit with { UpperMillimetres = null }).Tolerance.Upper);
        Assert.Throws<InvalidOperationException>(() => (limit with { LowerMillimetres = null, UpperMillimetres = null }).Tolerance);
        Assert.Throws<ArgumentException>(() => (limit with { LowerMillimetres = 2 }).Tolerance);
    }
}

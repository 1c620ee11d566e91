using Handspun.Jobs.History;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Tests.History;

public sealed class KindSpreadTests
{
    [Fact]
    public void Spread_OfFewerThanFiveOthers_SaysNothing() => Assert.Null(KindSpread.Of(Length.FromMillimetres(0.05), [0.01, 0.02, 0.03, 0.04]));

    // Worked by hand from the definition: place 0.25 * 5 = 1.25, 2.5 and 3.75 between the six values, counted from 0.
    [Fact]
    public void Spread_OfSixOthers_HasMedianAndQuartilesBetweenNeighbours()
    {
        var spread = KindSpread.Of(Length.FromMillimetres(0.04), [0.10, 0.02, 0.04, 0.01, 0.06, 0.03])!;

        Assert.Equal(6, spread.Bikes);
        Assert.Equal(0.0225, spread.LowerQuartile.Millimetres, 1e-12);
        Assert.Equal(0.035, spread.Median.Millimetres, 1e-12);
        Assert.Equal(0.055, spread.UpperQuartile.Millimetres, 1e-12);
        Assert.Equal((3, 2), (spread.Below, spread.Above));
    }
}

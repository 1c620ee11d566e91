using Handspun.Jobs.Points;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Tests.Points;

public class MeasuringPointTests
{
    // Common practice, no source: a pinion shaft that runs out by 0.003 in is good, one that runs out by 0.013 in is not.
    [Theory]
    [InlineData(0.003, Verdict.Within)]
    [InlineData(0.013, Verdict.Over)]
    public void PinionRunout_ByItsShippedLimit_TellsAGoodShaftFromABadOne(double inches, Verdict verdict) => Assert.Equal(
        verdict,
        ConformityRule.Decide(Length.FromInches(inches), Length.FromInches(0.0005), MeasuringPoint.PinionRunout.ShippedLimit.Tolerance).Verdict);

    [Fact]
    public void ShippedLimits_AreConfirmedByNobody_AndSayWhereTheyComeFrom() => Assert.All(MeasuringPoint.All, point =>
    {
        Assert.False(point.ShippedLimit.Confirmed);
        Assert.Contains("no source", point.ShippedLimit.Source, StringComparison.Ordinal);
        Assert.Contains("service manual", point.ShippedLimit.Source, StringComparison.Ordinal);
    });

    [Fact]
    public void Codes_AreWordsForTopics_EachThereOnce()
    {
        Assert.All(MeasuringPoint.All, point => Assert.Matches("^[a-z]+(-[a-z0-9]+)*$", point.Code));
        Assert.Equal(MeasuringPoint.All.Count, MeasuringPoint.All.Select(point => point.Code).Distinct().Count());
    }
}

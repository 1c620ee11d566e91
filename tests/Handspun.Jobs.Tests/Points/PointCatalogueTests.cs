using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Points.Catalogue;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Tests.Points;

public class PointCatalogueTests
{
    // Common practice, no source: a pinion shaft that runs out by 0.003 in is good, one that runs out by 0.013 in is not.
    [Theory]
    [InlineData(0.003, Verdict.Within)]
    [InlineData(0.013, Verdict.Over)]
    public void PinionRunout_ByItsShippedLimit_TellsAGoodShaftFromABadOne(double inches, Verdict verdict) => Assert.Equal(
        verdict,
        ConformityRule.Decide(Length.FromInches(inches), Length.FromInches(0.0005), RunoutPoints.Pinion.ShippedLimit!.Tolerance).Verdict);

    [Fact]
    public void ShippedLimits_AreConfirmedByNobody_AndSayWhereTheyComeFrom() => Assert.All(PointCatalogue.All.Select(point => point.ShippedLimit).OfType<Limit>(), limit =>
    {
        Assert.False(limit.Confirmed);
        Assert.Contains("no source", limit.Source, StringComparison.Ordinal);
        Assert.Contains("service manual", limit.Source, StringComparison.Ordinal);
    });

    [Fact]
    public void Points_AreThereForEveryKindThatIsMeasured_AndSayHowInSentences()
    {
        Assert.Equal(Enum.GetValues<PointKind>(), PointCatalogue.All.Select(point => point.Kind).Distinct().Order());
        Assert.All(PointCatalogue.All.SelectMany(point => point.Cautions.Append(point.How)), sentence => Assert.EndsWith(".", sentence, StringComparison.Ordinal));
        Assert.All(PointCatalogue.All, point => Assert.Same(point, PointCatalogue.Find(point.Code)));
        Assert.Null(PointCatalogue.Find("fork-seal"));
    }

    [Fact]
    public void Codes_AreWordsForTopics_EachThereOnce()
    {
        Assert.All(PointCatalogue.All, point => Assert.Matches("^[a-z]+(-[a-z0-9]+)*$", point.Code));
        Assert.Equal(PointCatalogue.All.Count, PointCatalogue.All.Select(point => point.Code).Distinct().Count());
    }
}

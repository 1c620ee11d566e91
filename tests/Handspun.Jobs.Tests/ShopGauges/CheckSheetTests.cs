using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.GaugeStudy;

namespace Handspun.Jobs.Tests.ShopGauges;

public class CheckSheetTests
{
    // Mean 5.0008 against 4.9999; s = 0.000447; Student's factor for four degrees of freedom at 95.45 % is 2.869 (JCGM 100:2008, table G.2).
    [Fact]
    public void Check_OfFiveReadings_HasTheErrorAndItsUncertainty()
    {
        var check = KeptCheck.Of(SampleChecks.Sheet, new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero), SampleChecks.Today, everyDays: 365);

        var scatter = 2.869 / 2 * 0.000447214 / Math.Sqrt(5);
        Assert.Equal(0.0009, check.ErrorMillimetres, 1e-9);
        Assert.Equal(0.000447214, check.RepeatabilityMillimetres, 1e-8);
        Assert.Equal(2 * Math.Sqrt(scatter * scatter + 0.001 * 0.001 / 12 + 0.0001 * 0.0001), check.ErrorU95Millimetres, 1e-6);
        Assert.Equal((GaugeStanding.Good, new DateOnly(2027, 3, 14)), (check.Standing, check.DueOn));
        Assert.Equal(("good", "A. Nobody", "gauge block 5 mm, certificate 17"), (check.ToLastCheck().Found, check.ToLastCheck().By, check.ToLastCheck().Against));
        Assert.Equal(0.004, check.ToLastCheck().ErrorLimitMillimetres);
    }

    [Fact]
    public void Check_OfAGaugeThatWasZeroedOnAnotherSize_IsOfTheStepBetweenThem()
    {
        var sheet = SampleChecks.Sheet with { ZeroedOnMillimetres = 4, ReadingsMillimetres = [1.0, 1.0, 1.0] };

        Assert.Equal(0.0001, KeptCheck.Of(sheet, default, SampleChecks.Today, 30).ErrorMillimetres, 1e-9);
    }

    [Fact]
    public void Check_WithADayOfItsOwn_IsDueThen() =>
        Assert.Equal(new DateOnly(2026, 6, 1), KeptCheck.Of(SampleChecks.Sheet with { DueOn = new DateOnly(2026, 6, 1) }, default, SampleChecks.Today, 365).DueOn);

    [Fact]
    public void Check_ThatCannotBe_IsToldWithWhatToDo()
    {
        var good = SampleChecks.Sheet;
        Assert.Empty(good.Problems(SampleChecks.Today));
        (CheckSheet Sheet, string Words)[] cases =
        [
            (good with { By = " " }, "Say who checked the gauge"),
            (good with { Against = "" }, "Say what the gauge was held against"),
            (good with { SizeMillimetres = 0 }, "Give the size of the block or ring"),
            (good with { SizeMillimetres = double.NaN }, "Give the size of the block or ring"),
            (good with { DeviationMillimetres = -0.15 }, "take the deviation from its certificate"),
            (good with { SizeU95Millimetres = 0.2 }, "take its uncertainty from its certificate"),
            (good with { ZeroedOnMillimetres = -1 }, "Give the size on which the gauge was zeroed"),
            (good with { ReadingsMillimetres = [5, 5] }, "A check takes 3 readings or more"),
            (good with { ReadingsMillimetres = [5, double.NaN, 5] }, "A reading is no number"),
            (good with { ReadingsMillimetres = [0.1969, 0.1969, 0.1969] }, "look at their unit"),
            (good with { ErrorLimitMillimetres = 0 }, "type the error limit of its papers"),
            (good with { ResolutionMillimetres = -1 }, "smallest step"),
            (good with { DueOn = SampleChecks.Today.AddDays(-1) }, "has passed already"),
        ];

        Assert.All(cases, each =>
        {
            Assert.Contains(each.Sheet.Problems(SampleChecks.Today), problem => problem.Contains(each.Words, StringComparison.Ordinal));
            Assert.Throws<ArgumentException>(() => KeptCheck.Of(each.Sheet, default, SampleChecks.Today, 365));
        });
    }
}

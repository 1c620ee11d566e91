using Handspun.Jobs.Lengths;
using Handspun.Jobs.ShopGauges;
using Handspun.Jobs.Tests.Records;
using Handspun.Metrology.GaugeStudy;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Tests.ShopGauges;

public class GaugeDoubtTests
{
    private static readonly DateOnly Due = SampleChecks.Last().DueOn;

    [Theory]
    [InlineData("good", 0, "")]
    [InlineData("good", 1, "gauge-check-overdue")]
    [InlineData("failed", 0, "gauge-check-failed")]
    [InlineData("failed", 1, "gauge-check-failed gauge-check-overdue")]
    [InlineData("undecided", 0, "gauge-check-undecided")]
    public void Warnings_OfACheck_SayWhatItMeansOnThatDay(string found, int daysLate, string codes) =>
        Assert.Equal(codes, string.Join(' ', GaugeDoubt.Warnings(SampleChecks.Last(found), Due.AddDays(daysLate)).Select(warning => warning.Code)));

    [Fact]
    public void Warnings_OfAGaugeThatWasNeverChecked_SaySo() =>
        Assert.Equal([GaugeDoubt.NeverChecked], GaugeDoubt.Warnings(null, Due));

    [Fact]
    public void Warnings_OfAnOverdueCheck_NameTheDay() =>
        Assert.Contains("14 Mar 2027", Assert.Single(GaugeDoubt.Warnings(SampleChecks.Last(), Due.AddDays(40))).Sentence, StringComparison.Ordinal);

    // A passed check leaves what is stated; a worse one counts with what it found and its uncertainty, and papers that allow more with what they allow.
    [Theory]
    [InlineData(0.0009, 0, 0.004, 0.004)]
    [InlineData(0.0009, 0.003, 0.004, 0.004)]
    [InlineData(0.0009, 0.006, 0.004, 0.006)]
    [InlineData(0.0062, 0.004, 0.004, 0.007)]
    [InlineData(-0.0062, 0.004, 0.004, 0.007)]
    [InlineData(0.0009, 0, 0, 0.0017)]
    public void ErrorLimit_IsTheLargestOfStatedAllowedAndFound(double error, double papers, double stated, double limit) => Assert.Equal(
        limit,
        GaugeDoubt.ErrorLimit(SampleChecks.Last(error: error) with { ErrorLimitMillimetres = papers }, Length.FromMillimetres(stated)).Millimetres,
        1e-9);

    [Fact]
    public void ErrorLimit_WithoutACheck_IsThePapers() =>
        Assert.Equal(0.004, GaugeDoubt.ErrorLimit(null, Length.FromMillimetres(0.004)).Millimetres);

    [Fact]
    public void Standing_OnADay_IsACodeAndASentence()
    {
        Assert.Equal(["never-checked", "good", "overdue", "failed"], [GaugeWords.Code(null, Due), GaugeWords.Code(SampleChecks.Last(), Due), GaugeWords.Code(SampleChecks.Last(), Due.AddDays(1)), GaugeWords.Code(SampleChecks.Last("failed"), Due.AddDays(1))]);
        Assert.Equal(GaugeStandingText.Sentence(GaugeStanding.Overdue), GaugeWords.Sentence(SampleChecks.Last(), Due.AddDays(1)));
        Assert.Equal(GaugeDoubt.NeverChecked.Sentence, GaugeWords.Sentence(null, Due));
    }

    [Fact]
    public void Record_TellsTheLastCheckOfItsGauge_OrNothingWhereItDoesNotKnow()
    {
        var record = SampleRecords.Complete("c1");
        Assert.Equal("pinion", GaugeWords.OnRecord(record));
        Assert.Equal("pinion, checked 14 Mar 2026", GaugeWords.OnRecord(With(SampleChecks.Last())));
        Assert.Equal("pinion, never checked", GaugeWords.OnRecord(With(null, GaugeDoubt.NeverChecked)));

        Jobs.Records.CaptureRecord With(LastCheck? check, params Jobs.Records.RecordWarning[] warnings) => new()
        {
            Id = record.Id,
            At = record.At,
            Seconds = record.Seconds,
            Ending = record.Ending,
            Status = record.Status,
            Gauge = record.Gauge with { LastCheck = check },
            Figures = record.Figures,
            Warnings = warnings,
        };
    }

    [Theory]
    [InlineData(0.00123, 0.00081, LengthUnit.Millimetre, "+0.0012 mm ± 0.0009 mm")]
    [InlineData(-0.00254, 0.00254, LengthUnit.Inch, "\u22120.00010 in ± 0.00010 in")]
    [InlineData(0, 0, LengthUnit.Millimetre, "0.0000 mm ± 0.0000 mm")]
    public void Error_IsWrittenFinelyEnoughForABlock(double error, double u95, LengthUnit unit, string text) => Assert.Equal(text, GaugeWords.Error(error, u95, unit));
}

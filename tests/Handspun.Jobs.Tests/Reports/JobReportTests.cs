using Handspun.Jobs.Book;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Records;
using Handspun.Jobs.Reports;
using Handspun.Jobs.Tests.Book;
using Handspun.Jobs.Tests.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Tests.Reports;

public sealed class JobReportTests
{
    private static readonly ReportClock Clock = new(TimeZoneInfo.Utc, SampleRecords.Start.AddHours(2));
    private readonly Job _job = PlannedJob.New();

    private JobReport Report => JobReport.Of(_job, LengthUnit.Inch, Clock);

    // ISO 14253-1, 5.2 to 5.4 (from memory): conformity with a specification is proven, non-conformity is proven, or neither can be,
    // as the result with its expanded uncertainty lies inside the limit, outside it, or astride it.
    [Theory]
    [InlineData(0.0762, Verdict.Within, "Conformity proven", "Within the limit", "Pinion shaft runout is within its limit.")]
    [InlineData(0.3302, Verdict.Over, "Non-conformity proven", "Over the limit", "Pinion shaft runout is outside its limit.")]
    [InlineData(0.1275, Verdict.Undecided, "Neither conformity nor non-conformity proven", "Too close to call", "Pinion shaft runout is too close to its limit to call.")]
    public void Verdict_IsSaidInTheWordsOfTheStandard_AndInPlainOnes(double tir, Verdict verdict, string proven, string plain, string headline)
    {
        _job.Measure("r1", tir, verdict);

        var result = Assert.Single(Report.Results);
        Assert.Equal((proven, plain), (result.Verdict.Proven, result.Verdict.Plain));
        Assert.Contains("at most 0.0050 in", result.Verdict.Sentence, StringComparison.Ordinal);
        Assert.Equal(headline, Report.Customer.Headline);
        Assert.Contains(proven[1..], Report.Customer.Found[0].Text, StringComparison.Ordinal);
        Assert.Equal(VerdictCode.Of(verdict), Report.Customer.Code);
    }

    [Fact]
    public void Verdict_OnAnUnconfirmedLimit_IsProvisional_OnTheCustomersPageAndInTheEvidence()
    {
        _job.Measure("r1", 0.0762, Verdict.Within);

        Assert.Equal(ReportVerdict.NotConfirmed, Report.Results[0].Verdict.Provisional);
        Assert.Contains(Report.Results[0].Limit, line => line.Label == "Confirmed" && line.Text.Contains("NOT CONFIRMED", StringComparison.Ordinal));
        Assert.Contains("NOT CONFIRMED", Report.Customer.Found[0].Text, StringComparison.Ordinal);
        Assert.Contains(Report.Customer.Means, thought => thought.StartsWith("One limit is NOT CONFIRMED", StringComparison.Ordinal));
        Assert.Contains(Report.Customer.Advised, step => step.StartsWith("Look the limits up", StringComparison.Ordinal));

        _job.Points[0].Limit = _job.Points[0].Limit! with { Source = "invented manual, page 9", ConfirmedBy = "A. Nobody", ConfirmedAt = SampleRecords.Start };

        Assert.Null(Report.Results[0].Verdict.Provisional);
        Assert.Contains(Report.Results[0].Limit, line => line is { Label: "Confirmed", Text: "by A. Nobody, 14\u00a0Mar\u00a02026" });
        Assert.DoesNotContain("NOT CONFIRMED", string.Join(' ', [Report.Customer.Found[0].Text, .. Report.Customer.Means, .. Report.Customer.Advised]), StringComparison.Ordinal);
    }

    [Fact]
    public void Verdict_AfterTheLimitChanged_IsThatOfToday_AndTellsWhatItWas()
    {
        _job.Measure("r1", 0.1016, Verdict.Within);
        _job.Points[0].Limit = new() { UpperMillimetres = 0.0508, Source = "invented manual, page 9", ConfirmedBy = "A. Nobody" };

        Assert.Equal(Verdict.Over, Report.Results[0].Verdict.Verdict);
        Assert.Contains(Report.Results[0].Limit, line => line.Label == "When it was measured" && line.Text == "held against at most 0.0050 in: within the limit");
    }

    [Fact]
    public void GateThatStops_TellsTheCustomer_AndWhoDecidedWhy()
    {
        _job.Measure("r1", 0.3302, Verdict.Over);
        _job.Write(Subject.Step("pinion-runout"), new GateDecided(true, "Crank is rebuilt next winter.", "r1", Verdict.Over, "0.0130 in ± 0.0002 in: over the limit."));

        Assert.Contains(Report.Customer.Advised, step => step.StartsWith("We measured before buying parts, and this is outside the limit.", StringComparison.Ordinal));
        Assert.Contains("It was decided to go on (A. Nobody): Crank is rebuilt next winter.", Report.Customer.Advised);
        Assert.Equal(("Pinion shaft runout", "Go on", "A. Nobody, 14\u00a0Mar\u00a02026,\u00a009:27"), (Report.Decisions[0].Title, Report.Decisions[0].Choice, Report.Decisions[0].By));
    }

    [Fact]
    public void ResultWithoutALimit_GetsNoVerdict()
    {
        _job.Points[0].Limit = null;
        _job.Measure("r1", 0.0762, Verdict.Within);

        Assert.Equal(("none", "There is no limit to hold it against."), (Report.Results[0].Verdict.Code, Report.Results[0].Verdict.Line));
        Assert.Equal("There are measurements, but no limits to hold them against.", Report.Customer.Headline);
    }

    [Fact]
    public void JobThatHasOnlyBegun_SaysSo()
    {
        Assert.Equal("Nothing has been measured yet.", Report.Customer.Headline);
        Assert.Equal(("open", "Pinion shaft runout; Drive-side shaft runout"), (Report.Customer.Found[0].Code, Report.Customer.Found[0].Text));
        Assert.Equal(5, Report.Left.Count);
        Assert.Empty(Report.Results);
    }

    [Fact]
    public void Record_WithoutAResult_IsNoResult()
    {
        _job.Points[0].Records.Add(SampleRecords.Incomplete("r1"));

        Assert.Empty(Report.Results);
        Assert.Equal("Nothing has been measured yet.", Report.Customer.Headline);
    }

    [Fact]
    public void Work_TellsChecksFindingsPartsAndWhatIsLeft()
    {
        _job.Write(Subject.Step("ready"), new Ticked("strapped"));
        _job.Write(Subject.Finding(2), new FindingNoted(["scoring"], "", "feed side", "pump", null));
        _job.Write(Subject.Finding(2), new PhotoAdded("a.jpg", 4, 3, 5, "00", "The rotor"));
        _job.Write(Subject.Part("lifter-front-intake"), new PartDecided(PartChoice.Replace, "flat on the roller"));

        Assert.Equal(("Machine ready", "Done", "strapped"), (Report.Checks[0].Title, Report.Checks[0].State, Report.Checks[0].Words));
        Assert.Equal(("Oil pump", "feed side: Scoring", "The rotor"), (Report.Findings[0].Where, Report.Findings[0].Seen, Report.Findings[0].Photos[0].Caption));
        Assert.Equal(("Lifter, front intake", "not noted", "Replace"), (Report.Parts[0].Name, Report.Parts[0].Faced, Report.Parts[0].Choice));
        Assert.Contains("Replace: Lifter, front intake (flat on the roller).", Report.Customer.Advised);
        Assert.Contains("Fasteners. Held back until 'Drive-side shaft runout' is done.", Report.Left);
    }

    [Fact]
    public void CustomersPage_OfVeryManyResults_NamesThemTogether()
    {
        for (var i = 0; i < 40; i++)
        {
            var limit = new Limit { UpperMillimetres = 0.127, Source = "invented manual, page 9", ConfirmedBy = "A. Nobody" };
            _job.Points.Add(new() { Place = 2 + i, Code = $"more-{i}", Title = $"Shaft {i}", Limit = limit, Records = { SampleRecords.Measured($"m{i}", new RunoutFigures { TirMillimetres = 0.3 + i, TirU95Millimetres = 0.005 }, limit, Verdict.Over) } });
        }

        Assert.Equal("40 of 40 measurements are outside their limits.", Report.Customer.Headline);
        Assert.Equal(5, Report.Customer.Found.Count(line => line.Code == "over"));
        Assert.Equal("36 more", Report.Customer.Found[4].Title);
        Assert.Contains("and 24 more", Report.Customer.Found[4].Text, StringComparison.Ordinal);
        Assert.Equal(40, Report.Results.Count);
    }
}

using Handspun.Capture.Finishing;
using Handspun.Capture.Methods.Runout;
using Handspun.Capture.Tests.Bays;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Tests.Finishing;

public sealed class RecordMakingTests
{
    // Common practice, no source: about 0.003 in of pinion runout is a good shaft, 0.013 in is not.
    [Theory]
    [InlineData(0.003, Verdict.Within)]
    [InlineData(0.013, Verdict.Over)]
    public void Record_OfAGoodAndOfABadShaft_IsHeldAgainstTheShippedLimit(double inches, Verdict expected)
    {
        var limit = Jobs.Points.Catalogue.RunoutPoints.Pinion.ShippedLimit;

        var record = RecordMaking.RecordOf(Capture(Length.FromInches(inches), Length.FromInches(0.0003), limit));

        Assert.Equal(expected, record.Verdict);
        Assert.Contains(record.Warnings, warning => warning.Code == "limit-unconfirmed");
    }

    [Fact]
    public void Record_WithTheLimitInsideItsUncertainty_IsTooCloseToCall()
    {
        var record = RecordMaking.RecordOf(Capture(Length.FromInches(0.0049), Length.FromInches(0.0003), BayBench.Point.Limit));

        Assert.Equal(Verdict.Undecided, record.Verdict);
        Assert.InRange(record.ProbabilityOutside!.Value, 0.2, 0.3);   // half a standard deviation below the limit: 1 - 0.7475
        Assert.DoesNotContain(record.Warnings, warning => warning.Code == "limit-unconfirmed");
    }

    [Fact]
    public void Record_WithoutARunout_HasNoVerdictAndKeepsWhatIsMissing()
    {
        var capture = Capture(null, null, BayBench.Point.Limit);

        var record = RecordMaking.RecordOf(capture);

        Assert.Equal(RecordStatus.Incomplete, record.Status);
        Assert.Null(record.Verdict);
        Assert.Equal("Turn once more.", record.Missing);
    }

    [Fact]
    public void Record_WithoutALimit_HasAResultAndNoVerdict()
    {
        var record = RecordMaking.RecordOf(Capture(Length.FromMillimetres(0.05), Length.FromMillimetres(0.004), null));

        Assert.Equal(RecordStatus.Complete, record.Status);
        Assert.Null(record.Verdict);
    }

    [Fact]
    public void Record_OfACaptureWithAGapAndUnreadableLines_WarnsOfBoth()
    {
        var record = RecordMaking.RecordOf(Capture(Length.FromMillimetres(0.05), Length.FromMillimetres(0.004), null) with { GaugeGap = true, Unreadable = 3 });

        Assert.Equal(["gauge-gap", "unreadable-lines"], record.Warnings.Select(warning => warning.Code));
    }

    [Theory]
    [InlineData(12.5, 11, 0)]
    [InlineData(12.5, 11.3, 1)]
    [InlineData(0, 400, 0)]   // a profile that does not say how far the plunger goes
    public void Record_OfReadingsOverNearlyAllOfTheTravel_SaysSo(double travel, double reach, int warnings)
    {
        var capture = Capture(Length.FromMillimetres(0.05), Length.FromMillimetres(0.004), null);
        var record = RecordMaking.RecordOf(capture with
        {
            Gauge = capture.Gauge with { Profile = ProfileReader.Read("bench", FormattableString.Invariant($"[value]\ntravel_mm = {travel:0.0}\n")) },
            Readings = new RotationCapture { Seconds = new double[] { 0, 1, 2 }, Millimetres = new double[] { -3, reach - 3, 1 } },
        });

        Assert.Equal(warnings, record.Warnings.Count(warning => warning.Code == "travel-used-up"));
    }

    [Fact]
    public void Record_OfACheckedGauge_KeepsTheCheckAndIsNotDoubted()
    {
        var record = RecordMaking.RecordOf(Capture(Length.FromMillimetres(0.05), Length.FromMillimetres(0.004), null));

        Assert.Equal(BayBench.Checked("good"), record.Gauge.LastCheck);
        Assert.Empty(record.Warnings);
    }

    [Theory]
    [InlineData(null, 14, "gauge-never-checked")]
    [InlineData("failed", 14, "gauge-check-failed")]
    [InlineData("undecided", 14, "gauge-check-undecided")]
    [InlineData("good", 45, "gauge-check-overdue")]
    public void Record_OfAGaugeInDoubt_WarnsOfIt(string? found, int daysIntoMarch, string code)
    {
        var capture = Capture(Length.FromMillimetres(0.05), Length.FromMillimetres(0.004), null);

        var record = RecordMaking.RecordOf(capture with
        {
            At = new DateTimeOffset(2026, 3, 1, 9, 0, 0, TimeSpan.Zero).AddDays(daysIntoMarch),
            Task = capture.Task with { LastCheck = found is null ? null : BayBench.Checked(found) },
        });

        Assert.Equal(code, Assert.Single(record.Warnings).Code);
    }

    // The papers of the bench profile allow 3 µm. A check that found 1 µm ± 1 µm leaves that; one that found 9 µm ± 1 µm counts with 10 µm.
    [Fact]
    public void Traits_OfAGauge_AreItsPapersUnlessItsCheckIsWorse()
    {
        var profile = ProfileReader.Read("bench", "[value]\nerror_limit_mm = 0.003\n");

        Assert.Equal(0.003, RecordMaking.TraitsOf(profile).ErrorLimit.Millimetres);
        Assert.Equal(0.003, RecordMaking.TraitsOf(profile, BayBench.Checked("good")).ErrorLimit.Millimetres);
        Assert.Equal(0.010, RecordMaking.TraitsOf(profile, BayBench.Checked("failed", 0.009)).ErrorLimit.Millimetres, 1e-9);
    }

    private static FinishedCapture Capture(Length? tir, Length? uncertainty, Limit? limit) => new()
    {
        Id = "20260314-090000-abc123",
        Task = BayBench.Point with { Limit = limit },
        Gauge = new GaugeSetup(BayBench.Point.Gauge, ProfileReader.Read("bench", ""), new GaugePort.Serial("/dev/bench")),
        At = new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero),
        From = TimeSpan.Zero,
        To = TimeSpan.FromSeconds(8),
        Ending = CaptureEnding.Enough,
        Readings = new RotationCapture { Seconds = new double[] { 0 }, Millimetres = new double[] { 0 } },
        Finding = new RunoutFinding(new RunoutResult
        {
            Status = tir is null ? RunoutStatus.TooShort : RunoutStatus.Measured,
            Missing = tir is null ? "Turn once more." : null,
            Readings = 400,
            Turns = 3.1,
            Tir = tir,
            TirU95 = uncertainty,
        }),
    };
}

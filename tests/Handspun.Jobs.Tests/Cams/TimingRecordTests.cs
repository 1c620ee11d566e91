using System.Text.Json;
using Handspun.Jobs.Cams;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Jobs.Tests.Cams;

/// <summary>Two symmetric lobes whose every angle is arithmetic: durations 240 and 244, centrelines 108 after and 112 before the top, degrees of the crank.</summary>
public class TimingRecordTests
{
    private const double Top = 37;
    private static readonly FakeTimeProvider Time = new(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero));

    private static readonly CamCardSetup Card = new()
    {
        IntakeOpensDegrees = 12,
        IntakeClosesDegrees = 48,
        ExhaustOpensDegrees = 54,
        ExhaustClosesDegrees = 10,
        IntakeDurationDegrees = 240,
        SeparationCamDegrees = 110,
        OverlapDegrees = 22,
    };

    [Fact]
    public void Timing_OfTwoLobes_IsWhatTheirAnglesSay()
    {
        var record = TimingRecord.Of(Intake(), Exhaust(), null, Time);

        var figures = (TimingFigures)record.Figures;
        Assert.Equal(
            (110.0, 22.0, 12.0, 48.0, 54.0, 10.0, 108.0, 112.0),
            (R(figures.SeparationCamDegrees), R(figures.OverlapDegrees), R(figures.IntakeOpensDegrees), R(figures.IntakeClosesDegrees), R(figures.ExhaustOpensDegrees), R(figures.ExhaustClosesDegrees), R(figures.IntakeCentrelineDegrees), R(figures.ExhaustCentrelineDegrees)));
        Assert.Equal((RecordStatus.Complete, (Verdict?)null), (record.Status, record.Verdict));
        Assert.StartsWith("The lobes are 110.0° ± 0.5° of the cam apart.", RecordSentence.Of(record, LengthUnit.Inch), StringComparison.Ordinal);
    }

    [Fact]
    public void Timing_AsTheCardSays_IsWithin()
    {
        var record = TimingRecord.Of(Intake(), Exhaust(), Card, Time);

        Assert.Equal(Verdict.Within, record.Verdict);
        Assert.Equal(7, ((TimingFigures)record.Figures).Lines.Count);
        Assert.Contains("All 7 lines are as the card says.", RecordSentence.Of(record, LengthUnit.Inch), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(20, Verdict.Over)]
    [InlineData(13.5, Verdict.Undecided)]
    public void Timing_OffTheCard_SaysWhichLineAndByHowMuch(double opens, Verdict verdict)
    {
        var record = TimingRecord.Of(Intake(), Exhaust(), Card with { IntakeOpensDegrees = opens }, Time);

        Assert.Equal(verdict, record.Verdict);
        Assert.Contains($"Intake opens before top dead centre: card {opens:0.0}°, measured 12.0°", RecordSentence.Of(record, LengthUnit.Inch), StringComparison.Ordinal);
    }

    [Fact]
    public void Timing_WithoutTopDeadCentre_KnowsSeparationAndOverlapOnly()
    {
        var record = TimingRecord.Of(Intake(top: null), Exhaust(top: null), Card, Time);

        Assert.Null(((TimingFigures)record.Figures).IntakeOpensDegrees);
        Assert.Equal(["Intake duration", "Overlap", "Lobe separation"], ((TimingFigures)record.Figures).Lines.Select(line => line.What));
        Assert.Contains(record.Warnings, warning => warning.Code == "no-top-dead-centre");
    }

    [Fact]
    public void Timing_OfLobesThatMakeNoPair_SaysWhy()
    {
        var record = TimingRecord.Of(Intake(), Exhaust() with { Figures = Exhaust().Figures with { AngleReference = "mark" } }, Card, Time);

        Assert.Equal((RecordStatus.Incomplete, (Verdict?)null), (record.Status, record.Verdict));
        Assert.Contains("different references", RecordSentence.Of(record, LengthUnit.Inch), StringComparison.Ordinal);
    }

    [Fact]
    public void Card_AtAnotherCheckingLift_IsNotLaidBesideIt()
    {
        var record = TimingRecord.Of(Intake(), Exhaust(), Card with { CheckingLiftMillimetres = 1 }, Time);

        Assert.Equal((RecordStatus.Complete, (Verdict?)null), (record.Status, record.Verdict));
        Assert.Contains(record.Warnings, warning => warning.Code == "card-not-comparable");
    }

    [Theory]
    [InlineData(200.0, null, "Lobe separation of 200° cannot be")]
    [InlineData(null, 55.0, "Intake duration of 55° cannot be")]
    public void Card_WithCrankAndCamMixedUp_IsRefused(double? separation, double? duration, string sentence) => Assert.Contains(
        sentence,
        Assert.Single(new CamCardSetup { SeparationCamDegrees = separation, IntakeDurationDegrees = duration }.Problems()),
        StringComparison.Ordinal);

    [Fact]
    public void Figures_KeptAsJson_ComeBackAsTheyWere()
    {
        ResultFigures timing = TimingRecord.Of(Intake(), Exhaust(), Card, Time).Figures, lobe = Intake().Figures;

        var back = (TimingFigures)JsonSerializer.Deserialize<ResultFigures>(JsonSerializer.Serialize(timing, FiguresJson.Options), FiguresJson.Options)!;
        Assert.Equal(Card, back.Card);
        Assert.Equal(((TimingFigures)timing).Lines, back.Lines);
        Assert.Equal(lobe, JsonSerializer.Deserialize<ResultFigures>(JsonSerializer.Serialize(lobe, FiguresJson.Options), FiguresJson.Options));
    }

    // Mean of both stops by the short way round: 350 and 14 are 24 degrees apart over zero, and their middle is 2 (common practice, no source).
    [Fact]
    public void Top_ByBothStops_IsTheMiddleBetweenThem()
    {
        var setup = new LiftSetup { StopDegrees = 350, OtherStopDegrees = 14, AngleU95Degrees = 1 };

        Assert.Empty(setup.Problems());
        Assert.Equal(2, setup.Top!.Value.Value.Degrees, 1e-9);
        Assert.Equal(1 / Math.Sqrt(2), setup.Top.Value.U95.Degrees, 1e-9);
    }

    [Theory]
    [InlineData(350.0, null, null, "Give both stops")]
    [InlineData(10.0, 10.0, null, "Both stops are at the same angle")]
    [InlineData(0.0, 178.0, null, "which side is the top")]
    [InlineData(null, null, 400.0, "from 0 to 360")]
    public void Stops_ThatCannotBe_AreRefused(double? one, double? other, double? top, string sentence) => Assert.Contains(
        sentence,
        Assert.Single(new LiftSetup { StopDegrees = one, OtherStopDegrees = other, TopDegrees = top }.Problems()),
        StringComparison.Ordinal);

    [Theory]
    [InlineData(0.0)]
    [InlineData(17.0)]
    public void RockerRatio_ThatCannotBe_IsRefused(double ratio) =>
        Assert.Contains("mostly 1.5 to 1.8", Assert.Single(new LiftSetup { RockerRatio = ratio }.Problems()), StringComparison.Ordinal);

    [Theory]
    [InlineData(0.050, "1.27 mm")]
    [InlineData(0.030, "0.762 mm")]
    public void CheckingLift_TypedInInchesForMillimetres_IsRefused(double millimetres, string meant) =>
        Assert.Contains(meant, new LiftSetup { CheckingLiftMillimetres = millimetres }.Problems().FirstOrDefault() ?? "", StringComparison.Ordinal);

    private static double R(double? degrees) => Math.Round(degrees!.Value, 9);

    private static RecordedLobe Intake(double? top = Top) => Lobe("r-intake", Top + 108, 240, top);

    private static RecordedLobe Exhaust(double? top = Top) => Lobe("r-exhaust", Top - 112 + 720, 244, top);

    private static RecordedLobe Lobe(string record, double centre, double duration, double? top) => new(record, new LiftFigures
    {
        Readings = 900,
        CamTurns = 2.4,
        AngleOf = "crank",
        AngleReference = "index",
        CheckingLiftMillimetres = 1.27,
        LobeLiftMillimetres = 9,
        LobeLiftU95Millimetres = 0.004,
        CentrelineCrankDegrees = centre,
        CentrelineCrankU95Degrees = 0.6,
        OpeningCrankDegrees = centre - duration / 2,
        OpeningCrankU95Degrees = 0.6,
        ClosingCrankDegrees = centre + duration / 2,
        ClosingCrankU95Degrees = 0.6,
        DurationCrankDegrees = duration,
        DurationCrankU95Degrees = 0.6,
        TopCrankDegrees = top,
        TopCrankU95Degrees = top is null ? null : 0.4,
    });
}

using Handspun.Jobs.Bores;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Tests.Bores;

public sealed class BoreAnswerTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 14, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Bore_AtTwoDepthsAndTwoDirections_HasSizeTaperAndOutOfRound()
    {
        var answer = BoreAnswer.Of(Point(Record(1, 5, 12, 21.410), Record(2, 5, 3, 21.414), Record(3, 25, 12, 21.418), Record(4, 25, 3, 21.420)))!;

        Assert.True(answer.HasSize);
        Assert.Equal(21.4155, answer.Form.Size.Millimetres, 1e-9);
        Assert.Equal(0.007, answer.Form.Taper!.Value.Millimetres, 1e-9);   // 21.419 less 21.412
        Assert.Equal(0.004, answer.Form.OutOfRound!.Value.Millimetres, 1e-9);
        Assert.Equal(0.001 * Math.Sqrt(2), answer.Form.OutOfRoundU95!.Value.Millimetres, 1e-9);   // the ring's doubt falls out of a difference (JCGM 100:2008, 5.2)
        Assert.Equal(Math.Sqrt(0.0005 * 0.0005 + 0.002 * 0.002), answer.Form.SizeU95.Millimetres, 1e-9);
        Assert.Equal(Verdict.Within, answer.Verdict);
        Assert.Contains("widens downward", answer.Sentence, StringComparison.Ordinal);
        Assert.Equal(["Mean size", "Smallest", "Largest", "Taper, mouth to bottom", "Out of round"], answer.ToShow(LengthUnit.Millimetre).Select(figure => figure.Label));
    }

    [Fact]
    public void Bore_WithOnePlaceOverItsLimit_IsOver() =>
        Assert.Equal(Verdict.Over, BoreAnswer.Of(Point(Record(1, 5, 12, 21.41), Record(2, 25, 12, 21.43)))!.Verdict);

    [Fact]
    public void Bore_WithOnePlaceAtItsLimit_IsTooCloseToCall() =>
        Assert.Equal(Verdict.Undecided, BoreAnswer.Of(Point(Record(1, 5, 12, 21.41), Record(2, 25, 12, 21.4245)))!.Verdict);

    [Fact]
    public void Place_MeasuredTwice_CountsByItsNewestRecordOrByThePickedOne()
    {
        var point = Point(Record(1, 5, 12, 21.410), Record(2, 5, 6, 21.416));   // 6 o'clock is across 12

        Assert.Equal(21.416, Assert.Single(BoreAnswer.Of(point)!.Places).Place.Size.Millimetres);
        point.PickedRecordId = "r1";
        Assert.Equal(21.410, Assert.Single(BoreAnswer.Of(point)!.Places).Place.Size.Millimetres);
    }

    [Fact]
    public void Records_OfAnotherSettingOrWithoutAPlace_AreLeftOutAndSaidToBe()
    {
        var other = Record(1, 5, 12, 21.410);
        var answer = BoreAnswer.Of(Point(
            Made(1, (BoreFigures)other.Figures with { SettingMillimetres = 21.5 }),
            Made(2, (BoreFigures)other.Figures with { DepthMillimetres = null, ClockHours = null }),
            Record(3, 25, 12, 21.418)))!;

        Assert.Single(answer.Places);
        Assert.Equal(2, answer.LeftOut);
        Assert.Contains("2 records are left out", answer.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Bore_WithoutASetting_HasDeviationsAndNoVerdict()
    {
        var bare = new BoreFigures { DeviationMillimetres = 0.01, DeviationU95Millimetres = 0.001, OwnU95Millimetres = 0.001, SharedU95Millimetres = 0, DepthMillimetres = 5, ClockHours = 12 };

        var answer = BoreAnswer.Of(Point(Made(1, bare), Made(2, bare with { DeviationMillimetres = 0.016, ClockHours = 3 })))!;

        Assert.False(answer.HasSize);
        Assert.Contains("zero was not touched", answer.Sentence, StringComparison.Ordinal);
        Assert.Null(answer.Verdict);
        Assert.Equal(0.006, answer.Form.OutOfRound!.Value.Millimetres, 1e-9);
        Assert.Equal("Mean deviation", answer.ToShow(LengthUnit.Inch).First().Label);
    }

    [Fact]
    public void Bore_OfWhichNoRecordNamesItsPlace_HasNothingToSay() =>
        Assert.Null(BoreAnswer.Of(Point(Made(1, (BoreFigures)Record(1, 5, 12, 21.41).Figures with { DepthMillimetres = null, ClockHours = null }))));

    private static JobPoint Point(params CaptureRecord[] records) => new()
    {
        Code = "lifter-bore-front-intake",
        Title = "Lifter bore, front intake",
        Kind = PointKind.Bore,
        Limit = new Limit { LowerMillimetres = 21.4, UpperMillimetres = 21.425, Source = "test" },
        Records = [.. records],
    };

    private static CaptureRecord Record(int minute, double depth, double clock, double size) => Made(minute, new BoreFigures
    {
        Passes = 6,
        DeviationMillimetres = size - 21.4,
        DeviationU95Millimetres = 0.001,
        SizeMillimetres = size,
        SizeU95Millimetres = Math.Sqrt(0.001 * 0.001 + 0.002 * 0.002),
        OwnU95Millimetres = 0.001,
        SharedU95Millimetres = 0.002,
        SettingMillimetres = 21.4,
        SettingU95Millimetres = 0.002,
        DepthMillimetres = depth,
        ClockHours = clock,
    });

    private static CaptureRecord Made(int minute, BoreFigures figures) => new()
    {
        Id = $"r{minute}",
        At = Noon.AddMinutes(minute),
        Seconds = 6,
        Ending = CaptureEnding.Enough,
        Status = RecordStatus.Complete,
        Gauge = new RecordGauge { Name = "bore", Profile = "text-line", Port = "COM3" },
        Figures = figures,
    };
}

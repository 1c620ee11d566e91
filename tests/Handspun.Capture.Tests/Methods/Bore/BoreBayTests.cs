using System.Text.Json;
using Handspun.Capture.Bays;
using Handspun.Capture.Finishing;
using Handspun.Capture.Methods.Bore;
using Handspun.Capture.Progress;
using Handspun.Capture.Tests.Bays;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Handspun.Simulation.Rock;

namespace Handspun.Capture.Tests.Methods.Bore;

public sealed class BoreBayTests
{
    private const double Diameter = 21.4;
    private const double Larger = 0.012;   // than the ring

    private static BoreSetup Ring { get; } = new() { SettingMillimetres = Diameter, SettingU95Millimetres = 0.001, DepthMillimetres = 12, ClockHours = 3 };

    private static BayTask Point { get; } = BayBench.Point with
    {
        Point = "lifter-bore-front-intake",
        PointTitle = "Lifter bore, front intake",
        Kind = PointKind.Bore,
        Wanted = 6,
        Setup = Ring,
        Limit = new Limit { LowerMillimetres = 21.4, UpperMillimetres = 21.425, Source = "test", ConfirmedBy = "test" },
    };

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public async Task Gauge_RockedInTheBore_BecomesOneRecordWithSizeAndVerdict(int seed)
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);

        await RockAsync(bench, seed);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var record = RecordMaking.RecordOf(Assert.Single(bench.Seen.Finished));
        var figures = (BoreFigures)record.Figures;
        Assert.Equal((CaptureEnding.Enough, Verdict.Within), (record.Ending, record.Verdict!.Value));
        Assert.InRange(Diameter + Larger, figures.SizeMillimetres!.Value - figures.SizeU95Millimetres!.Value, figures.SizeMillimetres.Value + figures.SizeU95Millimetres.Value);
        Assert.Equal(figures.SizeU95Millimetres.Value, Math.Sqrt(Math.Pow(figures.OwnU95Millimetres!.Value, 2) + Math.Pow(figures.SharedU95Millimetres!.Value, 2)), 1e-9);   // JCGM 100:2008, 5.1.2
        Assert.Equal((12, 3), (figures.DepthMillimetres, figures.ClockHours));
        Assert.Equal(Diameter + figures.DeviationMillimetres!.Value, figures.SizeMillimetres.Value, 1e-9);
    }

    [Fact]
    public async Task Gauge_WithoutASetting_GivesTheDeviationAndNoVerdict()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point with { Setup = null });

        await RockAsync(bench, 1);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var record = RecordMaking.RecordOf(bench.Seen.Finished[0]);
        var figures = (BoreFigures)record.Figures;
        Assert.InRange(Larger, figures.DeviationMillimetres!.Value - figures.DeviationU95Millimetres!.Value, figures.DeviationMillimetres.Value + figures.DeviationU95Millimetres.Value);
        Assert.Equal((null, null, null, null), (figures.SizeMillimetres, record.Verdict, record.Limit, figures.AbsoluteSize));
        Assert.Contains("setting-unknown", record.Warnings.Select(warning => warning.Code));
        Assert.Contains("type the size of the ring", RecordSentence.Of(record, Handspun.Jobs.Lengths.LengthUnit.Millimetre), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Journal_OfACapture_ReplayedWithItsOwnTask_GivesTheSameAnswer()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);
        await RockAsync(bench, 3);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var capture = bench.Seen.Finished[0];
        var task = JournalledTask.Read(JournalledTask.TextOf(capture.Task))!;
        var again = Point.Method.Measure(ReplayedCapture.Of(bench.Replay(capture), capture.From), RecordMaking.TraitsOf(capture.Gauge.Profile), task.Wish);

        Assert.Equal(JsonSerializer.Serialize(capture.Finding.Figures, FiguresJson.Options), JsonSerializer.Serialize(again.Figures, FiguresJson.Options));
    }

    [Fact]
    public async Task Gauge_OnlyPutIntoTheBore_IsATouchAndSaysWhatToDo()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);

        await bench.MoveAsync(t => 1.8 - 1.75 * Math.Min(1, t / 0.6), 0.6, standAfter: 5);
        await BayBench.UntilAsync(() => bench.Seen.Dropped.Count == 1);

        Assert.Empty(bench.Seen.Finished);
        Assert.Contains("falls, turns and rises", bench.Bay.View().Progress!.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Place_ChangedBetweenTwoCaptures_IsThatOfTheSecond()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);
        await RockAsync(bench, 1);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        bench.Bay.Renew(Point with { Setup = Ring with { DepthMillimetres = 25 } });
        await RockAsync(bench, 2);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 2);

        Assert.Equal([12, 25], bench.Seen.Finished.Select(capture => ((BoreFigures)capture.Finding.Figures).DepthMillimetres));
    }

    [Fact]
    public async Task Place_ChangedWhileARockIsUnderWay_DoesNotChangeWhatWasRocked()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);
        var hand = RockingHand.Create(4, new RockHabits { Cycles = 4 });
        await bench.MoveAsync(t => RockSimulation.Shown(Diameter, hand, t) + Larger, hand.Seconds / 2);
        await BayBench.UntilAsync(() => bench.Bay.View().Progress is { Phase: CapturePhase.Running, Value: not null });

        bench.Bay.Renew(Point with { Setup = Ring with { DepthMillimetres = 25 } });
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        Assert.Equal((CaptureEnding.ByHand, 12), (bench.Seen.Finished[0].Ending, ((BoreFigures)bench.Seen.Finished[0].Finding.Figures).DepthMillimetres));
        Assert.Equal(25, ((BoreSetup)bench.Bay.View().Task!.Setup!).DepthMillimetres);
    }

    [Fact]
    public async Task Hand_WhileItRocks_IsToldHowFarItIs()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);
        await RockAsync(bench, 5);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var told = bench.Seen.Progress.Where(progress => progress.Phase == CapturePhase.Running).ToList();
        Assert.Contains(told, progress => progress.Sentence.StartsWith("Rock the gauge slowly", StringComparison.Ordinal));
        Assert.Contains(told, progress => progress.Sentence.Contains("4 of 6 passes", StringComparison.Ordinal));
        Assert.Contains(told, progress => progress.Live is BoreLive { Passes: >= 3, SpreadMillimetres: not null, SizeMillimetres: not null });
    }

    private static Task RockAsync(BayBench bench, int seed)
    {
        var hand = RockingHand.Create(seed, new RockHabits { Cycles = 4 });
        return bench.MoveAsync(t => RockSimulation.Shown(Diameter, hand, t) + Larger, hand.Seconds, standBefore: 2.5, standAfter: 1);
    }
}

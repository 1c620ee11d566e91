using System.Text.Json;
using Handspun.Capture.Bays;
using Handspun.Capture.Finishing;
using Handspun.Capture.Tests.Bays;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Handspun.Simulation.Rock;

namespace Handspun.Capture.Tests.Methods.Outside;

public sealed class BodyBayTests
{
    private const double Pin = 21.382;
    private const double Larger = 0.008;   // than the pin

    private static BayTask Point { get; } = BayBench.Point with
    {
        Point = "lifter-body-front-intake",
        PointTitle = "Lifter body, front intake",
        Kind = PointKind.OutsideSize,
        Wanted = 6,
        Setup = new BodySetup { SettingMillimetres = Pin, SettingU95Millimetres = 0.001 },
        Limit = new Limit { LowerMillimetres = 21.38, UpperMillimetres = 21.4, Source = "test", ConfirmedBy = "test" },
    };

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public async Task Body_RolledThrough_BecomesOneRecordWithSizeAndVerdict(int seed)
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);

        await RollAsync(bench, seed);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var record = RecordMaking.RecordOf(Assert.Single(bench.Seen.Finished));
        var figures = (BoreFigures)record.Figures;
        Assert.Equal((CaptureEnding.Enough, Verdict.Within, PointKind.OutsideSize), (record.Ending, record.Verdict!.Value, figures.Kind));
        Assert.InRange(Pin + Larger, figures.SizeMillimetres!.Value - figures.SizeU95Millimetres!.Value, figures.SizeMillimetres.Value + figures.SizeU95Millimetres.Value);
        Assert.Equal(figures.SizeMillimetres.Value, figures.AbsoluteSize!.Value.Size.Millimetres, 1e-12);
        Assert.Equal("Size across", figures.ValueTitle);
    }

    [Fact]
    public async Task Body_WithoutAReference_GivesTheDeviationAndNoVerdict()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point with { Setup = null });

        await RollAsync(bench, 1);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var record = RecordMaking.RecordOf(bench.Seen.Finished[0]);
        Assert.Equal((null, null), (record.Verdict, record.Figures.AbsoluteSize));
        Assert.Contains("type the size of the reference", RecordSentence.Of(record, LengthUnit.Millimetre), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Journal_OfACapture_ReplayedWithItsOwnTask_GivesTheSameAnswer()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);
        await RollAsync(bench, 3);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var capture = bench.Seen.Finished[0];
        var task = JournalledTask.Read(JournalledTask.TextOf(capture.Task))!;
        var again = Point.Method.Measure(ReplayedCapture.Of(bench.Replay(capture), capture.From), RecordMaking.TraitsOf(capture.Gauge.Profile), task.Wish);

        Assert.Equal(Point.Setup, task.Setup);
        Assert.Equal(JsonSerializer.Serialize(capture.Finding.Figures, FiguresJson.Options), JsonSerializer.Serialize(again.Figures, FiguresJson.Options));
    }

    private static Task RollAsync(BayBench bench, int seed)
    {
        var hand = RockingHand.Create(seed, new RockHabits { Cycles = 4 });
        return bench.MoveAsync(t => Larger - RockSimulation.Shown(Pin + Larger, hand, t), hand.Seconds, standAfter: 5);
    }
}

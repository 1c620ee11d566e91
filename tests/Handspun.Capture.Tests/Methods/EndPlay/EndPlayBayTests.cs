using Handspun.Capture.Bays;
using Handspun.Capture.Finishing;
using Handspun.Capture.Methods.EndPlay;
using Handspun.Capture.Progress;
using Handspun.Capture.Tests.Bays;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Simulation.PushPull;

namespace Handspun.Capture.Tests.Methods.EndPlay;

public sealed class EndPlayBayTests
{
    private const double TrueMillimetres = 0.12;

    private static BayTask Point { get; } = BayBench.Point with { Point = "cam-end-play", PointTitle = "Cam end play", Kind = PointKind.EndPlay, Limit = null };

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public async Task Shaft_PushedAndPulledThreeTimes_BecomesOneRecordWithoutATouch(int seed)
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);

        var hand = PushPullHand.Create(TrueMillimetres, seed, new PushPullHabits { Cycles = 4 });
        await bench.MoveAsync(hand.PlaceAt, hand.Seconds, standAfter: 1);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var capture = Assert.Single(bench.Seen.Finished);
        Assert.Equal(CaptureEnding.Enough, capture.Ending);
        var result = ((EndPlayFinding)capture.Finding).Result;
        Assert.True(result.Cycles >= 3);
        Assert.InRange(TrueMillimetres, (result.EndPlay - result.EndPlayU95)!.Value.Millimetres, (result.EndPlay + result.EndPlayU95)!.Value.Millimetres);
        Assert.Empty(bench.Seen.Dropped);   // the hand went on for a fourth cycle, which is no capture of its own
    }

    [Fact]
    public async Task Journal_OfACapture_ReplayedByTheMethod_GivesTheSameAnswer()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);
        var hand = PushPullHand.Create(TrueMillimetres, 3, new PushPullHabits { Cycles = 3 });
        await bench.MoveAsync(hand.PlaceAt, hand.Seconds, standAfter: 1);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var capture = bench.Seen.Finished[0];
        var again = Point.Method.Measure(ReplayedCapture.Of(bench.Replay(capture), capture.From), RecordMaking.TraitsOf(capture.Gauge.Profile), Point.Wish);

        Assert.Equal(Comparable(capture.Finding.Figures), Comparable(again.Figures));
    }

    [Fact]
    public async Task Hand_WhileItPushesAndPulls_IsToldWhatToDoNext()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);
        var hand = PushPullHand.Create(TrueMillimetres, 4, new PushPullHabits { Cycles = 4 });
        await bench.MoveAsync(hand.PlaceAt, hand.Seconds, standAfter: 1);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var told = bench.Seen.Progress.Where(progress => progress.Phase == CapturePhase.Running).ToList();
        Assert.Contains(told, progress => progress.Sentence.StartsWith("Hold it there.", StringComparison.Ordinal));
        Assert.Contains(told, progress => progress.Sentence.StartsWith("Now the other way", StringComparison.Ordinal));
        Assert.Contains(told, progress => progress.Sentence.EndsWith("2 of 3 cycles.", StringComparison.Ordinal));
        Assert.Contains(told, progress => progress is { Count: 2, Value: not null });
        Assert.Contains(told, progress => progress.Live is EndPlayLive { HeldAt: "high", HeldSeconds: > 0.4 });
        Assert.Contains(bench.Seen.Progress, progress => progress.Sentence == "Enough. Let the shaft go.");
    }

    [Fact]
    public async Task Shaft_PushedOnce_IsATouchAndSaysWhatToDo()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);

        await bench.MoveAsync(t => 0.12 * Math.Min(1, t / 0.3), 0.3, standAfter: 6);
        await BayBench.UntilAsync(() => bench.Seen.Dropped.Count == 1);

        Assert.Empty(bench.Seen.Finished);
        Assert.Contains("pull it to the other stop", bench.Bay.View().Progress!.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Shaft_PushedToOneStopAgainAndAgainButNeverToTheOther_GivesNoEndPlayAndSaysWhatIsMissing()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);

        // At the high stop; now and then drawn away from it, somewhere else each time, and let go at once.
        double[] away = [0.1, 0.06, 0.085, 0.045];
        var place = (double t) => t >= 8 || t % 2 < 1.8 ? 0.12 : 0.12 - away[(int)(t / 2)] * (t % 2 - 1.8) / 0.2;
        await bench.MoveAsync(place, 8, standBefore: 2, standAfter: 6);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count + bench.Seen.Dropped.Count == 1);

        Assert.All(bench.Seen.Finished, capture => Assert.Null(capture.Finding.Figures.Value));
        var said = bench.Seen.Finished.Select(capture => capture.Finding.Missing).Append(bench.Bay.View().Progress!.Sentence).First();
        Assert.Contains("hold", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Mark_WherePushedAndPulled_IsRefusedInASentence()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(Point);
        bench.Bay.StartNow();

        Assert.Contains("nothing turns here", Assert.Throws<BayRefusalException>(bench.Bay.MarkNow).Message, StringComparison.Ordinal);
    }

    private static string Comparable(ResultFigures figures) => System.Text.Json.JsonSerializer.Serialize(figures, FiguresJson.Options);
}

using Handspun.Capture.Bays;
using Handspun.Capture.Finishing;
using Handspun.Capture.Methods.Runout;
using Handspun.Capture.Progress;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Records;
using Handspun.Metrology.Runout;
using Handspun.Simulation;

namespace Handspun.Capture.Tests.Bays;

public sealed class BayTests
{
    private static readonly ShaftShape Shaft = ShaftShape.WithTir(0.08, seed: 4, harmonics: 3);

    [Fact]
    public async Task Shaft_TurnedOnce_BecomesOneRecordWithoutATouch()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);

        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 1, turns: 3.8, turnsPerSecond: 0.6), standAfter: 1);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var capture = Assert.Single(bench.Seen.Finished);
        Assert.Equal(CaptureEnding.Enough, capture.Ending);
        Assert.Equal(RunoutStatus.Measured, Runout(capture).Status);
        Assert.InRange(Runout(capture).Turns, 3, 3.8);
        Assert.InRange(0.08, (Runout(capture).Tir - Runout(capture).TirU95)!.Value.Millimetres, (Runout(capture).Tir + Runout(capture).TirU95)!.Value.Millimetres);
        Assert.Equal(CapturePhase.Waiting, bench.Bay.View().Progress!.Phase);
    }

    [Fact]
    public async Task Shaft_StandingStill_StartsNothing()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);

        for (var i = 0; i < 300; i++)
        {
            await bench.SendAsync(i % 7 == 0 ? "+0.001" : "+0.000");   // a last digit that flickers
        }

        Assert.All(bench.Seen.Progress, progress => Assert.Equal(CapturePhase.Waiting, progress.Phase));
        Assert.Empty(bench.Seen.Finished);
    }

    [Fact]
    public async Task Bay_WithAGaugeThatWasNeverChecked_SaysSoBeforeAnythingTurns()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();

        bench.Bay.Assign(BayBench.Point with { LastCheck = null });
        Assert.Equal("gauge-never-checked", Assert.Single(bench.Bay.View().Progress!.Warnings).Code);

        bench.Bay.Renew(BayBench.Point);   // it was checked in the meantime
        Assert.Empty(bench.Bay.View().Progress!.Warnings);
    }

    [Fact]
    public async Task Shaft_TurnedTwice_BecomesTwoRecords()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);

        for (var spin = 1; spin <= 2; spin++)
        {
            await bench.TurnAsync(Shaft, HandTurn.Create(seed: spin, turns: 3.6, turnsPerSecond: 0.7), standAfter: 1.5);
            await BayBench.UntilAsync(() => bench.Seen.Finished.Count == spin);
        }

        Assert.Equal(2, bench.Seen.Finished.Select(capture => capture.Id).Distinct().Count());
        Assert.All(bench.Seen.Finished, capture => Assert.Equal(RunoutStatus.Measured, Runout(capture).Status));
    }

    [Fact]
    public async Task Gauge_TakenToAnotherPointWhileItMoves_RestsBeforeItCapturesThere()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);
        var other = BayBench.Point with { Point = "drive-side-runout", PointTitle = "Drive side shaft runout" };
        bool CapturesThere() => bench.Seen.Progress.Any(progress => progress.Task.Point == other.Point && progress.Phase == CapturePhase.Running);

        var taken = false;
        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 1, turns: 5, turnsPerSecond: 0.6), standAfter: 1.5, at: t =>
        {
            if (!taken && t > 4)
            {
                taken = true;
                bench.Bay.Assign(other);
            }
        });
        Assert.False(CapturesThere(), "what moved at the point before started a capture at the next one");

        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 2, turns: 3.6, turnsPerSecond: 0.6), standAfter: 1);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Any(capture => capture.Task.Point == other.Point));
        Assert.True(CapturesThere());
    }

    [Fact]
    public async Task Gauge_GivenItsOwnPointAgainWhileItMoves_CapturesAtOnce()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);

        var again = false;
        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 1, turns: 8, turnsPerSecond: 0.6), standAfter: 8, at: t =>
        {
            if (!again && bench.Seen.Finished.Count == 1)
            {
                again = true;
                bench.Bay.Assign(BayBench.Point);
            }
        });

        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 2);
        Assert.True(again);
    }

    [Fact]
    public async Task Shaft_TurnedLessThanOnce_GivesNoRunoutAndSaysWhatIsMissing()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);

        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 5, turns: 0.6, turnsPerSecond: 0.4), standAfter: 4);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count + bench.Seen.Dropped.Count == 1);

        var capture = Assert.Single(bench.Seen.Finished);
        Assert.Equal(CaptureEnding.StoodStill, capture.Ending);
        Assert.Equal(RunoutStatus.TooShort, Runout(capture).Status);
        Assert.Null(Runout(capture).Tir);
        Assert.False(string.IsNullOrWhiteSpace(Runout(capture).Missing));
    }

    [Fact]
    public async Task Progress_WhileTurning_CountsTurnsUpToWhatIsWanted()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);

        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 2, turns: 3.8, turnsPerSecond: 0.5), standAfter: 1);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var turning = bench.Seen.Progress.Where(progress => progress.Phase == CapturePhase.Running).ToList();
        Assert.True(turning.Count > 5, $"only {turning.Count} reports");
        Assert.All(turning, progress => Assert.Equal(3, progress.Task.Wanted));
        Assert.Contains(turning, progress => progress.Count is > 1 and < 2.9 && progress.Value is not null);
        Assert.True(turning[^1].Count > 2.5);
        Assert.Contains(turning, progress => progress.Sentence.StartsWith("Keep turning", StringComparison.Ordinal));
        Assert.Contains(bench.Seen.Progress, progress => progress.Phase == CapturePhase.Ended);
    }

    [Fact]
    public async Task Mark_SaidWhileTurning_IsWhereTheAnglesCountFrom()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);
        var hand = HandTurn.Create(seed: 8, turns: 3.8, turnsPerSecond: 0.5);
        var marked = 1;

        // The mark is at 0.4 of a turn from where the shaft stood; it is called out from the second time that it passes.
        await bench.TurnAsync(Shaft, hand, standAfter: 1, at: t =>
        {
            if (hand.TurnsAt(t) >= marked + 0.4 && bench.Bay.View().Progress?.Phase == CapturePhase.Running)
            {
                marked++;
                bench.Bay.MarkNow();
            }
        });
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var result = Runout(bench.Seen.Finished[0]);
        Assert.Equal(AngleReference.Mark, result.Reference);
        Assert.Equal(2, bench.Seen.Finished[0].Readings.MarkSeconds.Length);
        var expected = Shaft.HighSpotDegrees - 0.4 * 360;
        var off = Math.IEEERemainder(result.HighSpot!.Value.Degrees - expected, 360);
        Assert.InRange(off, -result.HighSpotU95Degrees!.Value - 5, result.HighSpotU95Degrees.Value + 5);
        Assert.Contains(bench.Seen.Progress, progress => progress.Sentence.EndsWith("The mark is noted 2 times.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Index_ThatPassesOnceATurn_IsWhereTheAnglesCountFrom_LiveAndOutOfTheJournal()
    {
        await using var bench = new BayBench(BayBench.UsualProfile + "[index]\nsource = \"key\"\n");
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);
        var hand = HandTurn.Create(seed: 8, turns: 3.8, turnsPerSecond: 0.5);
        var passed = 0;

        // The index is at 0.2 of a turn from where the shaft stood, so it passes before the capture is known to have started.
        await bench.TurnAsync(Shaft, hand, standAfter: 1, at: t =>
        {
            if (hand.TurnsAt(t) >= passed + 0.2)
            {
                passed++;
                bench.Gauges.All.Single().Pulse(IndexSource.Key);
            }
        });
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        var capture = bench.Seen.Finished[0];
        var result = Runout(capture);
        Assert.Equal(AngleReference.Index, result.Reference);
        Assert.InRange(capture.Readings.IndexSeconds.Length, 3, 4);
        var off = Math.IEEERemainder(result.HighSpot!.Value.Degrees - (Shaft.HighSpotDegrees - 0.2 * 360), 360);
        Assert.InRange(off, -result.HighSpotU95Degrees!.Value - 5, result.HighSpotU95Degrees.Value + 5);
        var replayed = ReplayedCapture.Of(bench.Replay(capture), capture.From);
        Assert.Equal(capture.Readings.Millimetres.ToArray(), replayed.Millimetres.ToArray());
        Assert.All(capture.Readings.Seconds.ToArray().Zip(replayed.Seconds.ToArray()), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
        Assert.Equal(capture.Readings.IndexSeconds.ToArray(), replayed.IndexSeconds.ToArray());
    }

    [Fact]
    public async Task Mark_SaidAfterTheLastReading_StillCounts()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);
        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 2, turns: 2.2, turnsPerSecond: 0.5));
        await bench.PassAsync(TimeSpan.FromSeconds(0.5));   // what came so far is worked out

        bench.Bay.MarkNow();
        bench.Bay.FinishNow();
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        Assert.Equal(AngleReference.Mark, Runout(bench.Seen.Finished[0]).Reference);
    }

    [Fact]
    public async Task View_InTheMiddleOfACapture_HoldsItsTrace()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);
        BaySnapshot? middle = null;

        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 2, turns: 3.8, turnsPerSecond: 0.5), at: t =>
        {
            if (middle is null && t > 3)
            {
                middle = bench.Bay.View();
            }
        });

        Assert.Equal(CapturePhase.Running, middle!.Progress!.Phase);
        Assert.True(middle.TraceSeconds.Count > 150);
        Assert.Equal(middle.TraceSeconds.Count, middle.TraceMillimetres.Count);
        Assert.InRange(middle.TraceMillimetres.Max() - middle.TraceMillimetres.Min(), 0.05, 0.09);
    }

    [Fact]
    public async Task Gauge_UnpluggedInMidCapture_GoesOnAndMarksTheGap()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);
        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 2, turns: 1.4, turnsPerSecond: 0.5));

        await bench.UnplugAsync();
        await bench.PassAsync(TimeSpan.FromSeconds(1));
        await bench.ConnectAsync();
        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 3, turns: 3.4, turnsPerSecond: 0.6), standBefore: 0, standAfter: 4);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        Assert.True(bench.Seen.Finished[0].GaugeGap);
    }

    [Fact]
    public async Task Gauge_GoneForTooLong_EndsTheCaptureWithWhatItHas()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);
        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 2, turns: 2.2, turnsPerSecond: 0.5));

        await bench.UnplugAsync();
        await BayBench.UntilAsync(() =>
        {
            bench.PassAsync(TimeSpan.FromMilliseconds(100)).GetAwaiter().GetResult();
            return bench.Seen.Finished.Count == 1;
        });

        Assert.Equal(CaptureEnding.GaugeLost, bench.Seen.Finished[0].Ending);
        Assert.NotEqual(0, bench.Seen.Finished[0].Readings.Seconds.Length);
    }

    [Fact]
    public async Task Station_StoppedInMidCapture_HandsOnWhatItHas()
    {
        var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);
        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 2, turns: 2.2, turnsPerSecond: 0.5));

        await bench.StopAsync();

        Assert.Equal(CaptureEnding.StationStopped, Assert.Single(bench.Seen.Finished).Ending);
        await bench.DisposeAsync();
    }

    [Fact]
    public async Task Lines_ThatAreNoReadings_AreCountedInTheCapture()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);
        var hand = HandTurn.Create(seed: 6, turns: 3.6, turnsPerSecond: 0.6);

        await bench.TurnAsync(Shaft, hand);
        await bench.SendAsync("err 07");
        await bench.SendAsync("+0,012");
        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 7, turns: 0.6, turnsPerSecond: 0.5), standBefore: 0, standAfter: 4);
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        Assert.InRange(bench.Gauge.Unreadable, 2, 2);
    }

    [Fact]
    public async Task StartNow_OnAShaftThatShowsNothing_RunsUntilTheMechanicEndsIt()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);

        bench.Bay.StartNow();
        for (var i = 0; i < 250; i++)
        {
            await bench.SendAsync("+0.000");
        }

        Assert.Empty(bench.Seen.Finished);
        bench.Bay.FinishNow();
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);
        Assert.Equal(CaptureEnding.ByHand, bench.Seen.Finished[0].Ending);
        Assert.NotEqual(RunoutStatus.Measured, Runout(bench.Seen.Finished[0]).Status);
    }

    [Fact]
    public async Task Bay_AskedForWhatCannotBe_SaysWhatToDo()
    {
        await using var bench = new BayBench();

        Assert.Contains("choose a job", Assert.Throws<BayRefusalException>(() => bench.Bay.StartNow()).Message, StringComparison.Ordinal);
        Assert.Contains("choose a job", Assert.Throws<BayRefusalException>(() => bench.Bay.FinishNow()).Message, StringComparison.Ordinal);
        bench.Bay.Assign(BayBench.Point);
        Assert.Contains("turn the shaft", Assert.Throws<BayRefusalException>(() => bench.Bay.FinishNow()).Message, StringComparison.Ordinal);
        var other = BayBench.Point with { Gauge = GaugeName.Parse("other") };
        Assert.Contains("'pinion'", Assert.Throws<BayRefusalException>(() => bench.Bay.Assign(other)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task StandDown_AfterAssign_LeavesTheBayIdle()
    {
        await using var bench = new BayBench();
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);

        bench.Bay.StandDown();
        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 1, turns: 3.4, turnsPerSecond: 0.8));

        Assert.Null(bench.Bay.View().Task);
        Assert.Empty(bench.Seen.Finished);
        Assert.Equal(GaugeCondition.Reading, bench.Gauge.Condition);
    }

    [Fact]
    public async Task Gauges_EachWithAPoint_WorkSideBySide_AndTheLastGivenIsInFront()
    {
        await using var bench = new BayBench(BayBench.UsualProfile, "drive");
        await bench.ConnectAsync();
        var (pinion, drive) = (GaugeName.Parse("pinion"), GaugeName.Parse("drive"));
        bench.Bay.Assign(BayBench.Point);
        bench.Bay.Assign(BayBench.Point with { Point = "drive-side-runout", Gauge = drive });
        bench.Bay.StartNow();   // what is in front

        await bench.TurnAsync(Shaft, HandTurn.Create(seed: 1, turns: 3.8, turnsPerSecond: 0.6), standAfter: 1, at: t =>
        {
            if (t is > 2 and < 2.02)
            {
                bench.Bay.MarkNow();
            }
        });
        await BayBench.UntilAsync(() => bench.Seen.Finished.Count == 1);

        Assert.Equal(["pinion-runout", "drive-side-runout"], bench.Bay.Tasks.Select(task => task.Point));
        Assert.Equal("drive-side-runout", bench.Bay.View().Task!.Point);
        Assert.Equal(CapturePhase.Waiting, bench.Bay.View(pinion).Progress!.Phase);
        Assert.Equal(CapturePhase.Running, bench.Bay.View(drive).Progress!.Phase);
        Assert.Equal("pinion-runout", bench.Seen.Finished[0].Task.Point);
        Assert.Single(bench.Seen.Finished[0].Readings.MarkSeconds.ToArray());   // one word marks both

        bench.Bay.StandDown(pinion);
        Assert.Equal(drive, Assert.Single(bench.Bay.Tasks).Gauge);
    }

    [Fact]
    public async Task Point_GivenToAnotherGauge_IsLetGoByTheFirst()
    {
        await using var bench = new BayBench(BayBench.UsualProfile, "drive");
        await bench.ConnectAsync();
        bench.Bay.Assign(BayBench.Point);
        bench.Bay.Assign(BayBench.Point with { Gauge = GaugeName.Parse("drive") });

        Assert.Equal("drive", Assert.Single(bench.Bay.Tasks).Gauge.ToString());
        Assert.Equal(BaySnapshot.Idle, bench.Bay.View(GaugeName.Parse("pinion")));
        await BayBench.UntilAsync(() => bench.Seen.Progress.Any(progress => progress.Phase == CapturePhase.StoodDown));
    }

    private static RunoutResult Runout(FinishedCapture capture) => Assert.IsType<RunoutFinding>(capture.Finding).Result;
}

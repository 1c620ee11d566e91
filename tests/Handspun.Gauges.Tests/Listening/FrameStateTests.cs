using Handspun.Gauges.Journal;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Listening;

/// <summary>What a gauge says beside its values, live and on replay.</summary>
public class FrameStateTests
{
    private const string Words = "[flags]\nbattery_low = \"LOW\"\noverrange = \"OVER\"\nindex = \"IDX\"\n[index]\nsource = \"token\"\ndebounce_ms = 20\n";

    [Fact]
    public async Task Unit_SwitchedInTheMiddle_LeavesReadingsRight_AndIsJournalled()
    {
        await using var bench = ListeningBench.Make();
        bench.Start();
        var link = await bench.PlugAsync();
        await bench.SendAsync(link, "25.4 mm\n", 1);
        await bench.SendAsync(link, "1 in\n", 2);
        await bench.SendAsync(link, "25.4 mm\n", 3);

        Assert.Contains("switched to millimetres", bench.State.Sentence, StringComparison.Ordinal);
        await bench.StopAsync();
        var replay = JournalReplay.Read(Assert.Single(bench.Journal.Segments()));
        Assert.Equal([25.4, 25.4, 25.4], replay.Readings.Select(reading => reading.Millimetres));
        Assert.Equal(2, replay.UnitSwitches);
        Assert.Equal(["in", "mm"], bench.Entries().OfType<JournalEntry.Event>().Where(entry => entry.Name == "unit").Select(entry => entry.Detail));
    }

    [Fact]
    public async Task Overrange_IsAState_AndNoReading()
    {
        await using var bench = ListeningBench.Make(Words);
        bench.Start();
        var link = await bench.PlugAsync();
        await bench.SendAsync(link, "1.5 LOW\n", 1);
        Assert.Equal(GaugeFlags.BatteryLow, bench.State.Flags);
        Assert.Contains("battery is low", bench.State.Sentence, StringComparison.Ordinal);

        await link.SendAsync("9.9 OVER\nOVER\n");
        await ListeningBench.WaitAsync(() => bench.State.Condition == GaugeCondition.Silent);
        Assert.Contains("beyond its range", bench.State.Sentence, StringComparison.Ordinal);
        Assert.Equal((1, 0), (bench.State.Readings, bench.State.Unreadable));

        await bench.SendAsync(link, "1.6\n", 2);
        Assert.Equal(GaugeFlags.None, bench.State.Flags);
    }

    [Fact]
    public async Task Token_OfTheIndex_IsAPulse_LiveAndOnReplay()
    {
        await using var bench = ListeningBench.Make(Words);
        using var subscriber = bench.Feed.Subscribe("test", 1000);
        bench.Start();
        var link = await bench.PlugAsync();
        foreach (var pause in new[] { 0, 10, 50 })   // the second one comes within the bouncing
        {
            bench.Time.Advance(TimeSpan.FromMilliseconds(pause));
            await bench.SendAsync(link, "1.5 IDX\n", bench.State.Readings + 1);
        }

        await ListeningBench.WaitAsync(() => bench.State.Pulses == 2);
        await bench.StopAsync();
        subscriber.Dispose();
        var live = (await subscriber.Events.ReadAllAsync().ToListAsync()).OfType<GaugeEvent.Pulsed>().Select(pulse => pulse.At).ToList();
        Assert.Equal(2, live.Count);
        Assert.Equal(live, JournalReplay.Read(Assert.Single(bench.Journal.Segments())).Pulses);
    }

    [Fact]
    public async Task Silence_EndsAFrame_WithoutWaitingForTheNext_AndAlikeOnReplay()
    {
        await using var bench = ListeningBench.Make("[frame]\ncut = \"silence\"\ngap_ms = 30\n");
        using var subscriber = bench.Feed.Subscribe("test", 1000);
        bench.Start();
        var link = await bench.PlugAsync();
        await link.SendAsync("1.");
        await ListeningBench.WaitAsync(() => Chunks(bench) == 1);
        bench.Time.Advance(TimeSpan.FromMilliseconds(29));
        await link.SendAsync("25");
        await ListeningBench.WaitAsync(() => Chunks(bench) == 2);
        await bench.AdvanceUntilAsync(() => bench.State.Readings == 1);
        await link.SendAsync("2.5");
        await ListeningBench.WaitAsync(() => Chunks(bench) == 3);
        await bench.AdvanceUntilAsync(() => bench.State.Readings == 2);
        bench.Listener.Note(JournalEntry.Mark);   // as the end of a capture: shows that so much time went by
        await bench.StopAsync();
        subscriber.Dispose();

        var live = (await subscriber.Events.ReadAllAsync().ToListAsync()).OfType<GaugeEvent.Heard>().SelectMany(heard => heard.Readings).ToList();
        Assert.Equal([1.25, 2.5], live.Select(reading => reading.Millimetres));
        Assert.Equal(bench.Entries().OfType<JournalEntry.Chunk>().Skip(1).Select(chunk => chunk.At), live.Select(reading => reading.At));
        Assert.Equal(live, JournalReplay.Read(Assert.Single(bench.Journal.Segments())).Readings);
    }

    private static int Chunks(ListeningBench bench) => bench.Entries().OfType<JournalEntry.Chunk>().Count();
}

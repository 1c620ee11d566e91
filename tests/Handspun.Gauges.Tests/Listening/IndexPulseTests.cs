using Handspun.Gauges.Journal;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Tests.Listening;

public class IndexPulseTests
{
    [Fact]
    public async Task Line_ThatBounces_GivesOnePulseATurn_LiveAndOnReplay()
    {
        await using var bench = ListeningBench.Make("[index]\nsource = \"line\"\nline = \"dcd\"\ndebounce_ms = 40\nturns = 2.5\n");
        using var subscriber = bench.Feed.Subscribe("test", 1000);
        bench.Start();
        var link = await bench.PlugAsync();
        for (var turn = 0; turn < 3; turn++)
        {
            await bench.SendAsync(link, "+0.1\n", turn + 1);
            foreach (var since in new[] { 0, 7, 8, 24 })   // the last bounce is 39 ms after the first
            {
                bench.Time.Advance(TimeSpan.FromMilliseconds(since));
                link.Pulse!("dcd");
            }

            bench.Time.Advance(TimeSpan.FromMilliseconds(500));
        }

        Assert.Equal(3, bench.State.Pulses);
        await bench.StopAsync();
        subscriber.Dispose();
        var live = (await subscriber.Events.ReadAllAsync().ToListAsync()).OfType<GaugeEvent.Pulsed>().Select(pulse => pulse.At).ToList();
        var replay = JournalReplay.Read(Assert.Single(bench.Journal.Segments()));
        Assert.Equal(3, live.Count);
        Assert.Equal(live, replay.Pulses);
        Assert.Equal(2.5, replay.TurnsPerPulse);
        Assert.Equal(12, bench.Entries().OfType<JournalEntry.Event>().Count(entry => entry is { Name: "index", Detail: "dcd" }));
        Assert.Null(link.Pulse);
    }

    [Theory]
    [InlineData("key", IndexSource.Key)]
    [InlineData("mqtt", IndexSource.Mqtt)]
    public async Task Pulse_FromElsewhere_IsTakenWhereTheProfileSaysSo(string name, IndexSource source)
    {
        await using var bench = ListeningBench.Make($"[index]\nsource = \"{name}\"\n");
        bench.Start();
        await bench.PlugAsync();
        bench.Listener.Pulse(source);

        Assert.Equal(1, bench.State.Pulses);
        Assert.Contains(bench.Entries(), entry => entry is JournalEntry.Event { Name: "index", Detail: var detail } && detail == name);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[index]\nsource = \"mqtt\"\n")]
    public async Task Pulse_FromWhereNoneIsLookedFor_IsRefused_AndNotJournalled(string index)
    {
        await using var bench = ListeningBench.Make(index);
        bench.Start();
        await bench.PlugAsync();

        Assert.Contains("source = \"key\"", Assert.Throws<GaugeRefusalException>(() => bench.Listener.Pulse(IndexSource.Key)).Message, StringComparison.Ordinal);
        Assert.DoesNotContain(bench.Entries(), entry => entry is JournalEntry.Event { Name: "index" });
    }

    [Fact]
    public async Task Line_IsNotWatched_WhereTheIndexLiesInTheBytes()
    {
        await using var bench = ListeningBench.Make("[flags]\nindex = \"IDX\"\n[index]\nsource = \"token\"\n");
        bench.Start();

        Assert.Null((await bench.PlugAsync()).Pulse);
    }
}

using Handspun.Gauges.Journal;
using Handspun.Gauges.Listening;

namespace Handspun.Gauges.Tests.Listening;

public class GaugeSpeechTests
{
    private const string EveryTenth = "[request]\nsend = \"R\\r\"\nevery_ms = 100\nstart = \"ON\\r\"\nstop = [0x1B]\n";

    [Fact]
    public async Task Gauge_ThatHasToBeAsked_IsStarted_AskedAtItsPace_AndStopped()
    {
        await using var bench = ListeningBench.Make(EveryTenth);
        bench.Start();
        var link = await bench.PlugAsync();
        var opened = bench.Clock.Now;
        await bench.AdvanceUntilAsync(() => link.Sent.Count >= 12);
        await bench.StopAsync();

        Assert.Equal(["ON\r", .. Enumerable.Repeat("R\r", link.Sent.Count - 2), "\u001b"], link.Sent);
        Assert.True(bench.Clock.Now - opened >= TimeSpan.FromSeconds(0.7), "it was asked more often than its profile says");
        Assert.True(link.Disposed);
    }

    [Fact]
    public async Task Gauge_ThatIsAskedByHand_IsAskedThenAndNotBefore()
    {
        await using var bench = ListeningBench.Make("[request]\nsend = \"?\"\n");
        bench.Start();
        var link = await bench.PlugAsync();
        bench.Time.Advance(TimeSpan.FromSeconds(10));
        Assert.Empty(link.Sent);
        await bench.Listener.AskAsync(CancellationToken.None);
        await bench.Listener.AskAsync(CancellationToken.None);

        Assert.Equal(["?", "?"], link.Sent);
    }

    [Fact]
    public async Task Gauge_ThatCannotBeAsked_SaysWhy()
    {
        await using var mute = ListeningBench.Make();
        Assert.Contains("names nothing to send", await RefusalAsync(mute), StringComparison.Ordinal);

        await using var absent = ListeningBench.Make("[request]\nsend = \"?\"\n");
        Assert.Contains("could not be asked: Looking for the gauge", await RefusalAsync(absent), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Link_ThatTakesNothing_IsLost_AndOpenedAnew()
    {
        await using var bench = ListeningBench.Make(EveryTenth);
        bench.Start();
        var link = await bench.PlugAsync();
        link.SendingFails = new IOException("The cable is out.");
        await bench.AdvanceUntilAsync(() => bench.State.Condition == GaugeCondition.Lost);
        Assert.True(link.Disposed);
        var again = await bench.PlugAsync();
        await bench.SendAsync(again, "+0.1\n", 1);

        Assert.Equal(["link-open", "link-lost", "link-open"], bench.Entries().OfType<JournalEntry.Event>().Select(entry => entry.Name));
    }

    private static async Task<string> RefusalAsync(ListeningBench bench) =>
        (await Assert.ThrowsAsync<GaugeRefusalException>(() => bench.Listener.AskAsync(CancellationToken.None))).Message;
}

using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Journal;
using Handspun.Gauges.Tests.Links;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Gauges.Tests.Listening;

/// <summary>A cable that goes in and out, on real pseudo-terminals.</summary>
[Collection(Alone.Name)]
public sealed class HotPlugTests : IDisposable
{
    private const int Rounds = 200;
    private const int RoundsToWarmUp = 20;

    // One handle, thread or ten kilobytes lost a round would be 180 of them.
    private const int SpareHandles = 8;
    private const int SpareThreads = 16;
    private const long SpareBytes = 1_000_000;

    private readonly TestFolder _folder = new();
    private readonly FakeTimeProvider _time = new();
    private readonly GaugeFeed _feed = new();

    private string Port => _folder.File("port");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Gauge_PluggedInAndOutTwoHundredTimes_IsHeardEachTime_AndNothingLeaks()
    {
        var clock = new GaugeClock(_time);
        var setup = new GaugeSetup(GaugeName.Parse("pinion"), ProfileReader.Read("bench", Journals.Header.ProfileText), new GaugePort.Serial(Port));
        using var journal = new RollingJournal(_folder.File("journal"), Journals.Header with { Zero = clock.StartedAt });
        var listener = new GaugeListener(setup, new LinkOpener(_time), journal, clock, _feed, _time, NullLogger.Instance);
        using var stopping = new CancellationTokenSource();
        var listening = listener.RunAsync(stopping.Token);
        for (var round = 0; round < RoundsToWarmUp; round++)
        {
            await PlugInAndOutAsync(listener);
        }

        var before = Holdings.Now();
        for (var round = RoundsToWarmUp; round < Rounds; round++)
        {
            await PlugInAndOutAsync(listener);
        }

        var after = Holdings.Now();
        await stopping.CancelAsync();
        await listening.WaitAsync(Until.Cap);
        Assert.True(after.Handles <= before.Handles + SpareHandles, $"handles: {before.Handles} before, {after.Handles} after");
        Assert.True(after.Threads <= before.Threads + SpareThreads, $"threads: {before.Threads} before, {after.Threads} after");
        Assert.True(after.Bytes <= before.Bytes + SpareBytes, $"bytes: {before.Bytes} before, {after.Bytes} after");
        var events = journal.Segments().SelectMany(Journals.Entries).OfType<JournalEntry.Event>().Select(entry => entry.Name).ToList();
        Assert.True(events.Count(name => name == JournalEntry.LinkOpened) >= Rounds);
        Assert.Equal(events.Count(name => name == JournalEntry.LinkOpened), events.Count(name => name == JournalEntry.LinkLost));
    }

    private async Task PlugInAndOutAsync(GaugeListener listener)
    {
        await using var pair = await PairedTerminals.OpenAsync();
        File.CreateSymbolicLink(Port, pair.Station);
        await AdvanceUntilAsync(() => listener.State.Condition == GaugeCondition.Silent);
        var heard = listener.State.Readings;
        await pair.SendAsync(["+0.1\n+0.2\n"u8.ToArray()]);   // the first may be the tail of a line, and is passed over
        await Until.TrueAsync(() => listener.State.Readings > heard && listener.State.Condition == GaugeCondition.Reading);
        File.Delete(Port);
        await pair.UnplugAsync();
        await Until.TrueAsync(() => listener.State.Condition == GaugeCondition.Lost);
    }

    private Task AdvanceUntilAsync(Func<bool> condition) => Until.TrueAsync(condition, () => _time.Advance(TimeSpan.FromMilliseconds(50)));
}

using System.Text;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Tests.Links;

namespace Handspun.Gauges.Tests.Listening;

public sealed class GaugeListenerTests : IAsyncLifetime
{
    private ListeningBench _bench = null!;

    public Task InitializeAsync()
    {
        _bench = ListeningBench.Make();
        return Task.CompletedTask;
    }

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Fact]
    public async Task Gauge_ThatIsAbsentAtTheStart_IsHeardWhenItIsThere()
    {
        _bench.Start();
        await ListeningBench.WaitAsync(() => _bench.State.Sentence == ScriptedOpener.NothingThere);
        Assert.Equal(GaugeCondition.Absent, _bench.State.Condition);

        var link = await _bench.PlugAsync();
        Assert.Contains("/dev/ttyTEST is open and nothing has come yet", _bench.State.Sentence, StringComparison.Ordinal);
        await _bench.SendAsync(link, "+0.1\n", 1);

        Assert.Equal("Gauge 'pinion' is sending readings.", _bench.State.Sentence);
        Assert.Equal(("bench", "/dev/ttyTEST"), (_bench.State.Profile, _bench.State.Port));
    }

    [Fact]
    public async Task Port_ThatIsAbsent_IsTriedLessAndLessOften_AndNeverWhileTimeStandsStill()
    {
        _bench.Start();
        await ListeningBench.WaitAsync(() => _bench.State.Sentence == ScriptedOpener.NothingThere);
        for (var i = 0; i < 1000; i++)
        {
            await Task.Yield();
        }

        Assert.Single(_bench.Opener.Tries);

        await _bench.AdvanceUntilAsync(() => _bench.Opener.Tries.Count == 7);
        var tries = _bench.Opener.Tries;
        double[] atLeast = [0.25, 0.5, 1, 2, 2, 2];
        Assert.All(atLeast.Select((pause, i) => (tries[i + 1] - tries[i]).TotalSeconds - pause), longer => Assert.True(longer >= 0, $"too early by {-longer} s"));
    }

    [Fact]
    public async Task Port_ThatOpensAndEndsAtOnce_IsNotTriedInABusyLoop()
    {
        for (var i = 0; i < 5; i++)
        {
            _bench.Opener.Plug().Unplug();
        }

        _bench.Start();
        await _bench.AdvanceUntilAsync(() => _bench.Opener.Tries.Count >= 5);

        var tries = _bench.Opener.Tries;
        Assert.All(tries.Zip(tries.Skip(1), (one, next) => next - one), pause => Assert.True(pause >= TimeSpan.FromMilliseconds(250)));
    }

    [Fact]
    public async Task Gauge_ThatSendsNoMore_FallsSilentAfterTwoSeconds_AndIsHeardAgain()
    {
        _bench.Start();
        var link = await _bench.PlugAsync();
        await _bench.SendAsync(link, "+0.1\n", 1);
        var heard = _bench.Clock.Now;

        await _bench.AdvanceUntilAsync(() => _bench.State.Condition != GaugeCondition.Reading);

        Assert.Equal(GaugeCondition.Silent, _bench.State.Condition);
        Assert.True(_bench.State.Since - heard > TimeSpan.FromSeconds(2));
        Assert.Contains("check that it is on, its battery, and that profile 'bench' suits it", _bench.State.Sentence, StringComparison.Ordinal);
        await _bench.SendAsync(link, "+0.2\n", 2);
    }

    [Fact]
    public async Task Gauge_ThatGoesOnSending_DoesNotFallSilent()
    {
        _bench.Start();
        var link = await _bench.PlugAsync();
        await _bench.SendAsync(link, "+0.1\n", 1);
        using var watch = _bench.Feed.Subscribe("watch", 1000);
        for (var second = 0; second < 6; second++)
        {
            _bench.Time.Advance(TimeSpan.FromSeconds(1));
            await _bench.SendAsync(link, "+0.1\n", 2 + second);
        }

        await _bench.StopAsync();
        watch.Dispose();
        var changes = (await watch.Events.ReadAllAsync().ToListAsync()).OfType<GaugeEvent.Changed>().Select(changed => changed.State.Condition);
        Assert.DoesNotContain(GaugeCondition.Silent, changes);
    }

    public static TheoryData<Exception?> EndingsOfALink => new()
    {
        null,
        new IOException("gone"),
        new ObjectDisposedException("port"),
        new UnauthorizedAccessException("gone"),
        new OperationCanceledException("aborted by the driver"),
        new TimeoutException("gone"),
    };

    [Theory]
    [MemberData(nameof(EndingsOfALink))]
    public async Task Gauge_WhoseCableIsPulled_IsLost_AndBackByItself(Exception? how)
    {
        _bench.Start();
        var link = await _bench.PlugAsync();
        await _bench.SendAsync(link, "+0.1\n", 1);
        link.Unplug(how);

        await ListeningBench.WaitAsync(() => _bench.State.Condition == GaugeCondition.Lost);
        Assert.True(link.Disposed);
        Assert.Contains("plug it in again, and it goes on by itself", _bench.State.Sentence, StringComparison.Ordinal);
        var tries = _bench.Opener.Tries.Count;
        await _bench.AdvanceUntilAsync(() => _bench.Opener.Tries.Count > tries + 2);
        Assert.Equal(GaugeCondition.Lost, _bench.State.Condition);   // "plug it in again" says more than "there is no such port"

        await _bench.SendAsync(await _bench.PlugAsync(), "+0.2\n", 2);
        Assert.Equal(
            ["link-open", "5", "link-lost", "link-open", "5"],
            _bench.Entries().Select(entry => entry is JournalEntry.Chunk chunk ? $"{chunk.Bytes.Length}" : ((JournalEntry.Event)entry).Name));
    }

    [Theory]
    [InlineData(LinkFault.NotPermitted, GaugeCondition.NotPermitted)]
    [InlineData(LinkFault.Busy, GaugeCondition.Absent)]
    [InlineData(LinkFault.NotAPort, GaugeCondition.Absent)]
    public async Task Port_ThatIsRefused_IsToldInTheRefusalsWords(LinkFault fault, GaugeCondition condition)
    {
        _bench.Opener.Refuse(new LinkUnavailableException(fault, "Do this."));
        _bench.Start();

        await ListeningBench.WaitAsync(() => _bench.State.Sentence == "Do this.");
        Assert.Equal(condition, _bench.State.Condition);
    }

    [Fact]
    public async Task Port_ThatFailsInAWayNobodyThoughtOf_IsTriedAgain()
    {
        _bench.Opener.Refuse(new InvalidOperationException("What nobody thought of"));
        _bench.Start();
        await ListeningBench.WaitAsync(() => _bench.State.Sentence.Contains("What nobody thought of", StringComparison.Ordinal));

        await _bench.SendAsync(await _bench.PlugAsync(), "+0.1\n", 1);
    }

    [Fact]
    public async Task Bytes_AreInTheJournal_BeforeTheirReadingIsPublished()
    {
        const int Sent = 100;
        using var subscriber = _bench.Feed.Subscribe("test", 1000);
        _bench.Start();
        var link = await _bench.PlugAsync();
        var checking = Task.Run(async () =>
        {
            var heard = 0;
            await foreach (var happened in subscriber.Events.ReadAllAsync())
            {
                foreach (var reading in (happened as GaugeEvent.Heard)?.Readings ?? [])
                {
                    var journalled = string.Concat(_bench.Entries().OfType<JournalEntry.Chunk>().Select(chunk => Encoding.ASCII.GetString(chunk.Bytes.Span)));
                    Assert.Contains($"+0.{(int)Math.Round(reading.Millimetres * 1000):D3}\n", journalled, StringComparison.Ordinal);
                    if (++heard == Sent)
                    {
                        return;
                    }
                }
            }
        });

        for (var i = 0; i < Sent; i++)
        {
            await link.SendAsync($"+0.{i:D3}\n");
        }

        await checking.WaitAsync(Until.Cap);
    }

    [Fact]
    public async Task Reading_InPieces_IsJournalledByteForByte_AndReplaysToWhatWasPublished()
    {
        using var subscriber = _bench.Feed.Subscribe("test", 1000);
        _bench.Start();
        var link = await _bench.PlugAsync();
        for (var i = 1; i <= 30; i++)
        {
            await link.SendAsync($"+0.{i:D3} m");
            _bench.Time.Advance(TimeSpan.FromTicks(123_457));
            await _bench.SendAsync(link, "m\r\n", i);
        }

        await _bench.StopAsync();
        subscriber.Dispose();
        var published = (await subscriber.Events.ReadAllAsync().ToListAsync()).OfType<GaugeEvent.Heard>().SelectMany(heard => heard.Readings).ToList();
        Assert.Equal(30, published.Count);
        Assert.Equal(published, JournalReplay.Read(Assert.Single(_bench.Journal.Segments())).Readings);
    }

    [Fact]
    public async Task Lines_ThatAreNoReadings_AreCountedAndRated()
    {
        _bench.Start();
        var link = await _bench.PlugAsync();
        await _bench.AdvanceUntilAsync(() => _bench.Clock.Now >= TimeSpan.FromSeconds(5));
        await _bench.SendAsync(link, "+0.1\nlow battery\n1,5\n+0.2\nno\n+0.3\n+0.4\n", 4);
        Assert.Equal(3, _bench.State.Unreadable);

        // The next tick rates both over the same stretch of time.
        await _bench.AdvanceUntilAsync(() => _bench.State.UnreadablePerSecond > 0);
        var state = _bench.State;
        Assert.Equal(3.0 / 4.0, state.UnreadablePerSecond / state.ReadingsPerSecond, 1e-9);
    }

    [Fact]
    public async Task Gauge_ThatSendsNothingReadable_IsTold_SoThatItsProfileIsLookedAt()
    {
        _bench.Start();
        var link = await _bench.PlugAsync();
        await link.SendAsync("\u00f8\u0080\u00ff\n");

        await ListeningBench.WaitAsync(() => _bench.State.Unreadable == 1);
        await ListeningBench.WaitAsync(() => _bench.State.Sentence.Contains("none of it is a reading: check that profile 'bench' suits it", StringComparison.Ordinal));
        Assert.Equal(GaugeCondition.Silent, _bench.State.Condition);
        await _bench.SendAsync(link, "+0.1\n", 1);
    }

    [Fact]
    public async Task Journal_ThatCannotBeWritten_StopsTheReadings_UntilItCan()
    {
        using var subscriber = _bench.Feed.Subscribe("test", 1000);
        Directory.Delete(_bench.JournalFolder);
        var unheard = _bench.Opener.Plug();
        await unheard.SendAsync("+0.7\n+0.8\n");
        _bench.Start();

        await ListeningBench.WaitAsync(() => _bench.State.Sentence.Contains("cannot be written", StringComparison.Ordinal));
        Assert.Equal(GaugeCondition.Offline, _bench.State.Condition);
        Assert.True(unheard.Disposed);
        Directory.CreateDirectory(_bench.JournalFolder);
        await _bench.SendAsync(await _bench.PlugAsync(), "+0.1\n", 1);

        await _bench.StopAsync();
        subscriber.Dispose();
        Assert.Equal([0.1], (await subscriber.Events.ReadAllAsync().ToListAsync()).OfType<GaugeEvent.Heard>().SelectMany(heard => heard.Readings).Select(reading => reading.Millimetres));
    }

    [Fact]
    public async Task Bytes_ThatTheJournalDoesNotTake_AreNoReading()
    {
        using var subscriber = _bench.Feed.Subscribe("test", 10_000);
        _bench.Start();
        var link = await _bench.PlugAsync();
        await _bench.SendAsync(link, "+0.1\n", 1);
        Directory.Delete(_bench.JournalFolder, recursive: true);
        _bench.Time.Advance(TimeSpan.FromMinutes(6));   // the journal's next file is due
        await link.SendAsync("+0.2\n");
        await ListeningBench.WaitAsync(() => _bench.State.Sentence.Contains("cannot be written", StringComparison.Ordinal));
        Directory.CreateDirectory(_bench.JournalFolder);
        await _bench.SendAsync(await _bench.PlugAsync(), "+0.3\n", 2);

        await _bench.StopAsync();
        subscriber.Dispose();
        Assert.Equal([0.1, 0.3], (await subscriber.Events.ReadAllAsync().ToListAsync()).OfType<GaugeEvent.Heard>().SelectMany(heard => heard.Readings).Select(reading => reading.Millimetres));
    }

    [Fact]
    public async Task Listener_ThatIsToldToStop_IsOffline_AndItsLinkClosed()
    {
        _bench.Start();
        var link = await _bench.PlugAsync();
        await _bench.StopAsync();

        Assert.True(link.Disposed);
        Assert.Equal(GaugeCondition.Offline, _bench.State.Condition);
        Assert.Equal("The station does not listen to gauge 'pinion'.", _bench.State.Sentence);
    }
}

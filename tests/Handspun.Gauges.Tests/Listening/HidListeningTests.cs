using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Hid;
using Handspun.Gauges.Tests.Journal;
using Handspun.Gauges.Tests.Links;
using Handspun.Simulation.Speech;
using Microsoft.Extensions.Logging.Abstractions;

namespace Handspun.Gauges.Tests.Listening;

/// <summary>From the node of a HID gauge, which a pipe in packet mode stands in for, to readings, and the same again from the journal.</summary>
[Collection("hidraw")]
public sealed class HidListeningTests : IAsyncDisposable
{
    private static readonly GaugeName Name = GaugeName.Parse("pinion");

    private readonly TestFolder _folder = new();
    private readonly HidTree _tree = new();
    private readonly PacketPipe _pipe = new();
    private readonly CancellationTokenSource _stopping = new();
    private readonly GaugeFeed _feed = new();
    private Task _running = Task.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        await _stopping.CancelAsync();
        await _running.WaitAsync(Until.Cap);
        _stopping.Dispose();
        _pipe.Dispose();
        _tree.Dispose();
        _folder.Dispose();
    }

    [Theory]
    [InlineData("hid-report")]
    [InlineData("hid-report-index")]
    [InlineData("hid-report-bits")]
    [InlineData("hid-keyboard")]
    public async Task Gauge_ThatIsListenedTo_GivesTheSameReadingsLiveAndOnReplay(string name)
    {
        var speech = HidSpeech.ByProfile[name];
        _tree.Plug("hidraw0", "0003:000012AB:000000CD", "A7", Convert.ToHexString(speech.Descriptor), _pipe.Path);
        using var heard = _feed.Subscribe("test", 10_000);
        var profile = new ProfileShelf(ProfileShelf.ShippedFolder).Find(name);
        var clock = new GaugeClock(TimeProvider.System);
        using var journal = new RollingJournal(_folder.File("pinion"), Journals.Header with { Zero = clock.StartedAt, Profile = name, ProfileText = profile.Text });
        var setup = new GaugeSetup(Name, profile, new GaugePort.Hid(new UsbIdentity(0x12AB, 0x00CD)));
        var listener = new GaugeListener(setup, new LinkOpener(TimeProvider.System, _tree.Roots), journal, clock, _feed, TimeProvider.System, NullLogger.Instance);
        _running = listener.RunAsync(_stopping.Token);
        await Until.TrueAsync(() => listener.State.Condition == GaugeCondition.Silent);
        await Until.TrueAsync(() => clock.Now - listener.State.Since > TimeSpan.FromMilliseconds(150));   // typing must not look like a tail

        var shown = Enumerable.Range(0, 120).Select(i => i % 100 / 1000.0).ToList();
        for (var i = 0; i < shown.Count; i++)
        {
            foreach (var report in speech.Reports(shown[i], i % 30 == 10))
            {
                _pipe.Send(report);
            }
        }

        await Until.TrueAsync(() => listener.State.Readings == shown.Count);
        await _stopping.CancelAsync();
        await _running.WaitAsync(Until.Cap);

        List<Reading> live = [];
        List<TimeSpan> pulses = [];
        while (heard.Events.TryRead(out var happened))
        {
            live.AddRange(happened is GaugeEvent.Heard readings ? readings.Readings : []);
            pulses.AddRange(happened is GaugeEvent.Pulsed pulsed ? [pulsed.At] : Array.Empty<TimeSpan>());
        }

        Assert.Equal(shown, live.Select(reading => Math.Round(reading.Millimetres, 9)));
        Assert.Equal(0, listener.State.Unreadable);
        var replay = JournalReplay.Read(Assert.Single(journal.Segments()));
        Assert.Equal(live, replay.Readings);
        Assert.Equal(pulses, replay.Pulses);
        Assert.Equal(name == "hid-report-index", pulses.Count > 0);
    }
}

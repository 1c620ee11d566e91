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

/// <summary>A listener with all that it needs, at a port that the test plugs things into, in a time that the test moves.</summary>
internal sealed class ListeningBench : IAsyncDisposable
{
    private static readonly TimeSpan Step = TimeSpan.FromMilliseconds(50);

    private readonly TestFolder _folder = new();
    private readonly CancellationTokenSource _stopping = new();
    private Task _running = Task.CompletedTask;

    private ListeningBench(string more)
    {
        Clock = new GaugeClock(Time);
        Opener = new ScriptedOpener(Clock);
        var setup = Setup("pinion", more);
        Journal = new RollingJournal(JournalFolder, Journals.Header with { Zero = Clock.StartedAt, ProfileText = setup.Profile.Text });
        Listener = new GaugeListener(setup, Opener, Journal, Clock, Feed, Time, NullLogger.Instance);
    }

    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero));

    public GaugeClock Clock { get; }

    public ScriptedOpener Opener { get; }

    public GaugeFeed Feed { get; } = new();

    public RollingJournal Journal { get; }

    public GaugeListener Listener { get; }

    public string JournalFolder => _folder.File("pinion");

    public GaugeState State => Listener.State;

    public static GaugeSetup Setup(string name) => Setup(name, "");

    private static GaugeSetup Setup(string name, string more) => new(
        GaugeName.Parse(name),
        ProfileReader.Read("bench", Journals.Header.ProfileText + more),
        new GaugePort.Serial("/dev/ttyTEST"));

    /// <summary>A bench whose gauge has the usual profile, and sections of its own after that.</summary>
    public static ListeningBench Make(string more = "") => new(more);

    public void Start() => _running = Listener.RunAsync(_stopping.Token);

    /// <summary>Waits until it is so; time stands still.</summary>
    public static Task WaitAsync(Func<bool> condition) => Until.TrueAsync(condition);

    /// <summary>Moves time on in small steps until it is so.</summary>
    public Task AdvanceUntilAsync(Func<bool> condition) => Until.TrueAsync(condition, () => Time.Advance(Step));

    /// <summary>Plugs a gauge in that has been silent for long enough that its first frame counts, and waits until it is open.</summary>
    public async Task<ScriptedLink> PlugAsync()
    {
        var link = Opener.Plug();
        await AdvanceUntilAsync(() => State.Condition == GaugeCondition.Silent);
        Time.Advance(TimeSpan.FromMilliseconds(200));
        return link;
    }

    /// <summary>Sends text and waits until so many readings have come altogether.</summary>
    public async Task SendAsync(ScriptedLink link, string text, long readings)
    {
        await link.SendAsync(text);
        await WaitAsync(() => State.Readings == readings && State.Condition == GaugeCondition.Reading);
    }

    public IEnumerable<JournalEntry> Entries() => Journal.Segments().SelectMany(Journals.Entries);

    public async Task StopAsync()
    {
        await _stopping.CancelAsync();
        await _running.WaitAsync(Until.Cap);
    }

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        _stopping.Dispose();
        Journal.Dispose();
        _folder.Dispose();
    }
}

using Handspun.Gauges.Journal;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Journal;
using Handspun.Gauges.Tests.Links;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Gauges.Tests.Listening;

public sealed class GaugeRosterTests : IDisposable
{
    private readonly TestFolder _folder = new();
    private readonly FakeTimeProvider _time = new(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Roster_FindsItsGaugesByName_AndListsThemInOrder()
    {
        using var roster = Roster("pinion", "bore", "cam");

        Assert.Equal(["bore", "cam", "pinion"], roster.All.Select(listener => listener.Setup.Name.ToString()));
        Assert.Equal("cam", roster.Find(GaugeName.Parse("cam"))!.Setup.Name.ToString());
        Assert.Null(roster.Find(GaugeName.Parse("lift")));
        Assert.All(roster.All, listener => Assert.Equal(GaugeCondition.Absent, listener.State.Condition));
    }

    [Fact]
    public void Roster_WithANameTwice_IsRefused() => Assert.Throws<ArgumentException>(() => Roster("pinion", "pinion"));

    [Fact]
    public async Task Roster_ListensToAll_EachWithAJournalOfItsOwn_UntilItIsToldToStop()
    {
        var clock = new GaugeClock(_time);
        var opener = new ScriptedOpener(clock);
        opener.Plug();
        opener.Plug();
        using var stopping = new CancellationTokenSource();
        using var roster = Roster(clock, opener, "pinion", "bore");
        var running = roster.RunAsync(stopping.Token);
        await Until.TrueAsync(() => roster.All.All(listener => listener.State.Condition == GaugeCondition.Silent));
        await stopping.CancelAsync();
        await running.WaitAsync(Until.Cap);

        foreach (var name in new[] { "pinion", "bore" })
        {
            using var journal = JournalReader.Open(Assert.Single(RollingJournal.SegmentsOf(_folder.File(name), clock.StartedAt)));
            Assert.Equal((name, "bench", "/dev/ttyTEST"), (journal.Header.Gauge, journal.Header.Profile, journal.Header.Port));
            Assert.Equal(clock.StartedAt, journal.Header.Zero);
            Assert.Equal(Journals.Header.ProfileText, journal.Header.ProfileText);
            Assert.Equal("link-open", Assert.IsType<JournalEntry.Event>(Assert.Single(journal.Entries())).Name);
        }

        Assert.All(roster.All, listener => Assert.Equal(GaugeCondition.Offline, listener.State.Condition));
    }

    private GaugeRoster Roster(params string[] names)
    {
        var clock = new GaugeClock(_time);
        return Roster(clock, new ScriptedOpener(clock), names);
    }

    private GaugeRoster Roster(GaugeClock clock, ScriptedOpener opener, params string[] names) =>
        new(names.Select(ListeningBench.Setup), _folder.Path, opener, clock, new GaugeFeed(), _time, NullLogger<GaugeListener>.Instance);
}

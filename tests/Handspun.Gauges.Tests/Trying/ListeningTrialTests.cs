using System.Text;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Links;
using Handspun.Gauges.Tests.Listening;
using Handspun.Gauges.Trying;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Gauges.Tests.Trying;

public sealed class ListeningTrialTests
{
    private static readonly GaugePort Port = new GaugePort.Serial("/dev/ttyTEST");

    private readonly FakeTimeProvider _time = new();
    private readonly ScriptedOpener _opener;

    public ListeningTrialTests() => _opener = new ScriptedOpener(new GaugeClock(_time));

    [Fact]
    public async Task Stretch_HoldsWhatCame_UntilItsTimeIsOver()
    {
        var link = _opener.Plug();
        var listening = ListenAsync("", seconds: 3);
        await link.SendAsync("+0.1\n");
        await link.SendAsync("+0.2\n");
        await AdvanceToTheEndAsync(listening);

        var heard = await listening;
        Assert.Equal("+0.1\n+0.2\n", Encoding.ASCII.GetString(heard.Sample.Span));
        Assert.Equal(10, heard.Bytes);
        Assert.True(heard.Lasted >= TimeSpan.FromSeconds(3));   // the test's time may have moved on before the end was seen
        Assert.Equal(JournalEntry.LinkOpened, Assert.IsType<JournalEntry.Event>(heard.Entries[0]).Name);
        Assert.Empty(link.Sent);
        Assert.True(link.Disposed);
    }

    [Theory]
    [InlineData("[request]\nsend = \"?\"\nevery_ms = 500\nstart = \"S\"\nstop = \"E\"\n", "S", "?", "E")]
    [InlineData("[request]\nsend = \"!\"\n", "!", "!", "!")]   // on demand: here it is asked all the time
    public async Task Gauge_ThatHasToBeAsked_IsAsked(string request, string first, string between, string last)
    {
        var link = _opener.Plug();
        var listening = ListenAsync(request, seconds: 3);
        await AdvanceToTheEndAsync(listening);
        await listening;

        var sent = link.Sent.ToList();
        Assert.Equal((first, last), (sent[0], sent[^1]));
        Assert.True(sent.Count >= 4);
        Assert.All(sent[1..^1], word => Assert.Equal(between, word));
    }

    [Fact]
    public async Task Cable_ThatGoesOut_EndsTheStretch_WithWhatWasHeard()
    {
        var link = _opener.Plug();
        var listening = ListenAsync("", seconds: 3);
        await link.SendAsync("+0.1\n");
        link.Unplug(new IOException("gone"));

        Assert.Equal(5, (await listening.WaitAsync(Until.Cap)).Bytes);
    }

    [Fact]
    public async Task Port_ThatIsNotThere_SaysSo() => await Assert.ThrowsAsync<LinkUnavailableException>(() => ListenAsync("", seconds: 3));

    private Task<HeardStretch> ListenAsync(string profile, double seconds) =>
        new ListeningTrial(_opener, _time).ListenAsync(Port, [ProfileReader.Read("bench", profile)], TimeSpan.FromSeconds(seconds), CancellationToken.None);

    private Task AdvanceToTheEndAsync(Task listening) => Until.TrueAsync(() => listening.IsCompleted, () => _time.Advance(TimeSpan.FromMilliseconds(100)));
}

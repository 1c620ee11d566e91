using System.Buffers;
using System.Text;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Tests.Journal;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Gauges.Tests.Links;

public sealed class ReplayLinkTests : IDisposable
{
    private static readonly string[] Spoken = ["+0.", "1\n+0.2\n", "+0.3\n"];

    private readonly TestFolder _folder = new();
    private readonly FakeTimeProvider _time = new();

    private string Path => _folder.File("gauge.jsonl");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Replay_AtOnce_GivesEachChunkAsItCame_AndNeverJoinsTwo()
    {
        Write();
        await using var link = await OpenAsync("at-once:");

        Assert.Equal(["+0.", "1\n+0.2\n", "+0.3\n"], await ChunksAsync(link, takeAll: true));
    }

    [Fact]
    public async Task Replay_WhoseReaderLeavesBytes_GivesThemAgainInFrontOfTheNextChunk()
    {
        Write();
        await using var link = await OpenAsync("at-once:");

        Assert.Equal(["+0.", "+0.1\n+0.2\n", "+0.1\n+0.2\n+0.3\n"], await ChunksAsync(link, takeAll: false));
    }

    [Theory]
    [InlineData("", 1)]
    [InlineData("x4:", 4)]
    [InlineData("x0.5:", 0.5)]
    public async Task Replay_AtAPace_GivesEachChunkWhenItIsDue(string pace, double faster)
    {
        Write();
        await using var link = await OpenAsync(pace);
        foreach (var due in new[] { 1.0, 3, 4 })
        {
            var reading = link.Input.ReadAsync().AsTask();
            _time.Advance((Journals.At(due) / faster) - (_time.GetUtcNow() - _time.Start) - TimeSpan.FromMilliseconds(1));
            Assert.False(reading.IsCompleted);
            _time.Advance(TimeSpan.FromMilliseconds(1));
            var read = await reading.WaitAsync(Until.Cap);
            link.Input.AdvanceTo(read.Buffer.End);
        }
    }

    [Fact]
    public async Task Replay_OfALossInTheMiddle_EndsThere_AndGoesOnAtTheNextOpening_UntilItIsPlayed()
    {
        using (var journal = JournalWriter.Create(Path, Journals.Header))
        {
            journal.AppendEvent(Journals.At(0), JournalEntry.LinkOpened);
            journal.Append(1, "+0.1\n");
            journal.AppendEvent(Journals.At(2), JournalEntry.LinkLost);
            journal.AppendEvent(Journals.At(3), JournalEntry.LinkOpened);
            journal.Append(4, "+0.2\n");
        }

        var opener = new LinkOpener(_time);
        Assert.True(GaugePort.TryParse("replay:at-once:" + Path, out var port));
        Assert.Equal(["+0.1\n"], await ChunksAsync(await opener.OpenAsync(port!, new LinkSettings(), CancellationToken.None), takeAll: true));
        Assert.Equal(["+0.2\n"], await ChunksAsync(await opener.OpenAsync(port!, new LinkSettings(), CancellationToken.None), takeAll: true));
        var refused = await Assert.ThrowsAsync<LinkUnavailableException>(() => opener.OpenAsync(port!, new LinkSettings(), CancellationToken.None));
        Assert.Contains("played to its end", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Replay_OfAnIndex_PulsesInItsPlaceAmongTheBytes()
    {
        using (var journal = JournalWriter.Create(Path, Journals.Header))
        {
            journal.Append(1, "+0.1\n");
            journal.AppendEvent(Journals.At(2), JournalEntry.Index, "cts");
            journal.Append(3, "+0.2\n");
        }

        await using var link = await OpenAsync("at-once:");
        var heard = new List<string>();
        using (link.WatchPulses(new IndexSettings { Source = IndexSource.Line }, heard.Add))
        {
            heard.AddRange(await ChunksAsync(link, takeAll: true));
        }

        Assert.Equal("cts", Assert.Single(heard, item => item == "cts"));
        Assert.Equal(3, heard.Count);
    }

    [Fact]
    public async Task Replay_OfNoJournal_SaysSo()
    {
        Assert.Equal(LinkFault.Absent, (await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(""))).Fault);
        File.WriteAllText(Path, "time_s,channel,value\n");
        var refused = await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(""));
        Assert.Equal(LinkFault.NotAPort, refused.Fault);
        Assert.StartsWith($"{Path} cannot be replayed: gauge.jsonl, line 1", refused.Message, StringComparison.Ordinal);
    }

    private void Write()
    {
        using var journal = JournalWriter.Create(Path, Journals.Header);
        journal.AppendEvent(Journals.At(0), JournalEntry.LinkOpened);
        foreach (var (seconds, text) in new[] { 1.0, 3, 4 }.Zip(Spoken))
        {
            journal.Append(seconds, text);
        }
    }

    private Task<IGaugeLink> OpenAsync(string pace)
    {
        Assert.True(GaugePort.TryParse("replay:" + pace + Path, out var port));
        return new LinkOpener(_time).OpenAsync(port!, new LinkSettings(), CancellationToken.None);
    }

    private static async Task<List<string>> ChunksAsync(IGaugeLink link, bool takeAll)
    {
        List<string> chunks = [];
        while (true)
        {
            var read = await link.Input.ReadAsync();
            if (read.IsCompleted)
            {
                return chunks;
            }

            chunks.Add(Encoding.Latin1.GetString(read.Buffer.ToArray()));
            link.Input.AdvanceTo(takeAll ? read.Buffer.End : read.Buffer.Start, read.Buffer.End);
        }
    }
}

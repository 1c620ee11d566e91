using Handspun.Gauges.Journal;

namespace Handspun.Gauges.Tests.Journal;

public sealed class RollingJournalTests : IDisposable
{
    private const int Kept = 12;

    private readonly TestFolder _folder = new();

    private string Pinion => _folder.File("pinion");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Journal_EveryFiveMinutes_BeginsAFile()
    {
        using var journal = new RollingJournal(Pinion, Journals.Header);
        Assert.Empty(journal.Segments());
        journal.Append(10, "a");
        journal.Append(309.999, "b");
        Assert.Single(journal.Segments());
        journal.Append(310, "c");

        Assert.Equal(["a", "b", "|", "c"], Written(journal));
        Assert.All(journal.Segments(), file =>
        {
            using var reader = JournalReader.Open(file);
            Assert.Equal(Journals.Header, reader.Header);
        });
    }

    // A file that does not say what a HID gauge's reports hold could not be decoded once the older ones are gone.
    [Fact]
    public void Journal_OfAHidGauge_SaysInEachFileWhatItsReportsHold()
    {
        using var journal = new RollingJournal(Pinion, Journals.Header);
        journal.AppendEvent(Journals.At(0), JournalEntry.LinkOpened);
        journal.AppendEvent(Journals.At(0), JournalEntry.ReportDescriptor, "0501");
        journal.Append(1, "a");
        journal.Append(400, "b");
        journal.AppendEvent(Journals.At(500), JournalEntry.LinkOpened);
        journal.Append(800, "c");

        var files = journal.Segments().Select(Journals.Entries).ToList();
        Assert.Equal(3, files.Count);
        Assert.Equal(
            [[true, true, false], [true, false, false], [false]],
            files.Select(file => file.Select(entry => entry is JournalEntry.Event && entry.At < Journals.At(500)).ToArray()));
        Assert.Equal(new JournalEntry.Event(Journals.At(400), JournalEntry.ReportDescriptor, "0501"), files[1][0]);
    }

    [Fact]
    public void OldFiles_WhenNobodyHoldsThem_AreLetGo()
    {
        using var journal = new RollingJournal(Pinion, Journals.Header);
        Roll(journal, 0, 20);

        Assert.Equal(Enumerable.Range(20 - Kept, Kept), First(journal));
    }

    [Fact]
    public void OldFiles_WhileTheyAreHeld_AreKept()
    {
        using var journal = new RollingJournal(Pinion, Journals.Header);
        var (first, second) = (journal.Hold(), journal.Hold());
        Roll(journal, 0, 20);
        Assert.Equal(Enumerable.Range(0, 20), First(journal));

        first.Dispose();
        first.Dispose();   // one hold, however often it is let go
        Roll(journal, 20, 1);
        Assert.Equal(Enumerable.Range(0, 21), First(journal));

        second.Dispose();
        Roll(journal, 21, 1);
        Assert.Equal(Enumerable.Range(22 - Kept, Kept), First(journal));
    }

    [Fact]
    public void OldFiles_OfAnEarlierRun_AreLetGoFirst_AndFoundByTheirZero()
    {
        using (var earlier = new RollingJournal(Pinion, Journals.Header))
        {
            Roll(earlier, 0, 3);
        }

        using var journal = new RollingJournal(Pinion, Journals.Header with { Zero = Journals.Header.Zero.AddDays(1) });
        Roll(journal, 0, 10);

        Assert.Equal(10, journal.Segments().Count);
        Assert.Equal(2, RollingJournal.SegmentsOf(Pinion, Journals.Header.Zero).Count);
        Assert.Empty(RollingJournal.SegmentsOf(_folder.File("nowhere"), Journals.Header.Zero));
    }

    [Fact]
    public async Task Appending_WhileItIsSyncedAndCut_LosesNothing()
    {
        const int Appended = 3000;
        using var journal = new RollingJournal(Pinion, Journals.Header);
        using var hold = journal.Hold();
        using var done = new CancellationTokenSource();
        journal.AppendEvent(TimeSpan.Zero, JournalEntry.LinkOpened);
        var syncing = Task.Run(() =>
        {
            while (!done.IsCancellationRequested)
            {
                journal.Sync();
            }
        });
        var cutting = Task.Run(() =>
        {
            for (var most = 0; !done.IsCancellationRequested;)
            {
                var replay = CutAndReplay(journal);
                Assert.InRange(replay, most, Appended);
                most = replay;
            }
        });

        for (var i = 0; i < Appended; i++)
        {
            journal.Append(1 + i, "+0.0125 mm\r\n");   // rolls every 300 appended lines
        }

        await done.CancelAsync();
        await Task.WhenAll(syncing, cutting);
        Assert.Equal(Appended, CutAndReplay(journal));
    }

    [Fact]
    public void Folder_BelowAFile_IsToldWithWhatToDo()
    {
        File.WriteAllText(_folder.File("file"), "");

        var refused = Assert.Throws<JournalException>(() => new RollingJournal(Path.Combine(_folder.File("file"), "pinion"), Journals.Header));
        Assert.Contains(_folder.File("file"), refused.Message, StringComparison.Ordinal);
        Assert.Contains("mend the folder's rights", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_ThatWentAway_IsToldOnEachTry_AndTheJournalGoesOnWhenItIsBack()
    {
        using var journal = new RollingJournal(Pinion, Journals.Header);
        Directory.Delete(Pinion);
        Assert.Contains("cannot be written", Assert.Throws<JournalException>(() => journal.Append(1, "lost")).Message, StringComparison.Ordinal);
        Assert.Throws<JournalException>(() => journal.AppendEvent(Journals.At(2), JournalEntry.LinkOpened));

        Directory.CreateDirectory(Pinion);
        journal.Append(3, "there");

        Assert.Equal(["there"], Written(journal));
    }

    [Fact]
    public void Folder_ThatWentAway_AtARoll_IsTold_AndTheJournalGoesOnWhenItIsBack()
    {
        using var journal = new RollingJournal(Pinion, Journals.Header);
        journal.Append(1, "before");
        Directory.Delete(Pinion, recursive: true);
        Assert.Throws<JournalException>(() => journal.Append(400, "lost"));

        Directory.CreateDirectory(Pinion);
        journal.Append(401, "there");

        Assert.Equal(["there"], Written(journal));
    }

    [Fact]
    public void Journal_ThatIsDisposed_KeepsItsFiles()
    {
        var journal = new RollingJournal(Pinion, Journals.Header);
        journal.Append(1, "a");
        journal.Dispose();
        journal.Sync();

        Assert.Equal(["a"], Written(journal));
    }

    private static void Roll(RollingJournal journal, int from, int count)
    {
        for (var i = from; i < from + count; i++)
        {
            journal.Append(i * 300, $"{i}");
        }
    }

    private static IEnumerable<int> First(RollingJournal journal) =>
        journal.Segments().Select(file => (int)Journals.Entries(file)[0].At.TotalSeconds / 300);

    private static string[] Written(RollingJournal journal) => string.Join("|", journal.Segments().Select(file =>
        string.Join(" ", Journals.Entries(file).OfType<JournalEntry.Chunk>().Select(chunk => System.Text.Encoding.ASCII.GetString(chunk.Bytes.Span)))))
        .Replace("|", " | ", StringComparison.Ordinal).Split(' ');

    private int CutAndReplay(RollingJournal journal)
    {
        new JournalCut { Segments = journal.Segments(), Header = Journals.Header, From = TimeSpan.Zero, Ending = "enough" }.WriteTo(_folder.File("cut.jsonl"));
        return JournalReplay.Read(_folder.File("cut.jsonl")).Readings.Count;
    }
}

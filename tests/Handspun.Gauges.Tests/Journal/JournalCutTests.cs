using System.Text;
using CsCheck;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Tests.Framing;

namespace Handspun.Gauges.Tests.Journal;

public sealed class JournalCutTests : IDisposable
{
    private readonly TestFolder _folder = new();

    private string Capture => _folder.File("capture.jsonl");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Cut_OfAStretch_HasItsLeadIn_ItsHead_AndItsEnding()
    {
        using var journal = new RollingJournal(_folder.File("pinion"), Journals.Header);
        var live = new Journals.Live(journal);
        live.Open(TimeSpan.Zero);
        for (var tenth = 1; tenth <= 100; tenth++)
        {
            live.Receive(Journals.At(tenth * 0.1), Encoding.ASCII.GetBytes($"+0.{tenth:D3}\r\n"));
        }

        Cut(journal, Journals.At(5), Journals.At(6), "enough");

        var replay = JournalReplay.Read(Capture);
        Assert.Equal(Journals.Header with { From = Journals.At(5), Capture = "c", Job = "2026-0001", Point = "pinion-runout" }, replay.Header);
        Assert.Equal(Enumerable.Range(50, 11).Select(tenth => tenth / 1000.0), replay.Readings.Select(reading => reading.Millimetres));
        Assert.Equal(("enough", false, 0L), (replay.Ended, replay.Torn, replay.Unreadable));
        var entries = Journals.Entries(Capture);
        Assert.InRange(entries[0].At, Journals.At(3.7), Journals.At(4));
        Assert.Equal(new JournalEntry.Event(Journals.At(6), "end", "enough"), entries[^1]);
        Assert.Equal([Capture], Directory.EnumerateFiles(_folder.Path));
    }

    [Fact]
    public void Cut_ToTheEnd_EndsWithTheLastEntry_AndReplacesAnOlderOne()
    {
        using var journal = new RollingJournal(_folder.File("pinion"), Journals.Header);
        journal.AppendEvent(TimeSpan.Zero, JournalEntry.LinkOpened);
        journal.Append(2, "+0.1\n");
        File.WriteAllText(Capture, "an older one");

        Cut(journal, Journals.At(1), TimeSpan.MaxValue, "station-stopped");

        Assert.Equal(new JournalEntry.Event(Journals.At(2), "end", "station-stopped"), Journals.Entries(Capture)[^1]);
        Assert.Equal(0.1, Assert.Single(JournalReplay.Read(Capture).Readings).Millimetres);
    }

    [Fact]
    public void Cut_IntoAPackedFile_HoldsTheSame_AndAnybodyCanUnpackIt()
    {
        using var journal = new RollingJournal(_folder.File("pinion"), Journals.Header);
        var live = new Journals.Live(journal);
        live.Open(TimeSpan.Zero);
        for (var tenth = 1; tenth <= 100; tenth++)
        {
            live.Receive(Journals.At(tenth * 0.1), [0x1F, 0x8B, .. Encoding.ASCII.GetBytes($"\n+0.{tenth:D3}\r\n")]);
        }

        var packed = Capture + ".gz";
        Cut(journal, Journals.At(5), Journals.At(6), "enough");
        Cut(journal, Journals.At(5), Journals.At(6), "enough", packed);

        Assert.Equal([Capture, packed], Directory.EnumerateFiles(_folder.Path).Order(StringComparer.Ordinal));
        Assert.Equal(JournalReplay.Read(Capture).Readings, JournalReplay.Read(packed).Readings);
        Assert.Equal(Journals.Entries(Capture).Select(Journals.Said), Journals.Entries(packed).Select(Journals.Said));
        Assert.Equal(File.ReadAllText(Capture), Unpacked(packed));
        Assert.True(new FileInfo(packed).Length < new FileInfo(Capture).Length / 3);
    }

    [Fact]
    public void PackedJournal_ThatIsDamaged_SaysSo()
    {
        using var journal = new RollingJournal(_folder.File("pinion"), Journals.Header);
        journal.Append(1, string.Concat(Enumerable.Range(0, 500).Select(i => $"+0.{i:D3}\n")));
        Cut(journal, TimeSpan.Zero, TimeSpan.MaxValue, "enough", Capture + ".gz");
        var bytes = File.ReadAllBytes(Capture + ".gz");
        bytes.AsSpan(200, 40).Fill(0xFF);
        File.WriteAllBytes(Capture + ".gz", bytes);

        Assert.Contains("is damaged and cannot be unpacked", Assert.Throws<JournalException>(() => JournalReplay.Read(Capture + ".gz")).Message, StringComparison.Ordinal);
    }

    // The system's own gzip is what opens such a file in ten years.
    private static string Unpacked(string path)
    {
        using var gzip = System.Diagnostics.Process.Start(new System.Diagnostics.ProcessStartInfo("gzip", ["-dc", path]) { RedirectStandardOutput = true })!;
        return gzip.StandardOutput.ReadToEnd();
    }

    // The gauge was silent for longer than the lead-in: its first reading is the capture's first and must not be passed over.
    [Fact]
    public void Cut_AfterALongSilence_HasItsFirstReading()
    {
        using var journal = new RollingJournal(_folder.File("pinion"), Journals.Header);
        var live = new Journals.Live(journal);
        live.Open(TimeSpan.Zero);
        live.Receive(Journals.At(1), "+0.1\r\n"u8);
        live.Receive(Journals.At(400), "+0.2\r\n+0.3\r\n"u8);

        Cut(journal, Journals.At(399), Journals.At(401), "enough");

        Assert.Equal([0.2, 0.3], JournalReplay.Read(Capture).Readings.Select(reading => reading.Millimetres));
    }

    [Fact]
    public void Cut_FromBetweenTwoMicroseconds_HasNoReadingFromBefore()
    {
        using var journal = new RollingJournal(_folder.File("pinion"), Journals.Header);
        var live = new Journals.Live(journal);
        live.Open(TimeSpan.Zero);
        live.Receive(Journals.At(1), "+0.1\n"u8);
        live.Receive(Journals.At(1.000001), "+0.2\n"u8);

        Cut(journal, Journals.At(1) + TimeSpan.FromTicks(3), Journals.At(2), "enough");

        Assert.Equal(0.2, Assert.Single(JournalReplay.Read(Capture).Readings).Millimetres);
    }

    [Fact]
    public void Cut_CountsTheUnreadableFramesOfTheCaptureAlone()
    {
        using var journal = new RollingJournal(_folder.File("pinion"), Journals.Header);
        var live = new Journals.Live(journal);
        live.Open(TimeSpan.Zero);
        live.Receive(Journals.At(1), "low battery\nlow battery\n"u8);
        live.Receive(Journals.At(1.5), "+0.1\nlow battery\n"u8);

        Cut(journal, Journals.At(1.2), Journals.At(2), "enough");

        Assert.Equal(1, JournalReplay.Read(Capture).Unreadable);
    }

    [Fact]
    public void Cut_OfAJournalWhoseLastFileWasJustMadeWhenThePowerWent_HasWhatThereIs()
    {
        var folder = _folder.File("pinion");
        using (var journal = new RollingJournal(folder, Journals.Header))
        {
            journal.AppendEvent(TimeSpan.Zero, JournalEntry.LinkOpened);
            journal.Append(1, "+0.1\n");
        }

        var first = Assert.Single(RollingJournal.SegmentsOf(folder, Journals.Header.Zero));
        File.WriteAllBytes(first.Replace("000000.", "000001.", StringComparison.Ordinal), []);
        File.WriteAllBytes(first.Replace("000000.", "000002.", StringComparison.Ordinal), new byte[512]);

        Write(RollingJournal.SegmentsOf(folder, Journals.Header.Zero), Journals.At(0.5), TimeSpan.MaxValue, "station-stopped");

        Assert.Equal(0.1, Assert.Single(JournalReplay.Read(Capture).Readings).Millimetres);
    }

    [Fact]
    public void Cut_OfADamagedJournal_IsRefused()
    {
        File.WriteAllText(_folder.File("bad.jsonl"), "no journal\n");

        Assert.Throws<JournalException>(() => Write([_folder.File("bad.jsonl")], TimeSpan.Zero, TimeSpan.MaxValue, "enough"));
        Assert.False(File.Exists(Capture));
    }

    [Fact]
    public void Replay_WithAProfileThatDoesNotHold_SaysSo()
    {
        JournalWriter.Create(Capture, Journals.Header with { ProfileText = "[link]\nbaud = 1" }).Dispose();

        Assert.Throws<ProfileException>(() => JournalReplay.Read(Capture));
    }

    [Fact]
    public void Replay_OfATornCapture_HasWhatCameBefore()
    {
        using (var writer = JournalWriter.Create(Capture, Journals.Header))
        {
            writer.AppendEvent(TimeSpan.Zero, JournalEntry.LinkOpened);
            writer.Append(1, "+0.1\n");
        }

        File.AppendAllText(Capture, "{\"t\":2.0,\"raw\":\"+0.2");
        var replay = JournalReplay.Read(Capture);

        Assert.True(replay.Torn);
        Assert.Null(replay.Ended);
        Assert.Equal(0.1, Assert.Single(replay.Readings).Millimetres);
    }

    // Whatever the pieces, pauses, pulled cables and noise: a replay gives what was decoded when it came in, to the microsecond.
    [Fact]
    public void Cut_OfAnyStretch_ReplaysToTheReadingsThatWereDecodedLive() => Gen.Select(
        Gen.OneOf(0.001, 0.02, 0.15, 0.7, 3.0, 170.0).Array[10, 60],
        Gen.OneOf("+0.001\r\n", "+0.002\n", "-12.5 mm\r", "0.1 in\r\n", "low battery\r\n", "\n", "+0.", "OPEN", new string('7', 70)).Array[10, 60],
        Chunks.Sizes,
        Gen.Int[0, 59], Gen.Int[0, 59])
        .Sample(
            (pauses, words, sizes, first, last) =>
            {
                var name = $"pinion-{Guid.NewGuid():N}";
                using var journal = new RollingJournal(_folder.File(name), Journals.Header);
                using var hold = journal.Hold();
                var live = new Journals.Live(journal);
                var at = TimeSpan.Zero;
                live.Open(at);
                List<TimeSpan> moments = [at];
                for (var i = 0; i < words.Length; i++)
                {
                    if (words[i] == "OPEN")
                    {
                        at += Journals.At(pauses[i % pauses.Length]);
                        live.Open(at);
                        moments.Add(at);
                        continue;
                    }

                    foreach (var piece in Chunks.Of(Encoding.ASCII.GetBytes(words[i]), sizes))
                    {
                        at += Journals.At(pauses[i % pauses.Length]);
                        live.Receive(at, piece);
                        moments.Add(at);
                    }
                }

                var from = moments[Math.Min(first, last) % moments.Count];
                var to = moments[Math.Max(first, last) % moments.Count];
                (from, to) = from <= to ? (from, to) : (to, from);
                Cut(journal, from, to, "enough");

                Assert.Equal(
                    live.Readings.Where(reading => reading.At >= from && reading.At <= to),
                    JournalReplay.Read(Capture).Readings);
                Directory.Delete(_folder.File(name), recursive: true);
            },
            iter: 300, threads: 1);

    private void Cut(RollingJournal journal, TimeSpan from, TimeSpan to, string ending, string? into = null) => Write(journal.Segments(), from, to, ending, into);

    private void Write(IReadOnlyList<string> segments, TimeSpan from, TimeSpan to, string ending, string? into = null) => new JournalCut
    {
        Segments = segments,
        From = from,
        To = to,
        Ending = ending,
        Header = Journals.Header with { Capture = "c", Job = "2026-0001", Point = "pinion-runout" },
    }.WriteTo(into ?? Capture);
}

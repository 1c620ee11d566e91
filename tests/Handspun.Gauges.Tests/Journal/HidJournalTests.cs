using System.Buffers;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Hid;

namespace Handspun.Gauges.Tests.Journal;

/// <summary>A HID gauge's reports are entries of their own, and a journal says itself what they hold.</summary>
public sealed class HidJournalTests : IDisposable
{
    // A keyboard with one slot for a key, and that before its modifiers: nothing like the boot report.
    private const string OddKeyboard = "05 01 09 06 A1 01 05 07 15 00 26 FF 00 19 00 29 FF 75 08 95 01 81 00 25 01 19 E0 29 E7 75 01 95 08 81 02 C0";

    private static readonly JournalHeader Header = Journals.Header with { Profile = "typed", ProfileText = "[hid]\nkind = \"keyboard\"\n" };

    private readonly TestFolder _folder = new();
    private readonly RollingJournal _journal;
    private readonly ReadingDecoder _decoder = new(ProfileReader.Read(Header.Profile, Header.ProfileText));
    private readonly List<Reading> _live = [];

    public HidJournalTests() => _journal = new RollingJournal(_folder.File("pinion"), Header);

    public void Dispose()
    {
        _journal.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void Reports_OnReplay_GiveTheReadingsThatTheyGave()
    {
        Open(0, OddKeyboard);
        Type(1, 700);

        foreach (var file in _journal.Segments())
        {
            Assert.Contains(Journals.Entries(file), entry => entry is JournalEntry.Event { Name: JournalEntry.ReportDescriptor });
        }

        Assert.Equal(3, _journal.Segments().Count);
        Assert.Equal(700, _live.Count);
        Cut(0, 2000);
        Assert.Equal(_live, JournalReplay.Read(_folder.File("capture.jsonl")).Readings);
    }

    // The beginning of the journal is out of the cut: what the reports hold must not be.
    [Fact]
    public void Cut_LongAfterTheOpening_StillSaysWhatTheReportsHold()
    {
        Open(0, OddKeyboard);
        Type(1, 40);
        Cut(30, 35);

        var replay = JournalReplay.Read(_folder.File("capture.jsonl"));
        Assert.Equal(_live.Where(reading => reading.At >= Journals.At(30) && reading.At <= Journals.At(35)), replay.Readings);
        Assert.Equal(0, replay.Unreadable);
        var entries = Journals.Entries(_folder.File("capture.jsonl"));
        Assert.Single(entries, entry => entry is JournalEntry.Event { Name: JournalEntry.ReportDescriptor });
        Assert.InRange(entries[1].At, Journals.At(25), Journals.At(30));
    }

    [Fact]
    public void Port_OpenedAgainWithAnotherDevice_IsReadByWhatThatOneSays()
    {
        Open(0, OddKeyboard);
        Type(1, 3);
        Open(10, null);   // the kernel says nothing of it: the boot report
        foreach (var report in Typing.Of("7\n"))
        {
            Receive(11, report);
        }

        Assert.Equal(7, _live[^1].Millimetres);
        Cut(0, 20);
        Assert.Equal(_live, JournalReplay.Read(_folder.File("capture.jsonl")).Readings);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("050")]
    [InlineData("no")]
    public void Description_ThatIsNoDescriptor_SaysNothing(string? detail)
    {
        Assert.True(new JournalEntry.Event(default, JournalEntry.ReportDescriptor, detail).IsDescription(out var descriptor));
        Assert.True(descriptor.IsEmpty);
    }

    private void Open(double seconds, string? descriptor)
    {
        _journal.AppendEvent(Journals.At(seconds), JournalEntry.LinkOpened);
        _decoder.LinkOpened(Journals.At(seconds));
        if (descriptor is not null)
        {
            _journal.AppendEvent(Journals.At(seconds), JournalEntry.ReportDescriptor, Convert.ToHexString(Descriptors.Bytes(descriptor)));
            _decoder.LinkDescribed(Descriptors.Bytes(descriptor));
        }
    }

    // One value a second, with a digit that tells it: 1, 2 … 9 and from the beginning.
    private void Type(double from, int values)
    {
        for (var i = 0; i < values; i++)
        {
            foreach (var report in new byte[][] { [(byte)(0x1E + i % 9), 0], [0, 0], [Typing.Enter, 0], [0, 0] })
            {
                Receive(from + i, report);
            }
        }
    }

    private void Receive(double seconds, byte[] report)
    {
        _journal.Append(Journals.At(seconds), new ReadOnlySequence<byte>(report));
        var pending = new ReadOnlySequence<byte>(report);
        _decoder.Decode(ref pending, Journals.At(seconds), _live);
        Assert.True(pending.IsEmpty);
    }

    private void Cut(double from, double to) => new JournalCut
    {
        Segments = _journal.Segments(),
        Header = Header,
        From = Journals.At(from),
        To = Journals.At(to),
        Ending = "enough",
    }.WriteTo(_folder.File("capture.jsonl"));
}

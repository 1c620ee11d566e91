using System.Buffers;
using System.Text;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Framing;

namespace Handspun.Gauges.Tests.Journal;

/// <summary>Journals to test with.</summary>
internal static class Journals
{
    public static JournalHeader Header { get; } = new()
    {
        Gauge = "pinion",
        Port = "/dev/ttyUSB0",
        Profile = "bench",
        ProfileText = "title = \"Bench\"\n# µ and \"quotes\"\r\n\t[value]\nunit = \"mm\"\n",
        Zero = new DateTimeOffset(2026, 3, 14, 9, 26, 53, TimeSpan.Zero),
    };

    public static TimeSpan At(double seconds) => TimeSpan.FromMicroseconds(Math.Round(seconds * 1e6));

    public static void Append(this JournalWriter writer, double seconds, string text) =>
        writer.Append(At(seconds), new ReadOnlySequence<byte>(Encoding.Latin1.GetBytes(text)));

    public static void Append(this RollingJournal journal, double seconds, string text) =>
        journal.Append(At(seconds), new ReadOnlySequence<byte>(Encoding.Latin1.GetBytes(text)));

    public static List<JournalEntry> Entries(string path)
    {
        using var reader = JournalReader.Open(path);
        return [.. reader.Entries()];
    }

    /// <summary>What an entry says, to be compared: the bytes of two chunks are no part of a record's equality.</summary>
    public static string Said(JournalEntry entry) => entry is JournalEntry.Chunk chunk
        ? $"{chunk.At.Ticks} {Convert.ToHexString(chunk.Bytes.Span)}"
        : entry.ToString();

    /// <summary>A gauge that is listened to: what comes in is journalled, then decoded.</summary>
    public sealed class Live(RollingJournal journal)
    {
        private readonly ReadingDecoder _decoder = new(ProfileReader.Read(Header.Profile, Header.ProfileText));
        private Chunks _chunks = new();

        public List<Reading> Readings { get; } = [];

        public void Open(TimeSpan at)
        {
            journal.AppendEvent(at, JournalEntry.LinkOpened);
            _decoder.LinkOpened(at);
            _chunks = new();
        }

        public void Receive(TimeSpan at, ReadOnlySpan<byte> bytes)
        {
            journal.Append(at, new ReadOnlySequence<byte>(bytes.ToArray()));
            _chunks.Add(bytes, (ref ReadOnlySequence<byte> pending) => _decoder.Decode(ref pending, at, Readings));
        }
    }
}

using System.Buffers;

namespace Handspun.Gauges.Journal;

/// <summary>A stretch that is cut out of a running journal, to be kept for good.</summary>
public sealed record JournalCut
{
    /// <summary>How much before the first moment is copied too, so that a reader finds the start of a frame.</summary>
    public static readonly TimeSpan LeadIn = TimeSpan.FromSeconds(1);

    /// <summary>The files of the running journal, oldest first.</summary>
    public required IReadOnlyList<string> Segments { get; init; }

    /// <summary>The head of the new file.</summary>
    public required JournalHeader Header { get; init; }

    /// <summary>The first moment.</summary>
    public required TimeSpan From { get; init; }

    /// <summary>The last moment, included; <see cref="TimeSpan.MaxValue"/> for all there is.</summary>
    public TimeSpan To { get; init; } = TimeSpan.MaxValue;

    /// <summary>Why the capture ended.</summary>
    public required string Ending { get; init; }

    /// <summary>Writes the stretch into a file, which is whole on the disk when this returns and replaces one of the same name.</summary>
    /// <exception cref="JournalException">A running journal cannot be read.</exception>
    /// <exception cref="IOException">The disk does not take it.</exception>
    public void WriteTo(string destination)
    {
        var part = destination + ".part";
        File.Delete(part);
        using (var cut = JournalWriter.Create(part, Header with { From = From }))
        {
            var last = From;
            foreach (var entry in Segments.SelectMany(Read).Where(entry => entry.At >= From - LeadIn && entry.At <= To))
            {
                Copy(entry, cut);
                last = entry.At > last ? entry.At : last;
            }

            cut.AppendEvent(To == TimeSpan.MaxValue ? last : To, JournalEntry.CaptureEnded, Ending);
        }

        File.Move(part, destination, overwrite: true);
    }

    private static void Copy(JournalEntry entry, JournalWriter into)
    {
        if (entry is JournalEntry.Chunk chunk)
        {
            into.Append(chunk.At, new ReadOnlySequence<byte>(chunk.Bytes));
        }
        else if (entry is JournalEntry.Event happened)
        {
            into.AppendEvent(happened.At, happened.Name, happened.Detail);
        }
    }

    private static IEnumerable<JournalEntry> Read(string segment)
    {
        using var reader = JournalReader.Open(segment);
        foreach (var entry in reader.Entries())
        {
            yield return entry;
        }
    }
}

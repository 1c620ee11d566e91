using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Journal;

/// <summary>A stretch that is cut out of a running journal, to be kept for good.</summary>
public sealed record JournalCut
{
    /// <summary>How much before the first moment is copied too, or more where it takes more for a reader to find the start of a frame.</summary>
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

    /// <summary>Writes the stretch into a file, packed where its name ends in <c>.gz</c>, which is whole on the disk when this returns and replaces one of the same name.</summary>
    /// <exception cref="JournalException">A running journal cannot be read.</exception>
    /// <exception cref="ProfileException">The profile in the head does not hold.</exception>
    /// <exception cref="IOException">The disk does not take it.</exception>
    public void WriteTo(string destination)
    {
        var part = destination + ".cut";
        File.Delete(part);
        using (var cut = JournalWriter.Create(part, Header with { From = WholeMicroseconds(From) }))
        {
            var last = From;
            foreach (var entry in Stretch())
            {
                cut.Append(entry);
                last = entry.At > last ? entry.At : last;
            }

            cut.AppendEvent(To == TimeSpan.MaxValue ? last : To, JournalEntry.CaptureEnded, Ending);
        }

        if (destination.EndsWith(JournalFile.PackedEnding, StringComparison.Ordinal))
        {
            JournalFile.Pack(part, destination);
        }
        else
        {
            File.Move(part, destination, overwrite: true);
        }
    }

    // A reader passes the first frame over, for it may be the tail of one. So the stretch begins with the opening of the link,
    // or two chunks in which a frame ended before the lead-in: of the earlier one nothing may be there but its end.
    private IEnumerable<JournalEntry> Stretch()
    {
        var decoder = new EntryDecoder(ProfileReader.Read(Header.Profile, Header.ProfileText));
        var early = new List<JournalEntry>();
        var lastEnd = -1;
        JournalEntry? description = null;
        foreach (var entry in Segments.SelectMany(Read).TakeWhile(entry => entry.At <= To))
        {
            if (entry.At < From - LeadIn)
            {
                var before = decoder.Frames;
                decoder.Decode(entry, new List<Reading>());
                description = entry is JournalEntry.Event { Name: JournalEntry.ReportDescriptor } ? entry : description;
                if (entry is JournalEntry.Event { Name: JournalEntry.LinkOpened })
                {
                    description = null;
                    early.Clear();
                    lastEnd = -1;
                }
                else if (decoder.Frames > before)
                {
                    early.RemoveRange(0, Math.Max(0, lastEnd));
                    lastEnd = early.Count;
                }

                early.Add(entry);
                continue;
            }

            if (description is not null && !early.Contains(description))
            {
                yield return description;   // without it a HID gauge's reports cannot be decoded
            }

            description = null;
            foreach (var earlier in early)
            {
                yield return earlier;
            }

            early.Clear();
            yield return entry;
        }
    }

    // Journals keep whole microseconds. Rounded up, so that no reading from before the first moment is taken in.
    private static TimeSpan WholeMicroseconds(TimeSpan at) => TimeSpan.FromMicroseconds(Math.Ceiling(at.TotalMicroseconds));

    private static IEnumerable<JournalEntry> Read(string segment)
    {
        if (JournalReader.HoldsNothing(segment))
        {
            yield break;
        }

        using var reader = JournalReader.Open(segment);
        foreach (var entry in reader.Entries())
        {
            yield return entry;
        }
    }
}

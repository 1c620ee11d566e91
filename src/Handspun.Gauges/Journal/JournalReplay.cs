using Handspun.Gauges.Decoding;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Journal;

/// <summary>The readings of a journal, decoded again from its bytes.</summary>
/// <param name="Header">What the journal is of.</param>
/// <param name="Readings">The readings of the capture, lead-in left out.</param>
/// <param name="Marks">When the reference mark passed the pointer, by the mechanic's word.</param>
/// <param name="Unreadable">Frames of the capture that held no reading.</param>
/// <param name="Torn">Whether the last line was torn off.</param>
/// <param name="Ended">Why the capture ended; null where the journal does not say.</param>
public sealed record JournalReplay(JournalHeader Header, IReadOnlyList<Reading> Readings, IReadOnlyList<TimeSpan> Marks, long Unreadable, bool Torn, string? Ended)
{
    /// <summary>When index pulses came, bouncing left out.</summary>
    public IReadOnlyList<TimeSpan> Pulses { get; init; } = [];

    /// <summary>Turns of the shaft from one pulse to the next.</summary>
    public double TurnsPerPulse { get; init; } = 1;

    /// <summary>The time from one reading to the next by the gauge's own clock; null where none is known.</summary>
    public TimeSpan? SendsEvery { get; init; }

    /// <summary>How often the gauge changed the unit that it names; the readings are right on both sides of a switch.</summary>
    public long UnitSwitches { get; init; }

    /// <summary>Decodes a journal with the profile that stands in it.</summary>
    /// <exception cref="JournalException">The journal cannot be read.</exception>
    /// <exception cref="ProfileException">Its profile does not hold.</exception>
    public static JournalReplay Read(string path)
    {
        using var journal = JournalReader.Open(path);
        var profile = ProfileReader.Read(journal.Header.Profile, journal.Header.ProfileText);
        var decoder = new EntryDecoder(profile);
        var from = journal.Header.From ?? TimeSpan.MinValue;
        var readings = new List<Reading>();
        var marks = new List<TimeSpan>();
        var pulses = new List<TimeSpan>();
        var gate = new IndexGate(profile.Index?.Debounce ?? TimeSpan.Zero);
        var inTheBytes = profile.Index is { IsInTheBytes: true };
        var unreadable = 0L;
        var unitSwitches = 0L;
        string? ended = null;
        foreach (var entry in journal.Entries())
        {
            var before = (decoder.Unreadable, decoder.UnitSwitches);
            decoder.Decode(entry, readings);
            var told = entry is JournalEntry.Event { Name: JournalEntry.Index } ? [entry.At] : inTheBytes ? decoder.Pulses : [];
            pulses.AddRange(told.Where(gate.Admits));

            if (entry.At < from)
            {
                readings.Clear();
                pulses.Clear();
            }
            else
            {
                unreadable += decoder.Unreadable - before.Unreadable;
                unitSwitches += decoder.UnitSwitches - before.UnitSwitches;
                marks.AddRange(entry is JournalEntry.Event { Name: JournalEntry.Mark } ? [entry.At] : Array.Empty<TimeSpan>());
            }

            if (entry is JournalEntry.Event { Name: JournalEntry.CaptureEnded } end)
            {
                ended = end.Detail;
            }
        }

        return new(journal.Header, readings, marks, unreadable, journal.Torn, ended) { Pulses = pulses, TurnsPerPulse = profile.Index?.Turns ?? 1, SendsEvery = profile.SendsEvery, UnitSwitches = unitSwitches };
    }
}

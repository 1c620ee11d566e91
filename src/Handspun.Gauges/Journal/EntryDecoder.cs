using System.Buffers;
using Handspun.Gauges.Decoding;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Journal;

/// <summary>Decodes the entries of a journal one after another, as they were decoded when they came in.</summary>
internal sealed class EntryDecoder(GaugeProfile profile)
{
    private readonly ReadingDecoder _decoder = new(profile);
    private byte[] _left = [];

    /// <summary>Frames so far, whatever they held.</summary>
    public long Frames => _decoder.Frames;

    /// <summary>Frames so far that held no reading.</summary>
    public long Unreadable => _decoder.Unreadable;

    /// <summary>How often the gauge changed the unit that it names.</summary>
    public long UnitSwitches => _decoder.UnitSwitches;

    /// <summary>Whether the gauge has named its unit.</summary>
    public bool NamesUnit => _decoder.StatedUnit is not null;

    /// <summary>When the index passed, by the frames of the latest entry.</summary>
    public IReadOnlyList<TimeSpan> Pulses => _decoder.Pulses;

    public void Decode(JournalEntry entry, ICollection<Reading> readings)
    {
        if (entry is JournalEntry.Chunk chunk)
        {
            var pending = new ReadOnlySequence<byte>([.. _left, .. chunk.Bytes.Span]);
            _decoder.Decode(ref pending, chunk.At, readings);
            _left = pending.ToArray();
            return;
        }

        // Whatever happened, so much time had gone by without a byte.
        var held = new ReadOnlySequence<byte>(_left);
        _decoder.EndAfterSilence(ref held, entry.At, readings);
        _left = held.IsEmpty ? [] : _left;
        if (entry is JournalEntry.Event { Name: JournalEntry.LinkOpened })
        {
            _left = [];
            _decoder.LinkOpened(entry.At);
        }
        else if (entry is JournalEntry.Event happened && happened.IsDescription(out var descriptor))
        {
            _decoder.LinkDescribed(descriptor);
        }
    }
}

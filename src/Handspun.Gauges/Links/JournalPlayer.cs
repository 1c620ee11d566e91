using Handspun.Gauges.Journal;

namespace Handspun.Gauges.Links;

/// <summary>Plays a journal once, from its first line to its last; where the gauge's port was lost it pauses until the way is opened again.</summary>
internal sealed class JournalPlayer(GaugePort.Replay port, TimeProvider time)
{
    private List<JournalEntry>? _entries;
    private long _startedAt;
    private int _next;

    /// <summary>An index pulse that stands in the journal beside the bytes.</summary>
    public event Action<string>? Pulse;

    /// <summary>What a HID gauge said of its reports when the port was opened that is played next; empty of every other gauge.</summary>
    public ReadOnlyMemory<byte> ReportDescriptor { get; private set; }

    /// <summary>Gets ready to play on.</summary>
    /// <exception cref="LinkUnavailableException">There is no such journal, or it has been played.</exception>
    public void Open()
    {
        if (_entries is null)
        {
            _entries = Read();
            _startedAt = time.GetTimestamp();
        }

        if (_next >= _entries.Count)
        {
            throw new LinkUnavailableException(LinkFault.Absent, $"The journal {port.File} has been played to its end: start again to play it once more.");
        }

        foreach (var happened in _entries.Skip(_next).TakeWhile(entry => entry is JournalEntry.Event).Cast<JournalEntry.Event>())
        {
            ReportDescriptor = happened.IsDescription(out var descriptor) ? descriptor : ReportDescriptor;
        }
    }

    /// <summary>Waits until the next bytes are due; none where the port was lost there, or the journal ends.</summary>
    public async ValueTask<ReadOnlyMemory<byte>> NextAsync(CancellationToken cancellationToken)
    {
        while (_next < _entries!.Count)
        {
            var entry = _entries[_next];
            if (port.Pace.Take(entry.At - _entries[0].At) - time.GetElapsedTime(_startedAt) is { Ticks: > 0 } early)
            {
                await Task.Delay(early, time, cancellationToken);
            }

            _next++;
            switch (entry)
            {
                case JournalEntry.Chunk { Bytes.IsEmpty: false } chunk:
                    return chunk.Bytes;
                case JournalEntry.Event { Name: JournalEntry.LinkLost }:
                    return default;
                case JournalEntry.Event { Name: JournalEntry.Index, Detail: var source }:
                    Pulse?.Invoke(source ?? JournalEntry.Index);
                    break;
            }
        }

        return default;
    }

    private List<JournalEntry> Read()
    {
        try
        {
            using var journal = JournalReader.Open(port.File);
            return [.. journal.Entries()];
        }
        catch (JournalException e)
        {
            throw new LinkUnavailableException(LinkFault.NotAPort, $"{port.File} cannot be replayed: {e.Message}", e);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new LinkUnavailableException(LinkFault.Absent, $"There is no journal {port.File}: give the file of a record or of a gauge's running journal.", e);
        }
        catch (UnauthorizedAccessException e)
        {
            throw new LinkUnavailableException(LinkFault.NotPermitted, $"The journal {port.File} may not be read by user '{Environment.UserName}': mend its rights.", e);
        }
    }
}

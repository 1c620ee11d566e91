using System.Buffers;
using System.Globalization;

namespace Handspun.Gauges.Journal;

/// <summary>A gauge's running journal: files of a few minutes each, of which the old ones are let go.</summary>
/// <remarks>
/// Every byte is here before it is decoded. A capture is cut out of it when it ends; while one is running the journal is
/// held and nothing is let go. Appending and cutting may happen on different threads.
/// </remarks>
public sealed class RollingJournal : IDisposable
{
    private static readonly TimeSpan SegmentLength = TimeSpan.FromMinutes(5);
    private const int SegmentsKept = 12;

    private readonly Lock _lock = new();
    private readonly string _folder;
    private readonly JournalHeader _header;
    private JournalWriter? _writer;
    private TimeSpan _segmentStart;
    private int _segment;
    private int _holds;
    private string? _description;   // what a HID gauge says of its reports: a file that lacks it cannot be decoded

    /// <summary>A running journal in a folder of its own, which is made if it is not there.</summary>
    /// <exception cref="JournalException">The folder cannot be made.</exception>
    public RollingJournal(string folder, JournalHeader header)
    {
        (_folder, _header) = (folder, header);
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw NotTaken(e);
        }
    }

    /// <summary>What stands at the head of each file.</summary>
    public JournalHeader Header => _header;

    /// <summary>Appends bytes as they came in.</summary>
    /// <exception cref="JournalException">The disk does not take them.</exception>
    public void Append(TimeSpan at, in ReadOnlySequence<byte> bytes)
    {
        try
        {
            lock (_lock)
            {
                Segment(at).Append(at, bytes);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw NotTaken(e);
        }
    }

    /// <summary>Appends something that happened.</summary>
    /// <exception cref="JournalException">The disk does not take it.</exception>
    public void AppendEvent(TimeSpan at, string name, string? detail = null)
    {
        try
        {
            lock (_lock)
            {
                Segment(at).AppendEvent(at, name, detail);
                _description = name switch
                {
                    JournalEntry.ReportDescriptor => detail,
                    JournalEntry.LinkOpened => null,
                    _ => _description,
                };
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw NotTaken(e);
        }
    }

    /// <summary>Waits until all that was appended is on the disk; does not hold the appending up.</summary>
    /// <exception cref="JournalException">The disk does not take it.</exception>
    public void Sync()
    {
        JournalWriter? writer;
        lock (_lock)
        {
            writer = _writer;
        }

        try
        {
            writer?.Sync();
        }
        catch (ObjectDisposedException)
        {
            // The segment was closed meanwhile, and closing syncs it.
        }
        catch (IOException e)
        {
            throw NotTaken(e);
        }
    }

    /// <summary>Keeps every file until the hold is disposed.</summary>
    public IDisposable Hold()
    {
        lock (_lock)
        {
            _holds++;
        }

        return new Held(this);
    }

    /// <summary>The files in which the journal lies, oldest first; the last may still be growing.</summary>
    public IReadOnlyList<string> Segments()
    {
        lock (_lock)
        {
            return SegmentsOf(_folder, _header.Zero);
        }
    }

    /// <summary>The files of the journal whose times count from a given moment; also one that another run of the station left behind.</summary>
    public static IReadOnlyList<string> SegmentsOf(string folder, DateTimeOffset zero) => Directory.Exists(folder)
        ? [.. Directory.EnumerateFiles(folder, Prefix(zero) + "-*.jsonl").Where(file => !JournalReader.HoldsNothing(file)).Order(StringComparer.Ordinal)]
        : [];

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
        {
            _writer?.Dispose();
            _writer = null;
        }
    }

    private JournalException NotTaken(Exception why) =>
        new($"The journal in {_folder} cannot be written ({why.Message}): free some disk space or mend the folder's rights; listening goes on by itself then.", why);

    private static string Prefix(DateTimeOffset zero) => zero.UtcDateTime.ToString("yyyyMMdd'T'HHmmssfff", CultureInfo.InvariantCulture);

    private JournalWriter Segment(TimeSpan at)
    {
        if (_writer is null || at - _segmentStart >= SegmentLength)
        {
            _writer?.Dispose();
            _writer = JournalWriter.Create(Path.Combine(_folder, string.Create(CultureInfo.InvariantCulture, $"{Prefix(_header.Zero)}-{_segment++:D6}.jsonl")), _header);
            _segmentStart = at;
            if (_description is not null)
            {
                _writer.AppendEvent(at, JournalEntry.ReportDescriptor, _description);
            }

            LetGo();
        }

        return _writer;
    }

    private void LetGo()
    {
        if (_holds > 0)
        {
            return;
        }

        foreach (var old in Directory.EnumerateFiles(_folder, "*.jsonl").Order(StringComparer.Ordinal).SkipLast(SegmentsKept))
        {
            try
            {
                File.Delete(old);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // Somebody reads it just now, or it is another user's: it costs room and no reading; the next roll tries again.
            }
        }
    }

    private sealed class Held(RollingJournal journal) : IDisposable
    {
        private int _released;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref _released, 1) == 0)
            {
                lock (journal._lock)
                {
                    journal._holds--;
                }
            }
        }
    }
}

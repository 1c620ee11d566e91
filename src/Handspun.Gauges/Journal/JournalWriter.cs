using System.Buffers;

namespace Handspun.Gauges.Journal;

/// <summary>Appends to one journal file. What was appended is with the operating system at once, and on the disk after <see cref="Sync"/>.</summary>
/// <remarks>One writer for a file; <see cref="Sync"/> may be called from another thread and does not hold the appending up.</remarks>
public sealed class JournalWriter : IDisposable
{
    private readonly Microsoft.Win32.SafeHandles.SafeFileHandle _file;
    private readonly ArrayBufferWriter<byte> _line = new(256);
    private int _unsynced;

    private JournalWriter(Microsoft.Win32.SafeHandles.SafeFileHandle file) => _file = file;

    /// <summary>Bytes written so far.</summary>
    public long Length { get; private set; }

    /// <summary>Makes a new journal.</summary>
    /// <exception cref="IOException">A file of that name exists, or the disk does not take it.</exception>
    public static JournalWriter Create(string path, JournalHeader header)
    {
        var writer = new JournalWriter(File.OpenHandle(path, FileMode.CreateNew, FileAccess.Write, FileShare.Read));
        try
        {
            JournalLines.WriteHeader(writer._line, header);
            writer.Write();
            return writer;
        }
        catch
        {
            writer._file.Dispose();
            File.Delete(path);   // a file without its first line is no journal
            throw;
        }
    }

    /// <summary>Appends bytes as they came in.</summary>
    public void Append(TimeSpan at, in ReadOnlySequence<byte> bytes)
    {
        JournalLines.WriteChunk(_line, at, bytes);
        Write();
    }

    /// <summary>Appends something that happened.</summary>
    public void AppendEvent(TimeSpan at, string name, string? detail = null)
    {
        JournalLines.WriteEvent(_line, at, name, detail);
        Write();
    }

    /// <summary>Appends an entry of another journal.</summary>
    public void Append(JournalEntry entry)
    {
        if (entry is JournalEntry.Chunk chunk)
        {
            Append(chunk.At, new ReadOnlySequence<byte>(chunk.Bytes));
        }
        else if (entry is JournalEntry.Event happened)
        {
            AppendEvent(happened.At, happened.Name, happened.Detail);
        }
    }

    /// <summary>Waits until all that was appended is on the disk.</summary>
    public void Sync()
    {
        if (Interlocked.Exchange(ref _unsynced, 0) == 1)
        {
            try
            {
                RandomAccess.FlushToDisk(_file);
            }
            catch
            {
                Volatile.Write(ref _unsynced, 1);
                throw;
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!_file.IsClosed)
        {
            try
            {
                Sync();
            }
            finally
            {
                _file.Dispose();
            }
        }
    }

    private void Write()
    {
        try
        {
            RandomAccess.Write(_file, _line.WrittenSpan, Length);
            Length += _line.WrittenCount;
            Volatile.Write(ref _unsynced, 1);
        }
        finally
        {
            _line.ResetWrittenCount();   // a line that the disk refused must not come in with the next one
        }
    }
}

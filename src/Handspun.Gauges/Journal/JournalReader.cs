using System.Text;

namespace Handspun.Gauges.Journal;

/// <summary>A journal, or a line of it, that cannot be read.</summary>
public sealed class JournalException(string message, Exception? inner = null) : Exception(message, inner);

/// <summary>Reads a journal, also one that is still being written.</summary>
/// <remarks>A last line that was torn off by a crash is not an error: it is passed over and told by <see cref="Torn"/>.</remarks>
public sealed class JournalReader : IDisposable
{
    private readonly StreamReader _text;
    private readonly StringBuilder _letters = new();
    private readonly string _path;
    private int _line = 1;

    private JournalReader(StreamReader text, string path, JournalHeader header) => (_text, _path, Header) = (text, path, header);

    /// <summary>The first line.</summary>
    public JournalHeader Header { get; }

    /// <summary>Whether the last line was torn off. Known when all entries were read.</summary>
    public bool Torn { get; private set; }

    /// <summary>Opens a journal.</summary>
    /// <exception cref="JournalException">Its first line is not a journal's.</exception>
    public static JournalReader Open(string path)
    {
        var text = new StreamReader(JournalFile.OpenText(path), Encoding.UTF8);
        try
        {
            return new(text, path, JournalLines.ReadHeader(text.ReadLine() ?? ""));
        }
        catch (FormatException e)
        {
            text.Dispose();
            throw new JournalException($"{Path.GetFileName(path)}, line 1: {e.Message}.", e);
        }
        catch (InvalidDataException e)
        {
            text.Dispose();
            throw Damaged(path, e);
        }
    }

    /// <summary>The first line of a journal.</summary>
    /// <exception cref="JournalException">It is not a journal's.</exception>
    public static JournalHeader HeadOf(string path)
    {
        using var journal = Open(path);
        return journal.Header;
    }

    /// <summary>The entries that have not been read yet, in order.</summary>
    /// <exception cref="JournalException">A line in the middle is not an entry.</exception>
    public IEnumerable<JournalEntry> Entries()
    {
        while (Line(out var whole) is { } line)
        {
            _line++;
            JournalEntry entry;
            try
            {
                entry = JournalLines.ReadEntry(line);
            }
            catch (FormatException e)
            {
                Torn = !whole || _text.Peek() < 0;
                if (Torn)
                {
                    yield break;
                }

                throw new JournalException($"{Path.GetFileName(_path)}, line {_line}: {e.Message}.", e);
            }

            yield return entry;
        }
    }

    /// <summary>Whether a file has not even a whole first line: a crash came right after it was made, and it holds nothing.</summary>
    internal static bool HoldsNothing(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        int next;
        do
        {
            next = file.ReadByte();
        }
        while (next is not (-1 or '\n'));

        return next < 0;
    }

    private string? Line(out bool whole)
    {
        try
        {
            return NextLine(out whole);
        }
        catch (InvalidDataException e)
        {
            throw Damaged(_path, e);
        }
    }

    private static JournalException Damaged(string path, InvalidDataException why) =>
        new($"{Path.GetFileName(path)} is damaged and cannot be unpacked: take it from a backup.", why);

    // A line without its end is told apart: the writer may be at it right now, and what follows then is no next line.
    private string? NextLine(out bool whole)
    {
        _letters.Clear();
        while (_text.Read() is >= 0 and var next)
        {
            if (next == '\n')
            {
                whole = true;
                return _letters.ToString();
            }

            _letters.Append((char)next);
        }

        whole = false;
        return _letters.Length > 0 ? _letters.ToString() : null;
    }

    /// <inheritdoc/>
    public void Dispose() => _text.Dispose();
}

using System.Text;

namespace Handspun.Gauges.Decoding.Text;

/// <summary>Text of the shape of a pattern, for gauges whose frames are laid out in no simpler way.</summary>
/// <param name="grammar">Numbers, units and tokens.</param>
/// <param name="pattern">The pattern.</param>
public sealed class TextPatternDecoding(TextGrammar grammar, TextPattern pattern) : IFrameDecoding
{
    /// <inheritdoc/>
    public FrameResult Decode(ReadOnlySpan<byte> frame)
    {
        if (grammar.IsToken(frame, out var told))
        {
            return told;
        }

        Span<char> letters = stackalloc char[frame.Length];
        Encoding.Latin1.GetChars(frame, letters);
        return pattern.TryMatch(letters, out var find) ? Read(find) : FrameResult.Rejected(FrameFault.NoMatch, 0);
    }

    private FrameResult Read(in PatternFind find)
    {
        Span<byte> bytes = stackalloc byte[find.Value.Length + find.Unit.Length + find.Flag.Length];
        var digits = Bytes(find.Value, ref bytes);
        var unitWord = Bytes(find.Unit, ref bytes);
        var flagWord = Bytes(find.Flag, ref bytes);
        var words = default(TextWords);
        if (grammar.Tokens.Find(flagWord) is { } token)
        {
            words.Add(token);
        }

        if (!unitWord.IsEmpty)
        {
            if (!grammar.Units.TryRead(unitWord, out var unit))
            {
                return FrameResult.Rejected(FrameFault.UnknownUnit, 0);
            }

            words.Unit = unit;
        }

        if (find.Value.IsEmpty && (words.Flags != Readings.GaugeFlags.None || words.IsIndex))
        {
            return words.WithoutValue();
        }

        return grammar.Number.TryRead(digits, out var value, out var used) && used == digits.Length
            ? words.Of(find.Sign is "-" ? -value : value)
            : FrameResult.Rejected(FrameFault.NotANumber, 0);
    }

    private static ReadOnlySpan<byte> Bytes(ReadOnlySpan<char> letters, ref Span<byte> room)
    {
        Encoding.Latin1.GetBytes(letters, room);
        var bytes = Blanks.Trim(room[..letters.Length]);
        room = room[letters.Length..];
        return bytes;
    }
}

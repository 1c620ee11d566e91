namespace Handspun.Gauges.Decoding.Text;

/// <summary>Free text: an optional beginning, an optional sign, a number, then in any order an optional unit and any of the gauge's tokens; blanks between.</summary>
/// <remarks>Nothing else is taken for a reading. A frame with anything more is rejected whole.</remarks>
/// <param name="grammar">Numbers, units and tokens.</param>
/// <param name="before">What stands before the number; may be empty.</param>
public sealed class TextLineDecoding(TextGrammar grammar, ReadOnlyMemory<byte> before) : IFrameDecoding
{
    /// <inheritdoc/>
    public FrameResult Decode(ReadOnlySpan<byte> frame)
    {
        if (grammar.IsToken(frame, out var told))
        {
            return told;
        }

        if (!frame.StartsWith(before.Span))
        {
            return FrameResult.Rejected(FrameFault.NoMatch, 0);
        }

        var start = before.Length;
        if (!grammar.Number.TryRead(frame[start..], out var value, out var used))
        {
            return FrameResult.Rejected(FrameFault.NotANumber, start + used);
        }

        start = Blanks.Skip(frame, start + used);
        var words = default(TextWords);
        return TakeWords(frame[start..], ref words) ? words.Of(value) : FrameResult.Rejected(FrameFault.UnknownUnit, start);
    }

    private bool TakeWords(ReadOnlySpan<byte> rest, ref TextWords words)
    {
        while (!rest.IsEmpty)
        {
            var end = rest.IndexOfAny((byte)' ', (byte)'\t');
            var word = end < 0 ? rest : rest[..end];
            if (grammar.Tokens.Find(word) is { } token)
            {
                words.Add(token);
            }
            else if (words.Unit is null && grammar.Units.TryRead(word, out var unit))
            {
                words.Unit = unit;
            }
            else
            {
                return false;
            }

            rest = rest[Blanks.Skip(rest, word.Length)..];
        }

        return true;
    }
}

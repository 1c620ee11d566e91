using System.Buffers;
using System.Buffers.Text;
using System.Text;
using Handspun.Gauges.Framing;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding;

/// <summary>Lines of text: an optional sign, a decimal number, an optional unit (<c>mm</c>, <c>in</c>, <c>inch</c> or <c>"</c>), blanks anywhere between.</summary>
/// <remarks>Nothing else is taken for a reading: no exponent, no comma, no words. A line with anything more is rejected whole.</remarks>
/// <param name="unit">The unit of a line that names none.</param>
/// <param name="longest">Bytes in the longest line.</param>
/// <param name="inverted">Whether the gauge counts plunger in as negative.</param>
public sealed class TextLineCodec(GaugeUnit unit, int longest, bool inverted) : IGaugeCodec
{
    private readonly LineFraming _framing = new(longest);

    /// <inheritdoc/>
    public bool TryTakeFrame(ref ReadOnlySequence<byte> pending, out FrameResult frame)
    {
        switch (_framing.TryTake(ref pending, out var line))
        {
            case LineFraming.Cut.Line:
                frame = Decode(line);
                return true;
            case LineFraming.Cut.TooLong:
                frame = FrameResult.Rejected(FrameFault.TooLong, longest);
                return true;
            default:
                frame = default;
                return false;
        }
    }

    private FrameResult Decode(in ReadOnlySequence<byte> line)
    {
        if (line.IsSingleSegment)
        {
            return Decode(line.FirstSpan);
        }

        // Only a line that straddles two chunks is copied; framing keeps it short.
        Span<byte> copy = stackalloc byte[(int)line.Length];
        line.CopyTo(copy);
        return Decode(copy);
    }

    private FrameResult Decode(ReadOnlySpan<byte> text)
    {
        var at = SkipBlanks(text, 0);
        var negative = false;
        if (at < text.Length && text[at] is (byte)'+' or (byte)'-')
        {
            negative = text[at] == '-';
            at = SkipBlanks(text, at + 1);
        }

        var digits = NumberLength(text[at..]);
        if (digits == 0 || !Utf8Parser.TryParse(text.Slice(at, digits), out double value, out var used) || used != digits)
        {
            return FrameResult.Rejected(FrameFault.NotANumber, at);
        }

        at = SkipBlanks(text, at + digits);
        if (!TryReadUnit(text[at..], out var stated))
        {
            return FrameResult.Rejected(FrameFault.UnknownUnit, at);
        }

        return FrameResult.Of(negative != inverted ? -value : value, stated);
    }

    private bool TryReadUnit(ReadOnlySpan<byte> rest, out GaugeUnit stated)
    {
        rest = rest.TrimEnd(" \t"u8);
        stated = unit;
        if (rest.IsEmpty)
        {
            return true;
        }

        if (Ascii.EqualsIgnoreCase(rest, "mm"u8))
        {
            stated = GaugeUnit.Millimetre;
            return true;
        }

        stated = GaugeUnit.Inch;
        return Ascii.EqualsIgnoreCase(rest, "in"u8) || Ascii.EqualsIgnoreCase(rest, "inch"u8) || rest.SequenceEqual("\""u8);
    }

    private static int SkipBlanks(ReadOnlySpan<byte> text, int at)
    {
        while (at < text.Length && text[at] is (byte)' ' or (byte)'\t')
        {
            at++;
        }

        return at;
    }

    // Digits with at most one point, and a digit on at least one side of it.
    private static int NumberLength(ReadOnlySpan<byte> text)
    {
        var length = 0;
        var digits = 0;
        var points = 0;
        while (length < text.Length)
        {
            if (char.IsAsciiDigit((char)text[length]))
            {
                digits++;
            }
            else if (text[length] != '.' || ++points > 1)
            {
                break;
            }

            length++;
        }

        return digits > 0 && points <= 1 ? length : 0;
    }
}

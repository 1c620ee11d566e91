using System.Buffers.Text;

namespace Handspun.Gauges.Decoding.Text;

/// <summary>How a gauge writes its numbers: digits with at most one point among them, and a sign before.</summary>
/// <remarks>With the exponent allowed it takes every form of IEEE Std 488.2, section 7.7.2 (NRf), and so 8.7.2 to 8.7.4 (NR1, NR2, NR3) too.</remarks>
/// <param name="Exponent">Whether a power of ten may follow, such as <c>E-03</c>.</param>
/// <param name="Comma">Whether a comma stands for the point.</param>
public readonly record struct NumberForm(bool Exponent, bool Comma)
{
    private const int MostDigits = 256;

    /// <summary>Reads the number that stands at the front of a text, blanks before it and behind its sign passed over.</summary>
    /// <param name="text">The text.</param>
    /// <param name="value">The number; finite.</param>
    /// <param name="used">Bytes up to its end; on failure the byte at which no number begins.</param>
    public bool TryRead(ReadOnlySpan<byte> text, out double value, out int used)
    {
        used = Blanks.Skip(text, 0);
        var negative = false;
        if (used < text.Length && text[used] is (byte)'+' or (byte)'-')
        {
            negative = text[used] == '-';
            used = Blanks.Skip(text, used + 1);
        }

        var rest = text[used..];
        var length = Digits(rest);
        if (length == 0 || !TryParse(rest[..length], out value))
        {
            value = 0;
            return false;
        }

        if (Exponent)
        {
            length += Power(rest[length..], out var power);
            value = power == 0 ? value : Raised(rest[..length], value, power);
        }

        value = negative ? -value : value;
        used += length;
        return double.IsFinite(value);
    }

    // The library reads the digits and the power at one go, which rounds once; blanks about the E have to go before.
    private double Raised(ReadOnlySpan<byte> whole, double mantissa, int power)
    {
        Span<byte> tight = stackalloc byte[Math.Min(whole.Length, MostDigits)];
        var length = 0;
        foreach (var letter in whole[..tight.Length])
        {
            if (letter is not ((byte)' ' or (byte)'\t'))
            {
                tight[length++] = Comma && letter == ',' ? (byte)'.' : letter;
            }
        }

        return Utf8Parser.TryParse(tight[..length], out double value, out var used) && used == length ? value : mantissa * Math.Pow(10, power);
    }

    private bool TryParse(ReadOnlySpan<byte> digits, out double value)
    {
        if (!Comma)
        {
            return Utf8Parser.TryParse(digits, out value, out var used) && used == digits.Length;
        }

        Span<byte> pointed = stackalloc byte[Math.Min(digits.Length, MostDigits)];
        digits[..pointed.Length].CopyTo(pointed);
        pointed.Replace((byte)',', (byte)'.');
        return Utf8Parser.TryParse(pointed, out value, out var all) && all == digits.Length;
    }

    // Digits with at most one point, and a digit on at least one side of it.
    private int Digits(ReadOnlySpan<byte> text)
    {
        var point = Comma ? (byte)',' : (byte)'.';
        var (length, digits, points) = (0, 0, 0);
        while (length < text.Length)
        {
            if (char.IsAsciiDigit((char)text[length]))
            {
                digits++;
            }
            else if (text[length] != point || ++points > 1)
            {
                break;
            }

            length++;
        }

        return digits > 0 && points <= 1 ? length : 0;
    }

    // An E, a sign, digits; blanks about the E. Nothing where it is not whole.
    private static int Power(ReadOnlySpan<byte> text, out int power)
    {
        power = 0;
        var at = Blanks.Skip(text, 0);
        if (at >= text.Length || text[at] is not ((byte)'E' or (byte)'e'))
        {
            return 0;
        }

        at = Blanks.Skip(text, at + 1);
        return at < text.Length && Utf8Parser.TryParse(text[at..], out power, out var used) ? at + used : 0;
    }
}

namespace Handspun.Gauges.Decoding.Binary;

/// <summary>How bits are counted through a frame.</summary>
public enum BitOrder
{
    /// <summary>From the lowest bit of the first byte; a field's first bit is its lowest. As a little-endian number lies.</summary>
    LowFirst,

    /// <summary>From the highest bit of the first byte; a field's first bit is its highest. As a big-endian number lies.</summary>
    HighFirst,

    /// <summary>From the lowest bit of the first pair of bytes, of which the high one comes first: 16 to a register.</summary>
    RegisterLowFirst,
}

/// <summary>Bits of a frame, counted through all its bytes from 0.</summary>
internal static class Bits
{
    private const int ByteBits = 8;
    private const int FieldBits = 32;

    /// <summary>One bit; false beyond the frame.</summary>
    public static bool At(ReadOnlySpan<byte> frame, int bit, BitOrder order)
    {
        var at = order == BitOrder.RegisterLowFirst ? bit / ByteBits ^ 1 : bit / ByteBits;
        var shift = order == BitOrder.HighFirst ? ByteBits - 1 - bit % ByteBits : bit % ByteBits;
        return at < frame.Length && (frame[at] >> shift & 1) != 0;
    }

    /// <summary>A field of 1 to 32 bits that lies within the frame, without a sign; counted low or high first.</summary>
    public static uint Field(ReadOnlySpan<byte> frame, int from, int width, BitOrder order)
    {
        var (first, last) = (from / ByteBits, (from + width - 1) / ByteBits);
        ulong whole = 0;
        for (var at = first; at <= last; at++)
        {
            whole = order == BitOrder.LowFirst ? whole | (ulong)frame[at] << (ByteBits * (at - first)) : whole << ByteBits | frame[at];
        }

        var shift = order == BitOrder.LowFirst ? from % ByteBits : (last + 1) * ByteBits - from - width;
        return (uint)(whole >> shift & (1UL << width) - 1);
    }

    /// <summary>A field of 1 to 32 bits, taken as two's complement.</summary>
    public static int Signed(uint field, int width) => (int)(field << (FieldBits - width)) >> (FieldBits - width);
}

using System.Buffers.Binary;

namespace Handspun.Gauges.Hid;

/// <summary>One item of a report descriptor (USB HID 1.11, sections 6.2.2.2 and 6.2.2.3).</summary>
/// <param name="Prefix">Tag and type: the first byte without its two size bits; <see cref="Long"/> for a long item, of which no meaning is defined.</param>
/// <param name="Data">The data, not sign extended.</param>
/// <param name="Size">Bytes of data: 0, 1, 2 or 4.</param>
internal readonly record struct DescriptorItem(byte Prefix, uint Data, int Size)
{
    public const byte Long = 0xFC;

    public int Signed => Size switch
    {
        1 => (sbyte)Data,
        2 => (short)Data,
        _ => (int)Data,
    };

    /// <summary>Takes the next item off the front of what is left.</summary>
    /// <returns>False where it is cut off.</returns>
    public static bool TryTake(ref ReadOnlySpan<byte> left, out DescriptorItem item)
    {
        const byte longPrefix = 0xFE;
        item = default;
        var head = left[0] == longPrefix ? 3 : 1;
        var size = left[0] != longPrefix ? (left[0] & 3) == 3 ? 4 : left[0] & 3
            : left.Length > 1 ? left[1] : byte.MaxValue;
        if (left.Length < head + size)
        {
            return false;
        }

        var data = left.Slice(head, size);
        item = head == 3 ? new(Long, 0, 0) : new((byte)(left[0] & ~3), size switch
        {
            0 => 0,
            1 => data[0],
            2 => BinaryPrimitives.ReadUInt16LittleEndian(data),
            _ => BinaryPrimitives.ReadUInt32LittleEndian(data),
        }, size);
        left = left[(head + size)..];
        return true;
    }
}

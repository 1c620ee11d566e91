using System.Buffers.Binary;
using System.Globalization;

namespace Handspun.Simulation.Speech;

/// <summary>Gauges that send binary frames.</summary>
internal static class BinarySpeech
{
    /// <summary>0xAA; sign and unit; three bytes of digits; point and state; exclusive or of all before.</summary>
    public static byte[] PackedNibbles(Shown shown)
    {
        var counts = shown.Counts(0.001, 0.00005) * (shown.Inch ? 5 : 1);
        var digits = Convert.FromHexString(Math.Abs(counts).ToString("000000", CultureInfo.InvariantCulture));
        byte[] frame =
        [
            0xAA,
            (byte)((counts < 0 ? 0x80 : 0) | (shown.Inch ? 1 : 0)),
            .. digits,
            (byte)((shown.Inch ? 0x50 : 0x30) | (shown.BatteryLow ? 1 : 0)),
        ];
        return [.. frame, frame.Aggregate((all, one) => (byte)(all ^ one))];
    }

    /// <summary>Three bytes, lowest first: 20 bits of value, bit 20 the sign, bit 22 a low battery, bit 23 inches.</summary>
    public static byte[] ThreeBytes(Shown shown)
    {
        var counts = shown.Counts(0.001, 0.00005);
        var word = Math.Abs(counts) | (counts < 0 ? 1 << 20 : 0) | (shown.BatteryLow ? 1 << 22 : 0) | (shown.Inch ? 1 << 23 : 0);
        return [(byte)word, (byte)(word >> 8), (byte)(word >> 16)];
    }

    /// <summary>0xA5; how many bytes of content come; state; 32 bits of value, highest byte first; sum of all before.</summary>
    public static byte[] Counted(Shown shown)
    {
        byte[] frame = [0xA5, 5, (byte)((shown.BatteryLow ? 1 : 0) | (shown.Inch ? 2 : 0)), 0, 0, 0, 0];
        BinaryPrimitives.WriteInt32BigEndian(frame.AsSpan(3), shown.Counts(0.0001, 0.000005));
        return [.. frame, (byte)frame.Sum(one => one)];
    }
}

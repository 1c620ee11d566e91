namespace Handspun.Gauges.Framing;

/// <summary>The cyclic redundancy check CRC-16/MODBUS: polynomial 0x8005 reflected, start value 0xFFFF, no final exclusive or.</summary>
/// <remarks>Modbus over Serial Line V1.02, appendix B; the low byte goes over the wire first.</remarks>
public static class Crc16
{
    private const ushort Reflected = 0xA001;
    private static readonly ushort[] Table = [.. Enumerable.Range(0, 256).Select(OfByte)];

    /// <summary>The check of some bytes.</summary>
    public static ushort Of(ReadOnlySpan<byte> bytes)
    {
        ushort check = 0xFFFF;
        foreach (var one in bytes)
        {
            check = (ushort)(check >> 8 ^ Table[(byte)(check ^ one)]);
        }

        return check;
    }

    private static ushort OfByte(int value)
    {
        for (var bit = 0; bit < 8; bit++)
        {
            value = (value & 1) != 0 ? value >> 1 ^ Reflected : value >> 1;
        }

        return (ushort)value;
    }
}

using System.Buffers.Binary;

namespace Handspun.Simulation.Speech;

/// <summary>Gauges whose registers are read over Modbus RTU: their answers (Application Protocol V1.1b3, 6.3 and 6.4).</summary>
internal static class RegisterSpeech
{
    /// <summary>Two input registers, high word first, in tenths of a micrometre, and one of state.</summary>
    public static byte[] Whole(Shown shown)
    {
        var frame = new byte[11];
        (frame[0], frame[1], frame[2]) = (1, 4, 6);
        BinaryPrimitives.WriteInt32BigEndian(frame.AsSpan(3), shown.Counts(0.0001, 0.000005));
        frame[8] = (byte)((shown.BatteryLow ? 1 : 0) | (shown.Inch ? 2 : 0));
        return Checked(frame);
    }

    /// <summary>Two holding registers with a floating-point number in millimetres, low word first.</summary>
    public static byte[] FloatingPoint(Shown shown)
    {
        var frame = new byte[9];
        (frame[0], frame[1], frame[2]) = (1, 3, 4);
        var bits = BitConverter.SingleToUInt32Bits((float)shown.Millimetres);
        BinaryPrimitives.WriteUInt16BigEndian(frame.AsSpan(3), (ushort)bits);
        BinaryPrimitives.WriteUInt16BigEndian(frame.AsSpan(5), (ushort)(bits >> 16));
        return Checked(frame);
    }

    // Bit by bit, as the standard describes it: so that the decoder's table is checked against another way.
    private static byte[] Checked(byte[] frame)
    {
        ushort check = 0xFFFF;
        foreach (var one in frame.AsSpan(0, frame.Length - 2))
        {
            check ^= one;
            for (var bit = 0; bit < 8; bit++)
            {
                check = (ushort)((check & 1) != 0 ? check >> 1 ^ 0xA001 : check >> 1);
            }
        }

        BinaryPrimitives.WriteUInt16LittleEndian(frame.AsSpan(frame.Length - 2), check);
        return frame;
    }
}

using System.Buffers.Binary;
using Handspun.Gauges.Decoding.Binary;
using Handspun.Gauges.Framing;


namespace Handspun.Gauges.Decoding.Registers;

/// <summary>What the registers of a value hold.</summary>
public enum RegisterType
{
    /// <summary>One register: a whole number without a sign.</summary>
    Unsigned16,

    /// <summary>One register: two's complement.</summary>
    Signed16,

    /// <summary>Two registers: a whole number without a sign.</summary>
    Unsigned32,

    /// <summary>Two registers: two's complement.</summary>
    Signed32,

    /// <summary>Two registers: a floating-point number (IEC 60559 binary32).</summary>
    FloatingPoint,
}

/// <summary>A reading of registers over Modbus RTU: what is asked, and where in the answer the value lies.</summary>
/// <remarks>Modbus Application Protocol V1.1b3, sections 6.3 and 6.4; Modbus over Serial Line V1.02, section 2.5.1.</remarks>
public sealed record RegisterRead
{
    /// <summary>The most registers that one answer may hold (V1.1b3, sections 6.3 and 6.4).</summary>
    public const int MostRegisters = 125;

    /// <summary>The gauge's address, 1 to 247.</summary>
    public int Address { get; init; } = 1;

    /// <summary>3 for holding registers, 4 for input registers.</summary>
    public int Function { get; init; } = 3;

    /// <summary>The first register that is read, as it goes over the wire: from 0.</summary>
    public required int From { get; init; }

    /// <summary>How many are read, 1 to <see cref="MostRegisters"/>.</summary>
    public required int Count { get; init; }

    /// <summary>Which of these the value begins with, from 0.</summary>
    public int ValueAt { get; init; }

    /// <summary>What they hold.</summary>
    public RegisterType Type { get; init; } = RegisterType.Signed16;

    /// <summary>Whether of two registers the one with the low half comes first.</summary>
    public bool LowWordFirst { get; init; }

    /// <summary>The bit that tells the unit, counted from the lowest bit of the first register on, 16 to a register; null where none does.</summary>
    public UnitBit? Unit { get; init; }

    /// <summary>Registers that the value takes.</summary>
    public int Width => Type is RegisterType.Unsigned16 or RegisterType.Signed16 ? 1 : 2;

    /// <summary>The frame that asks.</summary>
    public byte[] Request()
    {
        var frame = new byte[8];
        (frame[0], frame[1]) = ((byte)Address, (byte)Function);
        BinaryPrimitives.WriteUInt16BigEndian(frame.AsSpan(2), (ushort)From);
        BinaryPrimitives.WriteUInt16BigEndian(frame.AsSpan(4), (ushort)Count);
        BinaryPrimitives.WriteUInt16LittleEndian(frame.AsSpan(6), Crc16.Of(frame.AsSpan(0, 6)));
        return frame;
    }
}

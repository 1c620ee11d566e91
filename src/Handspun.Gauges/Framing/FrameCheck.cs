using System.Buffers.Binary;

namespace Handspun.Gauges.Framing;

/// <summary>What a frame carries against damage on the way.</summary>
public enum CheckKind
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>One byte: the sum of the bytes before it, modulo 256.</summary>
    Sum,

    /// <summary>One byte: the exclusive or of the bytes before it.</summary>
    Xor,

    /// <summary>Two bytes, low byte first: <see cref="Crc16"/> of the bytes before them.</summary>
    Crc16,
}

/// <summary>Compares a frame with the check that it carries.</summary>
/// <param name="Kind">The check.</param>
/// <param name="From">The first byte that it covers, from 0.</param>
/// <param name="Behind">Bytes that stand behind it.</param>
public readonly record struct FrameCheck(CheckKind Kind, int From, int Behind)
{
    /// <summary>Bytes of the check itself.</summary>
    public int Length => Kind switch { CheckKind.None => 0, CheckKind.Crc16 => 2, _ => 1 };

    /// <summary>Whether a frame is as its check says; true where there is none.</summary>
    public bool Holds(ReadOnlySpan<byte> frame)
    {
        if (Kind == CheckKind.None)
        {
            return true;
        }

        var at = frame.Length - Behind - Length;
        if (at <= From)
        {
            return false;
        }

        var covered = frame[From..at];
        return Kind switch
        {
            CheckKind.Sum => Sum(covered) == frame[at],
            CheckKind.Xor => Xor(covered) == frame[at],
            _ => Crc16.Of(covered) == BinaryPrimitives.ReadUInt16LittleEndian(frame[at..]),
        };
    }

    private static byte Sum(ReadOnlySpan<byte> bytes)
    {
        byte sum = 0;
        foreach (var one in bytes)
        {
            sum += one;
        }

        return sum;
    }

    private static byte Xor(ReadOnlySpan<byte> bytes)
    {
        byte sum = 0;
        foreach (var one in bytes)
        {
            sum ^= one;
        }

        return sum;
    }
}

using System.Buffers;
using System.Buffers.Binary;
using Handspun.Gauges.Decoding.Binary;
using Handspun.Gauges.Framing;

namespace Handspun.Gauges.Decoding.Registers;

/// <summary>Answers of a gauge whose registers are read over Modbus RTU. Found by what they must begin with and by their check, wherever they start.</summary>
/// <remarks>Silences between frames tell nothing here: the drivers of serial adapters make and swallow them.</remarks>
/// <param name="read">What was asked.</param>
/// <param name="flags">Bits by which the gauge says something of itself.</param>
public sealed class RegisterCodec(RegisterRead read, FlagBits flags) : IGaugeCodec
{
    private const int Head = 3;
    private const int Check = 2;
    private const int RefusalLength = 5;
    private const byte RefusalBit = 0x80;
    private const int LongestFrame = 256;

    private readonly byte[] _request = read.Request();
    private readonly int _length = Head + 2 * read.Count + Check;
    private bool _lost;

    private enum Found
    {
        Nothing,
        More,
        Answer,
        Refusal,
        OwnRequest,
    }

    /// <inheritdoc/>
    public bool StartsWithinFrame => false;

    /// <inheritdoc/>
    public bool TryTakeFrame(ref ReadOnlySequence<byte> pending, out FrameResult frame)
    {
        Span<byte> copy = stackalloc byte[LongestFrame];
        while (!pending.IsEmpty)
        {
            var head = Front(pending, copy);
            switch (Judge(head))
            {
                case Found.More:
                    frame = default;
                    return false;
                case Found.OwnRequest:
                    pending = pending.Slice(_request.Length);   // an adapter on two wires hears itself
                    break;
                case Found.Answer:
                    _lost = false;
                    frame = Read(head[Head..]);
                    pending = pending.Slice(_length);
                    return true;
                case Found.Refusal:
                    _lost = false;
                    frame = FrameResult.Rejected(FrameFault.Refused, Head - 1);
                    pending = pending.Slice(RefusalLength);
                    return true;
                default:
                    pending = pending.Slice(1);
                    pending = pending.PositionOf((byte)read.Address) is { } next ? pending.Slice(next) : pending.Slice(pending.End);
                    if (!_lost)
                    {
                        _lost = true;
                        frame = FrameResult.Rejected(FrameFault.Incomplete, 0);
                        return true;
                    }

                    break;
            }
        }

        frame = default;
        return false;
    }

    private ReadOnlySpan<byte> Front(in ReadOnlySequence<byte> pending, Span<byte> copy)
    {
        var most = (int)Math.Min(pending.Length, Math.Max(_length, _request.Length));
        if (pending.FirstSpan.Length >= most)
        {
            return pending.FirstSpan[..most];
        }

        pending.Slice(0, most).CopyTo(copy);
        return copy[..most];
    }

    private Found Judge(ReadOnlySpan<byte> head)
    {
        var mayBe = Found.Nothing;
        if (head[..Math.Min(head.Length, _request.Length)].SequenceEqual(_request.AsSpan(0, Math.Min(head.Length, _request.Length))))
        {
            if (head.Length >= _request.Length)
            {
                return Found.OwnRequest;
            }

            mayBe = Found.More;
        }

        if (head[0] != read.Address || head.Length > 1 && (head[1] & ~RefusalBit) != read.Function)
        {
            return mayBe;
        }

        var refusal = head.Length > 1 && (head[1] & RefusalBit) != 0;
        if (!refusal && head.Length >= Head && head[Head - 1] != 2 * read.Count)
        {
            return mayBe;
        }

        var length = refusal ? RefusalLength : _length;
        if (head.Length < length)
        {
            return Found.More;
        }

        return !Checks(head[..length]) ? mayBe : refusal ? Found.Refusal : Found.Answer;
    }

    private static bool Checks(ReadOnlySpan<byte> frame) =>
        Crc16.Of(frame[..^Check]) == BinaryPrimitives.ReadUInt16LittleEndian(frame[^Check..]);

    private FrameResult Read(ReadOnlySpan<byte> registers)
    {
        var told = flags.Read(registers, out var index);
        return FrameResult.Of(ValueOf(registers[(2 * read.ValueAt)..]), read.Unit?.Read(registers, BitOrder.RegisterLowFirst), told, index);
    }

    private double ValueOf(ReadOnlySpan<byte> registers)
    {
        var first = BinaryPrimitives.ReadUInt16BigEndian(registers);
        if (read.Width == 1)
        {
            return read.Type == RegisterType.Signed16 ? (short)first : first;
        }

        var second = BinaryPrimitives.ReadUInt16BigEndian(registers[2..]);
        var whole = read.LowWordFirst ? (uint)second << 16 | first : (uint)first << 16 | second;
        return read.Type switch
        {
            RegisterType.Unsigned32 => (double)whole,   // else the three would meet as floats
            RegisterType.Signed32 => (int)whole,
            _ => BitConverter.UInt32BitsToSingle(whole),
        };
    }
}

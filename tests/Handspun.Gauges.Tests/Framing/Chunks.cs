using System.Buffers;
using CsCheck;

namespace Handspun.Gauges.Tests.Framing;

/// <summary>Bytes as they come in: in pieces, of which what was not taken waits for the next.</summary>
internal sealed class Chunks
{
    private byte[] _left = [];

    /// <summary>The sizes of a stream's pieces.</summary>
    public static Gen<int[]> Sizes { get; } = Gen.Int[1, 9].Array[1, 20];

    public int Pending => _left.Length;

    /// <summary>Hands over what waits and a new piece, as a sequence with the border between them.</summary>
    public void Add(ReadOnlySpan<byte> piece, Taking take)
    {
        var pending = Sequence(_left, piece.ToArray());
        take(ref pending);
        _left = pending.ToArray();
    }

    public delegate void Taking(ref ReadOnlySequence<byte> pending);

    /// <summary>A stream in pieces of the given sizes, used over and over.</summary>
    public static IEnumerable<byte[]> Of(byte[] stream, params int[] sizes)
    {
        var start = 0;
        for (var i = 0; start < stream.Length; i++)
        {
            var size = Math.Min(sizes[i % sizes.Length], stream.Length - start);
            yield return stream[start..(start + size)];
            start += size;
        }
    }

    /// <summary>Two pieces with the border between them.</summary>
    public static ReadOnlySequence<byte> Sequence(byte[] first, byte[] second)
    {
        if (first.Length == 0)
        {
            return new(second);
        }

        var start = new Segment(first, null);
        var end = new Segment(second, start);
        return new(start, 0, end, second.Length);
    }

    private sealed class Segment : ReadOnlySequenceSegment<byte>
    {
        public Segment(byte[] memory, Segment? before)
        {
            Memory = memory;
            if (before is not null)
            {
                RunningIndex = before.RunningIndex + before.Memory.Length;
                before.Next = this;
            }
        }
    }
}

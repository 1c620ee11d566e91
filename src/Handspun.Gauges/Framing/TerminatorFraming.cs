using System.Buffers;

namespace Handspun.Gauges.Framing;

/// <summary>Cuts a stream into frames that end in given bytes; empty ones are passed over.</summary>
/// <param name="end">What ends a frame; no part of it.</param>
/// <param name="longest">Bytes in the longest frame. A longer one is cut away up to its end and told once.</param>
public sealed class TerminatorFraming(ReadOnlyMemory<byte> end, int longest) : EndedFraming(end.Length, longest)
{
    private protected override bool TryReadToEnd(ref SequenceReader<byte> reader, out ReadOnlySequence<byte> candidate) =>
        reader.TryReadTo(out candidate, end.Span);
}

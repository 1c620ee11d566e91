using System.Buffers;

namespace Handspun.Gauges.Framing;

/// <summary>Cuts a stream into lines that end in CR, LF or both; empty lines are passed over.</summary>
/// <param name="longest">Bytes in the longest line that a gauge of this kind sends. A longer one is cut away up to its end and told once.</param>
public sealed class LineFraming(int longest) : EndedFraming(endLength: 1, longest)
{
    private protected override bool TryReadToEnd(ref SequenceReader<byte> reader, out ReadOnlySequence<byte> candidate) =>
        reader.TryReadToAny(out candidate, "\r\n"u8);
}

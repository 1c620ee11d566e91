using System.Buffers;

namespace Handspun.Gauges.Framing;

/// <summary>Finds the bytes with which a frame starts.</summary>
/// <param name="start">The bytes; empty where a frame may start with any.</param>
internal sealed class StartSearch(ReadOnlyMemory<byte> start)
{
    /// <summary>Passes over what cannot be the start of a frame; what may yet become one stays.</summary>
    /// <returns>Whether bytes were passed over.</returns>
    public bool PassOver(ref ReadOnlySequence<byte> pending)
    {
        if (start.IsEmpty || pending.FirstSpan.StartsWith(start.Span))
        {
            return false;
        }

        var passed = false;
        while (!MayStartHere(pending))
        {
            passed = true;
            pending = pending.Slice(1);
            pending = pending.PositionOf(start.Span[0]) is { } next ? pending.Slice(next) : pending.Slice(pending.End);
        }

        return passed;
    }

    private bool MayStartHere(in ReadOnlySequence<byte> pending)
    {
        var there = (int)Math.Min(pending.Length, start.Length);
        return new SequenceReader<byte>(pending).IsNext(start.Span[..there]);
    }
}

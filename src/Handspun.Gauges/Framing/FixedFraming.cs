using System.Buffers;

namespace Handspun.Gauges.Framing;

/// <summary>Cuts a stream into frames of one length, which may start and end with given bytes.</summary>
/// <param name="length">Bytes in a frame, those of start and end with it.</param>
/// <param name="start">What it starts with; empty where any byte may stand there.</param>
/// <param name="end">What it ends with; empty where any byte may stand there.</param>
/// <param name="resyncs">Whether a frame that turns out to be none may hide the start of a good one.</param>
public sealed class FixedFraming(int length, ReadOnlyMemory<byte> start, ReadOnlyMemory<byte> end, bool resyncs) : IFraming
{
    private readonly StartSearch _search = new(start);

    /// <inheritdoc/>
    public bool Resyncs => resyncs;

    /// <inheritdoc/>
    public Cut TryTake(ref ReadOnlySequence<byte> pending, out ReadOnlySequence<byte> frame)
    {
        frame = default;
        var lost = false;
        while (true)
        {
            lost |= _search.PassOver(ref pending);
            if (pending.Length < length)
            {
                return lost ? Cut.Lost : Cut.None;
            }

            if (EndsRight(pending.Slice(length - end.Length, end.Length)))
            {
                break;
            }

            pending = pending.Slice(1);
            lost = true;
        }

        if (lost)
        {
            return Cut.Lost;   // the frame behind it is found at the next call
        }

        frame = pending.Slice(0, length);
        pending = pending.Slice(length);
        return Cut.Frame;
    }

    private bool EndsRight(in ReadOnlySequence<byte> tail) =>
        end.IsEmpty || (tail.IsSingleSegment ? tail.FirstSpan.SequenceEqual(end.Span) : new SequenceReader<byte>(tail).IsNext(end.Span));
}

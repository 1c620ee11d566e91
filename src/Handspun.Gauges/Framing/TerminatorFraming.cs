using System.Buffers;

namespace Handspun.Gauges.Framing;

/// <summary>Cuts a stream into frames that end in given bytes; empty ones are passed over.</summary>
/// <param name="end">What ends a frame; no part of it.</param>
/// <param name="longest">Bytes in the longest frame. A longer one is cut away up to its end and told once.</param>
public sealed class TerminatorFraming(ReadOnlyMemory<byte> end, int longest) : IFraming
{
    private bool _skipping;

    /// <inheritdoc/>
    public bool Resyncs => false;

    /// <inheritdoc/>
    public Cut TryTake(ref ReadOnlySequence<byte> pending, out ReadOnlySequence<byte> frame)
    {
        frame = default;
        while (true)
        {
            var reader = new SequenceReader<byte>(pending);
            if (!reader.TryReadTo(out ReadOnlySequence<byte> candidate, end.Span))
            {
                return Overlong(ref pending);
            }

            pending = reader.UnreadSequence;
            if (_skipping)
            {
                _skipping = false;
            }
            else if (candidate.Length > longest)
            {
                return Cut.TooLong;
            }
            else if (candidate.Length > 0)
            {
                frame = candidate;
                return Cut.Frame;
            }
        }
    }

    // The start of the end may be there already.
    private Cut Overlong(ref ReadOnlySequence<byte> pending)
    {
        var most = longest + end.Length - 1;
        if (pending.Length <= (_skipping ? end.Length - 1 : most))
        {
            return Cut.None;
        }

        pending = pending.Slice(pending.Length - (end.Length - 1));
        var first = !_skipping;
        _skipping = true;
        return first ? Cut.TooLong : Cut.None;
    }
}

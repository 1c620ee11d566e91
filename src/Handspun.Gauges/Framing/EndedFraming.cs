using System.Buffers;

namespace Handspun.Gauges.Framing;

/// <summary>Cuts a stream into frames that end in something of their own; empty ones are passed over.</summary>
/// <param name="endLength">Bytes in the end, at least 1.</param>
/// <param name="longest">Bytes in the longest frame. A longer one is cut away up to its end and told once.</param>
public abstract class EndedFraming(int endLength, int longest) : IFraming
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
            if (!TryReadToEnd(ref reader, out var candidate))
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

    /// <summary>Reads up to the next end, and past it.</summary>
    /// <param name="reader">Stands at the first byte that was not taken.</param>
    /// <param name="candidate">What comes before the end.</param>
    /// <returns>False where no end is there yet.</returns>
    private protected abstract bool TryReadToEnd(ref SequenceReader<byte> reader, out ReadOnlySequence<byte> candidate);

    // The start of the end may be there already.
    private Cut Overlong(ref ReadOnlySequence<byte> pending)
    {
        var most = longest + endLength - 1;
        if (pending.Length <= (_skipping ? endLength - 1 : most))
        {
            return Cut.None;
        }

        pending = pending.Slice(pending.Length - (endLength - 1));
        var first = !_skipping;
        _skipping = true;
        return first ? Cut.TooLong : Cut.None;
    }
}

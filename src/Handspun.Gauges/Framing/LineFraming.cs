using System.Buffers;

namespace Handspun.Gauges.Framing;

/// <summary>Cuts a stream into lines that end in CR, LF or both; empty lines are passed over.</summary>
/// <param name="longest">Bytes in the longest line that a gauge of this kind sends. A longer one is cut away up to its end and told once.</param>
public sealed class LineFraming(int longest) : IFraming
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
            if (!reader.TryReadToAny(out ReadOnlySequence<byte> candidate, "\r\n"u8))
            {
                return Overlong(ref pending);
            }

            pending = reader.UnreadSequence;
            if (_skipping)
            {
                _skipping = false;
                continue;
            }

            if (candidate.Length > longest)
            {
                return Cut.TooLong;
            }

            if (candidate.Length > 0)
            {
                frame = candidate;
                return Cut.Frame;
            }
        }
    }

    private Cut Overlong(ref ReadOnlySequence<byte> pending)
    {
        if (pending.Length <= longest && !_skipping)
        {
            return Cut.None;
        }

        pending = pending.Slice(pending.End);
        var first = !_skipping;
        _skipping = true;
        return first ? Cut.TooLong : Cut.None;
    }
}

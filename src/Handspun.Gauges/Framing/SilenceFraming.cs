using System.Buffers;

namespace Handspun.Gauges.Framing;

/// <summary>Cuts a stream into frames that only a silence tells apart.</summary>
/// <param name="longest">Bytes in the longest frame. A longer one is cut away up to the silence and told once.</param>
public sealed class SilenceFraming(int longest) : IFraming
{
    private bool _skipping;

    /// <inheritdoc/>
    public bool Resyncs => false;

    /// <inheritdoc/>
    public Cut TryTake(ref ReadOnlySequence<byte> pending, out ReadOnlySequence<byte> frame)
    {
        frame = default;
        if (_skipping && !pending.IsEmpty)
        {
            pending = pending.Slice(pending.Length - 1);   // one byte is held, so that the silence behind it is seen
            return Cut.None;
        }

        if (pending.Length <= longest)
        {
            return Cut.None;
        }

        pending = pending.Slice(pending.Length - 1);
        _skipping = true;
        return Cut.TooLong;
    }

    /// <inheritdoc/>
    public Cut TakeRest(ref ReadOnlySequence<byte> pending, out ReadOnlySequence<byte> frame)
    {
        frame = pending;
        pending = pending.Slice(pending.End);
        if (_skipping || frame.IsEmpty)
        {
            frame = default;
            _skipping = false;
            return Cut.None;
        }

        return Cut.Frame;
    }
}

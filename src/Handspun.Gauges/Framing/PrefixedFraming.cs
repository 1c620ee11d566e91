using System.Buffers;

namespace Handspun.Gauges.Framing;

/// <summary>Cuts a stream into frames that say themselves how long they are, in one byte.</summary>
/// <param name="start">What a frame starts with; may be empty.</param>
/// <param name="countAt">Where the byte with the count stands, from 0.</param>
/// <param name="adds">Bytes of the whole frame that the count leaves out.</param>
/// <param name="longest">Bytes in the longest whole frame.</param>
public sealed class PrefixedFraming(ReadOnlyMemory<byte> start, int countAt, int adds, int longest) : IFraming
{
    private readonly StartSearch _search = new(start);

    /// <inheritdoc/>
    public bool Resyncs => true;

    /// <inheritdoc/>
    public Cut TryTake(ref ReadOnlySequence<byte> pending, out ReadOnlySequence<byte> frame)
    {
        frame = default;
        if (_search.PassOver(ref pending))
        {
            return Cut.Lost;
        }

        if (pending.Length <= countAt)
        {
            return Cut.None;
        }

        var length = (countAt < pending.FirstSpan.Length ? pending.FirstSpan : pending.Slice(countAt).FirstSpan)[countAt < pending.FirstSpan.Length ? countAt : 0] + adds;
        if (length <= countAt || length > longest)
        {
            pending = pending.Slice(1);
            return Cut.Lost;
        }

        if (pending.Length < length)
        {
            return Cut.None;
        }

        frame = pending.Slice(0, length);
        pending = pending.Slice(length);
        return Cut.Frame;
    }
}

using System.Buffers;
using Handspun.Gauges.Framing;

namespace Handspun.Gauges.Decoding;

/// <summary>Reads the meaning out of one whole frame.</summary>
public interface IFrameDecoding
{
    /// <summary>Decodes a frame. Keeps no reference to its bytes.</summary>
    FrameResult Decode(ReadOnlySpan<byte> frame);
}

/// <summary>A codec made of a way to cut frames and a way to read them.</summary>
/// <param name="framing">Cuts them.</param>
/// <param name="check">What they carry against damage.</param>
/// <param name="decoding">Reads them.</param>
/// <param name="gap">A silence this long ends a frame; null where it does not.</param>
public sealed class FramedCodec(IFraming framing, FrameCheck check, IFrameDecoding decoding, TimeSpan? gap) : IGaugeCodec
{
    private bool _lost;

    /// <inheritdoc/>
    public TimeSpan? FrameEndsAfter => gap;

    /// <inheritdoc/>
    public bool StartsWithinFrame => check.Kind == CheckKind.None;

    /// <inheritdoc/>
    public bool TryTakeFrame(ref ReadOnlySequence<byte> pending, out FrameResult frame)
    {
        while (true)
        {
            var before = pending;
            var cut = framing.TryTake(ref pending, out var bytes);
            if (cut == Cut.None)
            {
                frame = default;
                return false;
            }

            frame = Judge(cut, bytes);
            if (cut == Cut.Frame && frame.Fault != FrameFault.None && framing.Resyncs)
            {
                pending = before.Slice(before.GetPosition(1, bytes.Start));
                cut = Cut.Lost;
            }

            // A stretch of noise is told once, however many false starts there are in it.
            var again = cut == Cut.Lost && _lost;
            _lost = cut == Cut.Lost;
            if (!again)
            {
                return true;
            }
        }
    }

    /// <inheritdoc/>
    public bool TryTakeRest(ref ReadOnlySequence<byte> pending, out FrameResult frame)
    {
        var cut = framing.TakeRest(ref pending, out var bytes);
        frame = Judge(cut, bytes);
        var again = cut == Cut.Lost && _lost;
        _lost = false;
        return cut != Cut.None && !again;
    }

    private FrameResult Judge(Cut cut, in ReadOnlySequence<byte> bytes) => cut switch
    {
        Cut.Frame when bytes.IsSingleSegment => Decode(bytes.FirstSpan),
        Cut.Frame => DecodeCopy(bytes),
        Cut.TooLong => FrameResult.Rejected(FrameFault.TooLong, 0),
        _ => FrameResult.Rejected(FrameFault.Incomplete, 0),
    };

    // Only a frame that straddles two chunks is copied; framing keeps it short.
    private FrameResult DecodeCopy(in ReadOnlySequence<byte> bytes)
    {
        Span<byte> copy = stackalloc byte[(int)bytes.Length];
        bytes.CopyTo(copy);
        return Decode(copy);
    }

    private FrameResult Decode(ReadOnlySpan<byte> frame) => check.Holds(frame)
        ? decoding.Decode(frame)
        : FrameResult.Rejected(FrameFault.BadCheck, frame.Length - check.Behind - check.Length);
}

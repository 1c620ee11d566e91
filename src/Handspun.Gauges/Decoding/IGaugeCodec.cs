using System.Buffers;

namespace Handspun.Gauges.Decoding;

/// <summary>Takes frames out of a stream of bytes: knows meanings, not ports. One for each link; it may keep state between calls.</summary>
public interface IGaugeCodec
{
    /// <summary>A silence this long ends the frame that is pending; null where frames end by themselves.</summary>
    TimeSpan? FrameEndsAfter => null;

    /// <summary>Whether bytes that come right after a link was opened may start within a frame, so that the first one is not to be trusted.</summary>
    bool StartsWithinFrame => true;

    /// <summary>Takes the next whole frame from the front of what has come in. Asked again until it says no, after each chunk of bytes.</summary>
    /// <param name="pending">The bytes not taken yet; on success the frame is cut off its front.</param>
    /// <param name="frame">The frame.</param>
    /// <returns>False where no whole frame is there yet.</returns>
    bool TryTakeFrame(ref ReadOnlySequence<byte> pending, out FrameResult frame);

    /// <summary>Takes what a silence has ended. What is left then is given up.</summary>
    /// <param name="pending">The bytes from before the silence of which no frame could be taken.</param>
    /// <param name="frame">The frame.</param>
    /// <returns>False where there is none.</returns>
    bool TryTakeRest(ref ReadOnlySequence<byte> pending, out FrameResult frame)
    {
        frame = default;
        return false;
    }
}

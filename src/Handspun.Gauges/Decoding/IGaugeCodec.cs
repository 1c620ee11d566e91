using System.Buffers;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding;

/// <summary>What was wrong with a frame.</summary>
public enum FrameFault
{
    /// <summary>Nothing: it carries a value.</summary>
    None,

    /// <summary>It holds no number where one was expected.</summary>
    NotANumber,

    /// <summary>It names a unit that the profile does not know.</summary>
    UnknownUnit,

    /// <summary>It is longer than any frame of this gauge.</summary>
    TooLong,
}

/// <summary>One frame of a gauge, decoded: a value, or what was wrong with it.</summary>
/// <param name="Value">The number, in <paramref name="Unit"/>; 0 where the frame has a fault.</param>
/// <param name="Unit">The unit in which the frame, or else the profile, gives the number.</param>
/// <param name="Fault">What was wrong.</param>
/// <param name="Position">The byte of the frame, from 0, at which it went wrong.</param>
public readonly record struct FrameResult(double Value, GaugeUnit Unit, FrameFault Fault, int Position)
{
    /// <summary>A good frame.</summary>
    public static FrameResult Of(double value, GaugeUnit unit) => new(value, unit, FrameFault.None, 0);

    /// <summary>A frame that is not a reading.</summary>
    public static FrameResult Rejected(FrameFault fault, int position) => new(0, default, fault, position);
}

/// <summary>Takes frames out of a stream of bytes: knows meanings, not ports. One for each link; it may keep state between calls.</summary>
public interface IGaugeCodec
{
    /// <summary>Takes the next whole frame from the front of what has come in.</summary>
    /// <param name="pending">The bytes not taken yet; on success the frame is cut off its front.</param>
    /// <param name="frame">The frame.</param>
    /// <returns>False where no whole frame is there yet.</returns>
    bool TryTakeFrame(ref ReadOnlySequence<byte> pending, out FrameResult frame);
}

using System.Buffers;

namespace Handspun.Gauges.Framing;

/// <summary>What was found at the front of a stream.</summary>
public enum Cut
{
    /// <summary>No whole frame yet.</summary>
    None,

    /// <summary>A frame.</summary>
    Frame,

    /// <summary>A frame that was too long, told when the limit is passed.</summary>
    TooLong,

    /// <summary>Bytes that belong to no frame; they were passed over.</summary>
    Lost,
}

/// <summary>Cuts a stream of bytes into frames: knows borders, not meanings. It may keep state between calls.</summary>
public interface IFraming
{
    /// <summary>Whether a frame that turns out to be none may hide the start of a good one, so that it is looked for from its second byte on.</summary>
    bool Resyncs { get; }

    /// <summary>Takes the next frame off the front of what has come in.</summary>
    Cut TryTake(ref ReadOnlySequence<byte> pending, out ReadOnlySequence<byte> frame);

    /// <summary>Takes what a silence has ended: here bytes of a frame that broke off.</summary>
    Cut TakeRest(ref ReadOnlySequence<byte> pending, out ReadOnlySequence<byte> frame)
    {
        frame = default;
        if (pending.IsEmpty)
        {
            return Cut.None;
        }

        pending = pending.Slice(pending.End);
        return Cut.Lost;
    }
}

using System.Buffers;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding;

/// <summary>Turns a gauge's bytes into readings, live and on replay alike.</summary>
/// <remarks>
/// A port that is opened while the gauge sends gives the tail of a frame first, and a tail can look like a reading
/// (<c>+0.0|12</c> would be twelve millimetres). So the first frame is passed over when it comes right after the opening.
/// </remarks>
public sealed class ReadingDecoder(GaugeProfile profile)
{
    // Longer than any pause between two bytes of one frame: what comes after a silence like this is the start of one.
    private static readonly TimeSpan FrameSilence = TimeSpan.FromMilliseconds(100);

    private IGaugeCodec _codec = profile.CreateCodec();
    private TimeSpan? _openedAt;
    private bool _passOver = true;

    /// <summary>Frames so far, whether they held a reading, were unreadable or were passed over.</summary>
    public long Frames { get; private set; }

    /// <summary>Frames so far that held no reading.</summary>
    public long Unreadable { get; private set; }

    /// <summary>The link was opened: what was pending is gone, and the next bytes may start within a frame.</summary>
    public void LinkOpened(TimeSpan at) => (_codec, _openedAt, _passOver) = (profile.CreateCodec(), at, true);

    /// <summary>Takes all whole frames off the front of what has come in.</summary>
    /// <param name="pending">The bytes not taken yet; what was taken is cut off.</param>
    /// <param name="at">When the newest of them arrived.</param>
    /// <param name="readings">Gets the readings.</param>
    public void Decode(ref ReadOnlySequence<byte> pending, TimeSpan at, ICollection<Reading> readings)
    {
        if (_openedAt is { } opened)
        {
            _passOver = at - opened < FrameSilence;
            _openedAt = null;
        }

        while (_codec.TryTakeFrame(ref pending, out var frame))
        {
            Frames++;
            if (_passOver)
            {
                _passOver = false;
            }
            else if (frame.Fault != FrameFault.None)
            {
                Unreadable++;
            }
            else
            {
                readings.Add(Reading.From(frame.Value, frame.Unit, at));
            }
        }
    }
}

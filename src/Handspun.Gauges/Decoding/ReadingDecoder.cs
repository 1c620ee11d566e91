using System.Buffers;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding;

/// <summary>Turns a gauge's bytes into readings, live and on replay alike.</summary>
/// <remarks>
/// A port that is opened while the gauge sends gives the tail of a frame first, and a tail can look like a reading
/// (<c>+0.0|12</c> would be twelve millimetres). So the first frame is passed over when it comes right after the opening,
/// unless its own check would have shown the cut. What a silence ended has the time of its last byte, not of the silence.
/// </remarks>
public sealed class ReadingDecoder(GaugeProfile profile)
{
    // Longer than any pause between two bytes of one frame: what comes after a silence like this is the start of one.
    private static readonly TimeSpan FrameSilence = TimeSpan.FromMilliseconds(100);

    private readonly List<TimeSpan> _pulses = [];
    private IGaugeCodec _codec = profile.CreateCodec();
    private ReadOnlyMemory<byte> _descriptor;
    private TimeSpan? _openedAt;
    private TimeSpan _heardAt;
    private long _held;
    private bool _passOver = true;

    /// <summary>Frames so far, whatever they held.</summary>
    public long Frames { get; private set; }

    /// <summary>Frames so far that could not be read.</summary>
    public long Unreadable { get; private set; }

    /// <summary>Good frames so far in which the gauge said that it is beyond its range.</summary>
    public long Overranges { get; private set; }

    /// <summary>What the gauge said of itself in its newest good frame.</summary>
    public GaugeFlags Flags { get; private set; }

    /// <summary>The unit that the gauge named last since the link was opened; null where its frames name none.</summary>
    public GaugeUnit? StatedUnit { get; private set; }

    /// <summary>How often the gauge has changed the unit that it names.</summary>
    public long UnitSwitches { get; private set; }

    /// <summary>When the index passed, by the frames of the latest call.</summary>
    public IReadOnlyList<TimeSpan> Pulses => _pulses;

    /// <summary>A silence this long ends the frame that is pending; null where frames end by themselves.</summary>
    public TimeSpan? FrameEndsAfter => _codec.FrameEndsAfter;

    /// <summary>The link was opened: what was pending is gone, and the next bytes may start within a frame.</summary>
    public void LinkOpened(TimeSpan at)
    {
        (_codec, _descriptor, _openedAt, _held, StatedUnit) = (profile.CreateCodec(), default, at, 0, null);
        _passOver = _codec.StartsWithinFrame;
    }

    /// <summary>The link told what a HID gauge says of its reports; said again it changes nothing.</summary>
    public void LinkDescribed(ReadOnlyMemory<byte> reportDescriptor)
    {
        if (!reportDescriptor.Span.SequenceEqual(_descriptor.Span))
        {
            (_codec, _descriptor) = (profile.CreateCodec(reportDescriptor), reportDescriptor);
            _passOver &= _codec.StartsWithinFrame;
        }
    }

    /// <summary>Takes all whole frames off the front of what has come in. Called once for each chunk, in order.</summary>
    /// <param name="pending">The bytes not taken yet, those held from earlier chunks first; what was taken is cut off.</param>
    /// <param name="at">When the newest of them arrived.</param>
    /// <param name="readings">Gets the readings.</param>
    public void Decode(ref ReadOnlySequence<byte> pending, TimeSpan at, ICollection<Reading> readings)
    {
        EndAfterSilence(ref pending, at, readings);   // clears the pulses too
        if (_openedAt is { } opened)
        {
            _passOver &= at - opened < FrameSilence;
            _openedAt = null;
        }

        while (_codec.TryTakeFrame(ref pending, out var frame))
        {
            Take(frame, at, readings);
        }

        (_held, _heardAt) = (pending.Length, at);
    }

    /// <summary>Ends the frame that is pending where the silence since its last byte was long enough.</summary>
    /// <param name="pending">The bytes not taken yet; what the silence ended is cut off.</param>
    /// <param name="now">The present moment; no byte came since the latest chunk but those behind the held ones.</param>
    /// <param name="readings">Gets the readings.</param>
    public void EndAfterSilence(ref ReadOnlySequence<byte> pending, TimeSpan now, ICollection<Reading> readings)
    {
        _pulses.Clear();
        if (_held == 0 || now - _heardAt < _codec.FrameEndsAfter || _codec.FrameEndsAfter is null)
        {
            return;
        }

        var rest = pending.Slice(0, _held);
        pending = pending.Slice(_held);
        _held = 0;
        while (_codec.TryTakeRest(ref rest, out var frame))
        {
            Take(frame, _heardAt, readings);
        }
    }

    private void Take(in FrameResult frame, TimeSpan at, ICollection<Reading> readings)
    {
        Frames++;
        if (_passOver)
        {
            _passOver = false;
            return;
        }

        if (frame.Fault != FrameFault.None)
        {
            Unreadable++;
            return;
        }

        Flags = frame.Flags;
        if (frame.IsIndex)
        {
            _pulses.Add(at);
        }

        if (frame.Flags.HasFlag(GaugeFlags.Overrange))
        {
            Overranges++;
        }
        else if (frame.HasValue)
        {
            TakeValue(frame, at, readings);
        }
    }

    private void TakeValue(in FrameResult frame, TimeSpan at, ICollection<Reading> readings)
    {
        var shown = frame.Unit ?? profile.Value.Unit;
        if (!Reading.TryFrom(frame.Value * profile.Value.Factor(shown), shown, at, out var reading))
        {
            Unreadable++;
            return;
        }

        if (frame.Unit is { } unit)
        {
            UnitSwitches += StatedUnit is { } before && before != unit ? 1 : 0;
            StatedUnit = unit;
        }

        readings.Add(reading);
    }
}

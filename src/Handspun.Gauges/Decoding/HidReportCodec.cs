using System.Buffers;
using Handspun.Gauges.Hid;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding;

/// <summary>A gauge that sends its value as a field of a HID report.</summary>
/// <remarks>
/// What is pending is one report, and is always taken whole. A report in which there is nothing that the profile looks for
/// is no frame. A flag holds until a report that has it says otherwise; the index passes when its button goes down, and a
/// button that is down from the beginning did not.
/// </remarks>
/// <param name="layout">Where the device has what is looked for; null where it does not, and then no report can be read.</param>
public sealed class HidReportCodec(HidReportLayout? layout) : IGaugeCodec
{
    private readonly int _needed = NeededBytes(layout);
    private readonly bool?[] _isUp = new bool?[layout?.Flags.Select(flag => flag.Which + 1).DefaultIfEmpty(0).Max() ?? 0];
    private readonly HidReportLayout.FlagPlace[] _places = [.. layout?.Flags ?? []];
    private byte[] _copy = [];

    /// <inheritdoc/>
    public bool StartsWithinFrame => false;

    /// <inheritdoc/>
    public bool TryTakeFrame(ref ReadOnlySequence<byte> pending, out FrameResult frame)
    {
        frame = default;
        if (pending.IsEmpty)
        {
            return false;
        }

        var report = pending.IsSingleSegment ? pending.FirstSpan : Copy(pending);
        pending = pending.Slice(pending.End);
        if (layout is null)
        {
            frame = FrameResult.Rejected(FrameFault.NoMatch, 0);
            return true;
        }

        var speaks = TakeFlags(report, out var flags, out var index);
        if (layout.Value.TryRead(report, out var counts))
        {
            frame = counts < layout.Least || counts > layout.Most ? FrameResult.Without(flags | GaugeFlags.Overrange, index)
                : layout.Scale is { } scale ? FrameResult.Of(scale.Of(counts), scale.Unit, flags, index)
                : FrameResult.Of(counts, null, flags, index);
            return true;
        }

        if (layout.Value.ReportId == 0 || report[0] == layout.Value.ReportId)
        {
            frame = FrameResult.Rejected(FrameFault.TooShort, report.Length);
            return true;
        }

        frame = speaks ? FrameResult.Without(flags, index) : default;
        return speaks;
    }

    private bool TakeFlags(ReadOnlySpan<byte> report, out GaugeFlags flags, out bool index)
    {
        var speaks = false;
        (flags, index) = (GaugeFlags.None, false);
        for (var i = 0; i < _places.Length;)
        {
            // All places of one flag lie side by side; it is up where any of them says so.
            var (which, flag) = (_places[i].Which, _places[i].Flag);
            var (heard, up) = (false, false);
            for (; i < _places.Length && _places[i].Which == which; i++)
            {
                if (_places[i].Place.TryRead(report, out var counts))
                {
                    (heard, up) = (true, up || counts == _places[i].When);
                }
            }

            if (heard)
            {
                index |= flag.IsIndex && up && _isUp[which] == false;
                _isUp[which] = up;
                speaks = true;
            }

            flags |= _isUp[which] == true ? flag.Flag : GaugeFlags.None;
        }

        return speaks;
    }

    // Only a report that straddles two chunks is copied, and no more of it than is looked at.
    private ReadOnlySpan<byte> Copy(in ReadOnlySequence<byte> pending)
    {
        var length = (int)Math.Min(pending.Length, _needed);
        if (_copy.Length < length)
        {
            _copy = new byte[length];
        }

        pending.Slice(0, length).CopyTo(_copy);
        return _copy.AsSpan(0, length);
    }

    private static int NeededBytes(HidReportLayout? layout) => layout is null ? 1
        : layout.Flags.Select(flag => flag.Place).Append(layout.Value).Max(place => 1 + (place.BitOffset + place.BitSize + 7) / 8);
}

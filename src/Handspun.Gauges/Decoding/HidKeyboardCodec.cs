using System.Buffers;
using Handspun.Gauges.Hid;

namespace Handspun.Gauges.Decoding;

/// <summary>A gauge that types its values as a keyboard: turns each report into the keys that went down, and these into text for another codec.</summary>
/// <remarks>What is pending is one report, and is always taken whole. Enter ends a line.</remarks>
/// <param name="format">How it types.</param>
/// <param name="report">Where its report has the keys.</param>
/// <param name="text">Decodes the text.</param>
public sealed class HidKeyboardCodec(HidKeyboardFormat format, KeyboardReport report, IGaugeCodec text) : IGaugeCodec
{
    private const int MostKeys = 256;
    private const int LongestText = 1024;   // more than any line that a text codec waits for

    private readonly byte[] _typed = new byte[LongestText];
    private int _length;
    private bool _hasMore;
    private KeySet _down;

    /// <inheritdoc/>
    public bool TryTakeFrame(ref ReadOnlySequence<byte> pending, out FrameResult frame)
    {
        if (!pending.IsEmpty)
        {
            Take(pending);
            pending = pending.Slice(pending.End);
        }

        frame = default;
        if (!_hasMore)
        {
            return false;   // most reports only say that a key is up again
        }

        var typed = new ReadOnlySequence<byte>(_typed, 0, _length);
        var found = text.TryTakeFrame(ref typed, out frame);
        _hasMore = found;
        var left = (int)typed.Length;
        _typed.AsSpan(_length - left, left).CopyTo(_typed);
        _length = left;
        return found;
    }

    private void Take(in ReadOnlySequence<byte> bytes)
    {
        if (bytes.IsSingleSegment)
        {
            Take(bytes.FirstSpan);
            return;
        }

        Span<byte> copy = stackalloc byte[(int)Math.Min(bytes.Length, MostKeys)];
        bytes.Slice(0, copy.Length).CopyTo(copy);
        Take(copy);
    }

    private void Take(ReadOnlySpan<byte> bytes)
    {
        Span<byte> order = stackalloc byte[MostKeys];
        var down = new KeySet();
        var count = report.Read(bytes, ref down, order);
        if (count < 0)
        {
            return;
        }

        foreach (var key in order[..count])
        {
            if (!_down.Contains(key))
            {
                Type(KeyText.Of(key, down, format.DecimalComma));
            }
        }

        _down = down;
    }

    private void Type(byte character)
    {
        if (character != 0)
        {
            _length = _length < _typed.Length ? _length : 0;
            _typed[_length++] = character;
            _hasMore = true;
        }
    }
}

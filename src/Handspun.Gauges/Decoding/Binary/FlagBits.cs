using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding.Binary;

/// <summary>A bit by which a gauge says something of itself.</summary>
/// <param name="Bit">The bit, counted as the rest of the frame.</param>
/// <param name="Flag">What it means when it is set; none where it only tells the index.</param>
/// <param name="IsIndex">Whether it says that the index passes, from the frame on in which it is set anew.</param>
public readonly record struct FlagBit(int Bit, GaugeFlags Flag, bool IsIndex);

/// <summary>All such bits of a gauge.</summary>
/// <remarks>The index is told when its bit is set and was not set in the frame before: a sensor may lie under its magnet for many frames.</remarks>
/// <param name="bits">The bits.</param>
/// <param name="order">How they are counted.</param>
public sealed class FlagBits(IReadOnlyList<FlagBit> bits, BitOrder order)
{
    private readonly FlagBit[] _bits = [.. bits];
    private bool _indexWasSet;

    /// <summary>Reads them.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="index">Whether the index passes.</param>
    public GaugeFlags Read(ReadOnlySpan<byte> frame, out bool index)
    {
        var flags = GaugeFlags.None;
        var set = false;
        foreach (var (bit, flag, isIndex) in _bits)
        {
            if (Bits.At(frame, bit, order))
            {
                flags |= flag;
                set |= isIndex;
            }
        }

        index = set && !_indexWasSet;
        _indexWasSet = set;
        return flags;
    }
}

using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Decoding.Binary;

/// <summary>A bit that tells the unit.</summary>
/// <param name="Bit">The bit, counted as the rest of the frame.</param>
/// <param name="WhenSet">The unit when it is set; the other one when it is not.</param>
public readonly record struct UnitBit(int Bit, GaugeUnit WhenSet)
{
    /// <summary>Reads it.</summary>
    public GaugeUnit Read(ReadOnlySpan<byte> frame, BitOrder order) =>
        Bits.At(frame, Bit, order) == (WhenSet == GaugeUnit.Inch) ? GaugeUnit.Inch : GaugeUnit.Millimetre;
}

using System.Numerics;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Hid;

/// <summary>How a field's counts become a length: (counts × numerator + offset) / denominator, in a unit.</summary>
/// <remarks>A fraction, since 12345 / 1000 is 12.345 and 12345 × 0.001 is not always.</remarks>
public readonly record struct FieldScale
{
    private readonly double _numerator;
    private readonly double _offset;
    private readonly double _denominator;

    private FieldScale(double numerator, double offset, double denominator, GaugeUnit unit) =>
        (_numerator, _offset, _denominator, Unit) = (numerator, offset, denominator, unit);

    /// <summary>The unit of the length.</summary>
    public GaugeUnit Unit { get; }

    /// <summary>The length of so many counts, in <see cref="Unit"/>.</summary>
    public double Of(long counts) => (counts * _numerator + _offset) / _denominator;

    /// <summary>The scale where a profile gives the length of one count.</summary>
    /// <param name="step">The length of one count, above 0.</param>
    /// <param name="unit">Its unit.</param>
    public static FieldScale FromStep(double step, GaugeUnit unit)
    {
        var countsPerUnit = Math.Round(1 / step);
        return 1 / countsPerUnit == step ? new(1, 0, countsPerUnit, unit) : new(step, 0, 1, unit);
    }

    /// <summary>The scale that a report descriptor gives: the logical range covers the physical range, which counts in powers of ten of the unit.</summary>
    /// <remarks>USB HID 1.11, section 6.2.2.7.</remarks>
    /// <returns>False where the field is no length or its ranges or exponent make no scale.</returns>
    public static bool TryFromField(ReportField field, out FieldScale scale)
    {
        scale = default;
        var counts = field.LogicalMaximum - field.LogicalMinimum;
        var span = field.PhysicalMaximum - field.PhysicalMinimum;
        if (!field.Unit.TryGetLength(out var unit, out var tens) || counts <= 0 || span == 0 || field.UnitExponent is < -8 or > 7)
        {
            return false;
        }

        var common = (long)BigInteger.GreatestCommonDivisor(counts, span);
        (counts, span) = (counts / common, span / common);
        var offset = (double)((Int128)field.PhysicalMinimum * counts - (Int128)field.LogicalMinimum * span);
        var power = field.UnitExponent + tens;
        var up = Math.Pow(10, Math.Max(power, 0));
        scale = new(span * up, offset * up, counts * Math.Pow(10, Math.Max(-power, 0)), unit);
        return true;
    }
}

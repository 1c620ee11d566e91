using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Hid;

/// <summary>A unit as a report descriptor codes it: nibble 0 names the system, nibbles 1 to 6 are signed powers of its base units.</summary>
/// <remarks>USB HID 1.11, section 6.2.2.7. Systems 1 and 3 measure length in centimetres and inches; 2 and 4 measure angles.</remarks>
/// <param name="Code">The code; 0 where the field has no unit.</param>
public readonly record struct HidUnit(uint Code)
{
    private const int Dimensions = 7;

    /// <summary>A centimetre.</summary>
    public static readonly HidUnit Centimetre = new(0x11);

    /// <summary>An inch.</summary>
    public static readonly HidUnit Inch = new(0x13);

    /// <summary>The system: 0 none, 1 SI linear, 2 SI rotation, 3 English linear, 4 English rotation, 15 the maker's own.</summary>
    public int System => (int)(Code & 0xF);

    /// <summary>The power of one base unit, -8 to 7.</summary>
    /// <param name="dimension">1 length or angle, 2 mass, 3 time, 4 temperature, 5 current, 6 luminous intensity.</param>
    public int Power(int dimension)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimension, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(dimension, Dimensions);
        return SignedNibble((Code >> (4 * dimension)) & 0xF);
    }

    /// <summary>The unit of a length and the power of ten by which it differs from the code's own.</summary>
    /// <returns>False where the code stands for no length.</returns>
    public bool TryGetLength(out GaugeUnit unit, out int tens)
    {
        (unit, tens) = this == Inch ? (GaugeUnit.Inch, 0) : (GaugeUnit.Millimetre, 1);
        return this == Centimetre || this == Inch;
    }

    /// <summary>The exponent that an item of a report descriptor codes.</summary>
    /// <remarks>By the standard a signed nibble; many devices give a signed byte instead, and where the nibble says something both agree.</remarks>
    /// <param name="data">The item's data, its sign extended.</param>
    public static int ExponentOf(int data) => data is >= 0 and <= 0xF ? SignedNibble((uint)data) : data;

    private static int SignedNibble(uint nibble) => nibble < 8 ? (int)nibble : (int)nibble - 16;
}

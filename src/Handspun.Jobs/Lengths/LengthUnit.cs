namespace Handspun.Jobs.Lengths;

/// <summary>The unit in which a shop reads and writes lengths.</summary>
public enum LengthUnit
{
    /// <summary>Inches, in ten-thousandths.</summary>
    Inch,

    /// <summary>Millimetres, in thousandths.</summary>
    Millimetre,
}

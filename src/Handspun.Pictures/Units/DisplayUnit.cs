namespace Handspun.Pictures.Units;

/// <summary>The unit in which a shop wants to read lengths.</summary>
public enum DisplayUnit
{
    /// <summary>Inches, down to a ten-thousandth; thousandths are what a limit is given in.</summary>
    Inch,

    /// <summary>Millimetres, down to a thousandth.</summary>
    Millimetre,
}

using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Runout.Faults;

/// <summary>What a narrow place on a shaft may be. An indicator sees its height and width only, so the name is a guess and said as one.</summary>
public enum LocalFaultKind
{
    /// <summary>It stands up: a burr, a bruise or dirt.</summary>
    Raised,

    /// <summary>It is sunk and narrow: a scratch or a pit.</summary>
    Scratch,

    /// <summary>It is sunk and wide: a keyway, an oil hole or a flat.</summary>
    Recess,
}

/// <summary>A narrow place that comes back at the same angle on every turn. It is no part of the runout.</summary>
/// <param name="Kind">What it may be.</param>
/// <param name="At">Its middle, from the same zero as the high spot.</param>
/// <param name="WidthDegrees">How wide it is, in degrees; no less than the angle between two readings.</param>
/// <param name="Height">How far it stands out of the shaft's shape; below zero where it is sunk.</param>
/// <param name="HeightU95">Expanded uncertainty of the height (k = 2), from how far the turns agree; a tip between two readings is not in it.</param>
/// <param name="Turns">Turns on which it was seen.</param>
/// <param name="TurnsLooked">Turns on which a reading fell there.</param>
public sealed record LocalFault(
    LocalFaultKind Kind, Angle At, double WidthDegrees, Length Height, Length HeightU95, int Turns, int TurnsLooked)
{
    /// <summary>One plain sentence.</summary>
    public string Sentence => Kind switch
    {
        LocalFaultKind.Raised => "A narrow raised place comes back every turn: a burr, a bruise or dirt. Clean and stone it, and measure again.",
        LocalFaultKind.Scratch => "A narrow sunk place comes back every turn: a scratch or a pit. Set the plunger beside it and measure again.",
        LocalFaultKind.Recess => "A wide sunk place comes back every turn: a keyway, an oil hole or a flat. Set the plunger beside it and measure again.",
        _ => throw new InvalidOperationException("No such kind of fault."),
    };
}

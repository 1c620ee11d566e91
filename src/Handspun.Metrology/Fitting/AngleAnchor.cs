namespace Handspun.Metrology.Fitting;

/// <summary>Something that told the angle at a moment.</summary>
/// <param name="Seconds">When.</param>
/// <param name="Turns">The angle, in turns of the shaft.</param>
/// <param name="Doubt">Its standard uncertainty, in turns; above 0.</param>
internal readonly record struct AngleAnchor(double Seconds, double Turns, double Doubt);

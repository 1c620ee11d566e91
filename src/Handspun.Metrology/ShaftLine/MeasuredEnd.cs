using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.ShaftLine;

/// <summary>What one runout measurement says of the end of a crank.</summary>
/// <param name="Eccentricity">How far the shaft's centre is off the axis of rotation.</param>
/// <param name="EccentricityU95">Its expanded uncertainty (k = 2).</param>
/// <param name="Toward">Its direction from the reference.</param>
/// <param name="TowardU95Degrees">Its expanded uncertainty (k = 2) in degrees; null where the reference does not last from one capture to the next.</param>
/// <param name="Reference">Where zero degrees is.</param>
public sealed record MeasuredEnd(Length Eccentricity, Length EccentricityU95, Angle Toward, double? TowardU95Degrees, AngleReference Reference)
{
    /// <summary>What a runout says of the end; null where there is none.</summary>
    public static MeasuredEnd? Of(RunoutResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result is { Eccentricity: { } size, EccentricityU95: { } sizeU95, EccentricityToward: { } toward }
            ? new(size, sizeU95, toward, result.EccentricityTowardU95Degrees, result.Reference)
            : null;
    }
}

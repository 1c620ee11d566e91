using System.Text.Json.Serialization;

namespace Handspun.Jobs.Points;

/// <summary>How the indicator stands at a shaft end. All of it may be left out: a plunger square to the shaft, of which only the runout is asked.</summary>
public sealed record RunoutSetup : PointSetup
{
    private const double Longest = 1000;
    private const double Coldest = -40;
    private const double Hottest = 60;

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.Runout;

    /// <summary>Axial distance of the measuring point from the middle of this end's bearing, outward, in millimetres; more than 0. Null where it was not typed; then nothing is said of the shaft lines.</summary>
    public double? FromBearingMillimetres { get; init; }

    /// <summary>The division of the tool that it was measured with, in millimetres. It stands for the expanded uncertainty (k = 2).</summary>
    /// <remarks>
    /// A rule is read at both of its ends, each to half a division: a triangle of one division to either side, whose standard
    /// deviation is 1/√6 of a division (JCGM 100:2008, 4.3.9), so that twice that is 0.82 of one.
    /// </remarks>
    public double? DivisionMillimetres { get; init; }

    /// <summary>The angle between a lever indicator and the surface, in degrees, 0 ≤ angle &lt; 90; null for a plunger.</summary>
    public double? LeverDegrees { get; init; }

    /// <summary>The temperature of shaft and gauge, in degrees Celsius; null where nobody read it.</summary>
    public double? Celsius { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<string> Problems()
    {
        var isPlaced = FromBearingMillimetres is not null || DivisionMillimetres is not null;
        if (isPlaced && FromBearingMillimetres is not (> 0 and < Longest))
        {
            yield return "Give the distance of the plunger from the middle of the bearing, outward: more than nothing and less than a metre.";
        }

        if (isPlaced && (DivisionMillimetres is not (> 0 and < Longest) || DivisionMillimetres >= FromBearingMillimetres))
        {
            yield return "Give the division of the tool that the distance was measured with: more than nothing and less than the distance itself.";
        }

        if (LeverDegrees is not (null or (>= 0 and < 90)))
        {
            yield return "Give the angle between lever and surface in degrees, from 0 to less than 90, or leave it empty for a plunger.";
        }

        if (Celsius is not (null or (>= Coldest and <= Hottest)))
        {
            yield return $"Give the temperature in degrees Celsius, from {Coldest} to {Hottest}, or leave it empty.";
        }
    }
}

using System.Text.Json.Serialization;

namespace Handspun.Jobs.Points;

/// <summary>Where the indicator stands at a shaft end.</summary>
public sealed record RunoutSetup : PointSetup
{
    private const double Longest = 1000;

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.Runout;

    /// <summary>Axial distance of the measuring point from the middle of this end's bearing, outward, in millimetres; more than 0.</summary>
    public required double FromBearingMillimetres { get; init; }

    /// <summary>The division of the tool that it was measured with, in millimetres. It stands for the expanded uncertainty (k = 2).</summary>
    /// <remarks>
    /// A rule is read at both of its ends, each to half a division: a triangle of one division to either side, whose standard
    /// deviation is 1/√6 of a division (JCGM 100:2008, 4.3.9), so that twice that is 0.82 of one.
    /// </remarks>
    public required double DivisionMillimetres { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<string> Problems()
    {
        if (FromBearingMillimetres is not (> 0 and < Longest))
        {
            yield return "Give the distance of the plunger from the middle of the bearing, outward: more than nothing and less than a metre.";
        }

        if (DivisionMillimetres is not (> 0 and < Longest) || DivisionMillimetres >= FromBearingMillimetres)
        {
            yield return "Give the division of the tool that the distance was measured with: more than nothing and less than the distance itself.";
        }
    }
}

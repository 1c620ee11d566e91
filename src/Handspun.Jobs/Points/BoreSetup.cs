using System.Text.Json.Serialization;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Points;

/// <summary>What a two-point gauge was set to, and where in the bore it is rocked next.</summary>
/// <remarks>Nothing in it is guessed: without a setting there is a deviation from the gauge's zero and no size, without a place the record belongs to no depth and no direction.</remarks>
public sealed record BoreSetup : PointSetup
{
    private const double LeastKnown = 0.1;
    private const double MostTravel = 15;
    private const double Deepest = 300;
    private static readonly PlausibleLength Sizes = new(Length.FromMillimetres(3), Length.FromMillimetres(300));

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.Bore;

    /// <summary>Size of the setting ring or the micrometer, in millimetres; null where it is not known.</summary>
    public double? SettingMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2), in millimetres: from the ring's certificate, or the micrometer's division. Null only without a setting.</summary>
    public double? SettingU95Millimetres { get; init; }

    /// <summary>What the gauge showed there at its turning point, in millimetres; 0 where it was zeroed.</summary>
    public double ShownMillimetres { get; init; }

    /// <summary>Whether the reading falls when the gauge spans more, as on a dial whose plunger a smaller bore pushes in.</summary>
    public bool LargerReadsLower { get; init; }

    /// <summary>How deep the gauge is rocked, from the bore's mouth, in millimetres; null where it was not said.</summary>
    public double? DepthMillimetres { get; init; }

    /// <summary>Which way across, as on a clock face looked at from the mouth: more than 0, up to 12. Null where it was not said.</summary>
    public double? ClockHours { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<string> Problems()
    {
        if (SettingMillimetres is { } size && Sizes.Doubt(Length.FromMillimetres(size), "what a bore gauge is set to") is { } doubt)
        {
            yield return doubt;
        }

        if (SettingMillimetres is null != SettingU95Millimetres is null)
        {
            yield return "Give the size of the ring or micrometer and how well it is known together, or neither.";
        }

        if (SettingU95Millimetres is not null and not (>= 0 and <= LeastKnown))
        {
            yield return "A ring or a micrometer is known to within a tenth of a millimetre: type its uncertainty again with its unit.";
        }

        if (Math.Abs(ShownMillimetres) is not <= MostTravel)
        {
            yield return "The gauge cannot have shown so much at its setting: type again what it showed there, with its unit, or 0 mm where it was zeroed.";
        }

        if (DepthMillimetres is null != ClockHours is null)
        {
            yield return "Give the depth and the clock position together, or neither.";
        }

        if (DepthMillimetres is not null and not (>= 0 and <= Deepest))
        {
            yield return "The depth counts from the mouth of the bore, 0 to 300 mm: type it again with its unit.";
        }

        if (ClockHours is not null and not (> 0 and <= 12))
        {
            yield return "The clock position is an hour from 1 to 12.";
        }
    }
}

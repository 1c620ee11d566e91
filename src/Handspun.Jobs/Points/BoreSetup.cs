using System.Text.Json.Serialization;

namespace Handspun.Jobs.Points;

/// <summary>What a two-point gauge was set to, and where in the bore it is rocked next.</summary>
/// <remarks>Nothing in it is guessed: without a setting there is a deviation from the gauge's zero and no size, without a place the record belongs to no depth and no direction.</remarks>
public sealed record BoreSetup : SettingSetup
{
    private const double Deepest = 300;

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.Bore;

    /// <inheritdoc/>
    protected override string WhatIsSet => "what a bore gauge is set to";

    /// <inheritdoc/>
    protected override string SetWith => "ring or micrometer";

    /// <summary>How deep the gauge is rocked, from the bore's mouth, in millimetres; null where it was not said.</summary>
    public double? DepthMillimetres { get; init; }

    /// <summary>Which way across, as on a clock face looked at from the mouth: more than 0, up to 12. Null where it was not said.</summary>
    public double? ClockHours { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<string> Problems()
    {
        foreach (var problem in base.Problems())
        {
            yield return problem;
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

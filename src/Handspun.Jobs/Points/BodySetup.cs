using System.Text.Json.Serialization;

namespace Handspun.Jobs.Points;

/// <summary>The reference of known size that a gauge was set on before a body is rolled through under it: a pin, a block or a micrometer's rod.</summary>
public sealed record BodySetup : SettingSetup
{
    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.OutsideSize;

    /// <inheritdoc/>
    protected override string WhatIsSet => "what a gauge is set to";

    /// <inheritdoc/>
    protected override string SetWith => "pin or block";
}

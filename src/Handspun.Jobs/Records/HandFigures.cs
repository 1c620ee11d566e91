using System.Text.Json.Serialization;
using Handspun.Jobs.Points;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Records;

/// <summary>A gap, a thickness or a movement that was read by eye.</summary>
public sealed record HandFigures : TypedFigures
{
    /// <summary>What was read, such as <c>Tensioner shoe thickness</c>.</summary>
    public required string Named { get; init; }

    /// <summary>The length.</summary>
    public required double LengthMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public required double LengthU95Millimetres { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.ByHand;

    /// <inheritdoc/>
    public override Length? Value => Length.FromMillimetres(LengthMillimetres);

    /// <inheritdoc/>
    public override Length? ValueU95 => Length.FromMillimetres(LengthU95Millimetres);

    /// <inheritdoc/>
    public override string ValueTitle => Named;
}

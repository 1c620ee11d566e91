using System.Text.Json.Serialization;
using Handspun.Jobs.Points;
using Handspun.Metrology.Fits;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Records;

/// <summary>A size that was read off a tool and typed: a body across, or a bore.</summary>
public sealed record SizeFigures : TypedFigures
{
    /// <summary>Whether it is the size of a bore.</summary>
    public bool Inside { get; init; }

    /// <summary>The size.</summary>
    public required double SizeMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public required double SizeU95Millimetres { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => Inside ? PointKind.Bore : PointKind.OutsideSize;

    /// <inheritdoc/>
    public override Length? Value => Length.FromMillimetres(SizeMillimetres);

    /// <inheritdoc/>
    public override Length? ValueU95 => Length.FromMillimetres(SizeU95Millimetres);

    /// <inheritdoc/>
    public override MeasuredSize? AbsoluteSize => MeasuredSize.Of(Length.FromMillimetres(SizeMillimetres), Length.FromMillimetres(SizeU95Millimetres));

    /// <inheritdoc/>
    public override string ValueTitle => Inside ? "Size of the bore" : "Size across";
}

using System.Text.Json.Serialization;
using Handspun.Jobs.Bores;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Records;

/// <summary>A clearance, worked out of the sizes of a bore and of the body in it. Below zero where the body is the larger.</summary>
public sealed record ClearanceFigures : ResultFigures
{
    /// <summary>Bore less body.</summary>
    public required double ClearanceMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public required double ClearanceU95Millimetres { get; init; }

    /// <summary>Size of the bore.</summary>
    public required double BoreMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public required double BoreU95Millimetres { get; init; }

    /// <summary>Size of the body.</summary>
    public required double BodyMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public required double BodyU95Millimetres { get; init; }

    /// <summary>How deep in the bore its smallest place is, from the mouth; null where the bore's size is of no place that was said.</summary>
    public double? BoreDepthMillimetres { get; init; }

    /// <summary>Which way across there, in hours of a clock face looked at from the mouth.</summary>
    public double? BoreClockHours { get; init; }

    /// <summary>The record that the bore's size is from.</summary>
    public required string BoreRecord { get; init; }

    /// <summary>The record that the body's size is from.</summary>
    public required string BodyRecord { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.Clearance;

    /// <inheritdoc/>
    public override Length? Value => Length.FromMillimetres(ClearanceMillimetres);

    /// <inheritdoc/>
    public override Length? ValueU95 => Length.FromMillimetres(ClearanceU95Millimetres);

    /// <inheritdoc/>
    public override string ValueTitle => "Clearance";

    /// <inheritdoc/>
    public override string SurerBy => "Measure bore and body again with a finer gauge.";

    /// <inheritdoc/>
    public override IEnumerable<Figure> ToShow(LengthUnit unit) =>
    [
        new(BoreDepthMillimetres is null ? "Bore" : "Bore at its smallest place", BoreInWords(unit)),
        new("Body", LengthText.WithUncertainty(Length.FromMillimetres(BodyMillimetres), Length.FromMillimetres(BodyU95Millimetres), unit)),
    ];

    private string BoreInWords(LengthUnit unit)
    {
        var size = LengthText.WithUncertainty(Length.FromMillimetres(BoreMillimetres), Length.FromMillimetres(BoreU95Millimetres), unit);
        return (BoreDepthMillimetres, BoreClockHours) is ({ } depth, { } clock) ? $"{size}, {BorePlaces.InWords(depth, clock, unit)}" : size;
    }
}

using System.Globalization;
using System.Text.Json.Serialization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Records;

/// <summary>What pushing and pulling found, as it is kept. Lengths in millimetres; null where it is not known.</summary>
public sealed record EndPlayFigures : ResultFigures
{
    /// <summary>Cycles that count: pairs of one stop and the other.</summary>
    public int Cycles { get; init; }

    /// <summary>Axial movement between both stops.</summary>
    public double? EndPlayMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? EndPlayU95Millimetres { get; init; }

    /// <summary>Largest less smallest end play of the single cycles; null with fewer than two.</summary>
    public double? SpreadMillimetres { get; init; }

    /// <summary>The end play of each cycle by itself, in order; null where it is not known.</summary>
    public IReadOnlyList<double>? ByCycleMillimetres { get; init; }

    /// <summary>Holds that ended short of a stop or were disturbed, and were left out.</summary>
    public int HoldsLeftOut { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.EndPlay;

    /// <inheritdoc/>
    public override Length? Value => EndPlayMillimetres is { } play ? Length.FromMillimetres(play) : null;

    /// <inheritdoc/>
    public override Length? ValueU95 => EndPlayU95Millimetres is { } u ? Length.FromMillimetres(u) : null;

    /// <inheritdoc/>
    public override string ValueTitle => "End play";

    /// <inheritdoc/>
    public override string SurerBy => "Measure again with more cycles or a finer gauge, and hold each stop with the same pressure.";

    /// <inheritdoc/>
    public override IEnumerable<Figure> ToShow(LengthUnit unit)
    {
        if (Cycles > 0)
        {
            yield return new("Cycles", Cycles.ToString(CultureInfo.InvariantCulture));
        }

        yield return new("Readings", Readings.ToString(CultureInfo.InvariantCulture));
        if (SpreadMillimetres is { } spread)
        {
            yield return new("Spread of the cycles", LengthText.Of(Length.FromMillimetres(spread), unit));
        }

        if (ByCycleMillimetres is { Count: > 0 } cycles)
        {
            yield return new("Cycle by cycle", $"{string.Join(", ", cycles.Select(play => LengthText.Number(Length.FromMillimetres(play), unit)))} {LengthText.Symbol(unit)}");
        }

        if (HoldsLeftOut > 0)
        {
            yield return new("Holds left out", HoldsLeftOut.ToString(CultureInfo.InvariantCulture));
        }
    }
}

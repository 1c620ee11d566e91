using System.Globalization;
using System.Text.Json.Serialization;
using Handspun.Jobs.Bores;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Fits;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Records;

/// <summary>What rocking a bore gauge found at one place, or rolling a body through under a gauge, as it is kept. Lengths in millimetres; null where it is not known.</summary>
public sealed record BoreFigures : ResultFigures
{
    /// <summary>Whether it is the size of a body across.</summary>
    public bool Outside { get; init; }

    /// <summary>Passes through the turning point that count.</summary>
    public int Passes { get; init; }

    /// <summary>The bore less what the gauge was set to; less the gauge's zero where that is not known. Positive is larger.</summary>
    public double? DeviationMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? DeviationU95Millimetres { get; init; }

    /// <summary>The bore's size; null where the setting is not known.</summary>
    public double? SizeMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? SizeU95Millimetres { get; init; }

    /// <summary>The part of the uncertainty that is this place's own: of the passes and the gauge (k = 2).</summary>
    public double? OwnU95Millimetres { get; init; }

    /// <summary>The part that all places share which were measured with one setting: of the ring's size and of what was read there (k = 2).</summary>
    public double? SharedU95Millimetres { get; init; }

    /// <summary>Largest less smallest of the single passes; null with fewer than two.</summary>
    public double? SpreadMillimetres { get; init; }

    /// <summary>What the gauge showed at each pass, in order; null where there is no result.</summary>
    public IReadOnlyList<double>? ByPassMillimetres { get; init; }

    /// <summary>Size of the ring, micrometer or other reference that the gauge was set to; null where it was not said.</summary>
    public double? SettingMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? SettingU95Millimetres { get; init; }

    /// <summary>What the gauge showed there.</summary>
    public double ShownMillimetres { get; init; }

    /// <summary>How deep the gauge was rocked, from the bore's mouth; null where it was not said.</summary>
    public double? DepthMillimetres { get; init; }

    /// <summary>Which way across, in hours of a clock face looked at from the mouth; null where it was not said.</summary>
    public double? ClockHours { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => Outside ? PointKind.OutsideSize : PointKind.Bore;

    /// <inheritdoc/>
    public override Length? Value => LengthOf(SizeMillimetres ?? DeviationMillimetres);

    /// <inheritdoc/>
    public override Length? ValueU95 => LengthOf(SizeMillimetres is null ? DeviationU95Millimetres : SizeU95Millimetres);

    /// <inheritdoc/>
    public override MeasuredSize? AbsoluteSize => (SizeMillimetres, SizeU95Millimetres) is ({ } size, { } u95)
        ? MeasuredSize.Of(Length.FromMillimetres(size), Length.FromMillimetres(u95))
        : null;

    /// <inheritdoc/>
    public override string ValueTitle => DeviationMillimetres is not null && SizeMillimetres is null ? "Deviation from the gauge's zero" : Outside ? "Size across" : "Bore";

    /// <inheritdoc/>
    public override string? NotJudged => DeviationMillimetres is not null && SizeMillimetres is null
        ? $"It is the deviation from the gauge's zero, and no limit is held against it: type the size of the {(Outside ? "reference" : "ring or micrometer")}, and measure again."
        : null;

    /// <inheritdoc/>
    public override string SurerBy => $"Measure again with more passes, a finer gauge or a {(Outside ? "reference" : "ring")} whose size is known better.";

    /// <inheritdoc/>
    public override IEnumerable<Figure> ToShow(LengthUnit unit)
    {
        if ((DepthMillimetres, ClockHours) is ({ } depth, { } clock))
        {
            yield return new("Place", BorePlaces.InWords(depth, clock, unit));
        }

        if ((SettingMillimetres, SettingU95Millimetres) is ({ } setting, { } known))
        {
            yield return new("Set to", LengthText.WithUncertainty(Length.FromMillimetres(setting), Length.FromMillimetres(known), unit));
        }

        if ((SizeMillimetres, DeviationMillimetres, DeviationU95Millimetres) is ({ }, { } deviation, { } doubt))
        {
            yield return new("From the setting", LengthText.WithUncertainty(Length.FromMillimetres(deviation), Length.FromMillimetres(doubt), unit));
        }

        if (Passes > 0)
        {
            yield return new("Passes", Passes.ToString(CultureInfo.InvariantCulture));
        }

        if (SpreadMillimetres is { } spread)
        {
            yield return new("Spread of the passes", LengthText.Of(Length.FromMillimetres(spread), unit));
        }

        yield return new("Readings", Readings.ToString(CultureInfo.InvariantCulture));
    }

    private static Length? LengthOf(double? millimetres) => millimetres is { } value ? Length.FromMillimetres(value) : null;
}

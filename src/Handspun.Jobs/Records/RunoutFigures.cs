using System.Globalization;
using System.Text.Json.Serialization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.ShaftLine;

namespace Handspun.Jobs.Records;

/// <summary>What a runout capture found, as it is kept. Lengths in millimetres, angles in degrees; null where it is not known.</summary>
public sealed record RunoutFigures : ResultFigures
{
    /// <summary>Turns that were seen.</summary>
    public double Turns { get; init; }

    /// <summary>Total indicated runout.</summary>
    public double? TirMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? TirU95Millimetres { get; init; }

    /// <summary>Distance of the shaft's centre from the axis of rotation.</summary>
    public double? EccentricityMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? EccentricityU95Millimetres { get; init; }

    /// <summary>Angle from the reference at which the shaft's centre lies.</summary>
    public double? EccentricityTowardDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2); null where the angle cannot be held against that of another capture.</summary>
    public double? EccentricityTowardU95Degrees { get; init; }

    /// <summary>Out-of-roundness without the eccentricity, about the least-squares circle.</summary>
    public double? RoundnessMillimetres { get; init; }

    /// <summary>The same between the two concentric circles that are least apart (minimum zone).</summary>
    public double? ZoneRoundnessMillimetres { get; init; }

    /// <summary>The same about the smallest circle around the shaft (minimum circumscribed).</summary>
    public double? CircumscribedRoundnessMillimetres { get; init; }

    /// <summary>The same about the largest circle inside it (maximum inscribed).</summary>
    public double? InscribedRoundnessMillimetres { get; init; }

    /// <summary>Angle of the high spot from the reference.</summary>
    public double? HighSpotDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? HighSpotU95Degrees { get; init; }

    /// <summary>Angle of the low spot from the reference.</summary>
    public double? LowSpotDegrees { get; init; }

    /// <summary>Where zero degrees is, as a code: <c>first-reading</c>, <c>mark</c>, <c>index</c> or <c>encoder</c>.</summary>
    public string? AngleReference { get; init; }

    /// <summary>The runout of each whole turn by itself, in order; null where it is not known.</summary>
    public IReadOnlyList<double>? TirByTurnMillimetres { get; init; }

    /// <summary>Total indicated runout with the local faults in it; the same as without where there are none.</summary>
    public double? TirWithFaultsMillimetres { get; init; }

    /// <summary>Narrow places that came back every turn; null where they were not looked for.</summary>
    public IReadOnlyList<FaultFigures>? Faults { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.Runout;

    /// <inheritdoc/>
    public override Length? Value => TirMillimetres is { } tir ? Length.FromMillimetres(tir) : null;

    /// <inheritdoc/>
    public override Length? ValueU95 => TirU95Millimetres is { } u ? Length.FromMillimetres(u) : null;

    /// <inheritdoc/>
    public override string ValueTitle => "Total indicated runout";

    /// <inheritdoc/>
    public override string SurerBy => "Measure again with more turns or a finer gauge.";

    /// <summary>What it says of the end of a crank; null where there is no runout, or the record was made before that was kept.</summary>
    public MeasuredEnd? ToEnd() => (EccentricityMillimetres, EccentricityU95Millimetres, EccentricityTowardDegrees) is ({ } off, { } u95, { } toward)
        ? new(Length.FromMillimetres(off), Length.FromMillimetres(u95), Angle.FromDegrees(toward), EccentricityTowardU95Degrees, RunoutCodes.Read(AngleReference))
        : null;

    /// <inheritdoc/>
    public override IEnumerable<Figure> ToShow(LengthUnit unit)
    {
        if (Turns > 0)
        {
            yield return new("Turns", Turns.ToString("0.0", CultureInfo.InvariantCulture));
        }

        yield return new("Readings", Readings.ToString(CultureInfo.InvariantCulture));
        if (HighSpotDegrees is { } angle)
        {
            yield return new("High spot", string.Create(CultureInfo.InvariantCulture, $"{angle:0}° from {RunoutCodes.InWords(AngleReference)}"));
        }

        if (EccentricityMillimetres is { } off)
        {
            yield return new("Off centre by", EccentricityTowardDegrees is { } toward ? string.Create(CultureInfo.InvariantCulture, $"{In(off)} toward {toward:0}°") : In(off));
        }

        if (RoundnessMillimetres is { } round)
        {
            yield return new("Out of round", ZoneRoundnessMillimetres is { } zone ? $"{In(round)} (least squares), {In(zone)} (minimum zone)" : In(round));
        }

        if ((CircumscribedRoundnessMillimetres, InscribedRoundnessMillimetres) is ({ } around, { } inside))
        {
            yield return new("By other circles", $"{In(around)} (smallest around), {In(inside)} (largest inside)");
        }

        if (TirByTurnMillimetres is { Count: > 1 } turns)
        {
            yield return new("Turn by turn", $"{LengthText.Number(Length.FromMillimetres(turns.Min()), unit)} to {In(turns.Max())}");
        }

        foreach (var fault in Faults ?? [])
        {
            yield return new(
                string.Create(CultureInfo.InvariantCulture, $"At {fault.AtDegrees:0}°"),
                string.Create(CultureInfo.InvariantCulture, $"{In(fault.HeightMillimetres)}, {fault.WidthDegrees:0}° wide, on {fault.SeenOnTurns} of {fault.OfTurns} turns. {fault.Sentence}"));
        }

        if (Faults is { Count: > 0 } && TirWithFaultsMillimetres is { } all)
        {
            yield return new("Runout with that in it", In(all));
        }

        string In(double millimetres) => LengthText.Of(Length.FromMillimetres(millimetres), unit);
    }
}

using System.Globalization;
using System.Text.Json.Serialization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Records;

/// <summary>What a cam does to its lifter, as it is kept. All angles are of the crank and count from the reference; null where it is not known.</summary>
public sealed record LiftFigures : ResultFigures
{
    /// <summary>Turns of the cam that were seen.</summary>
    public double CamTurns { get; init; }

    /// <summary>The nose above the base circle, at the lifter.</summary>
    public double? LobeLiftMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? LobeLiftU95Millimetres { get; init; }

    /// <summary>Valve movement for one of the lifter.</summary>
    public double? RockerRatio { get; init; }

    /// <summary>Lobe lift times rocker ratio, play not taken off.</summary>
    public double? ValveLiftMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? ValveLiftU95Millimetres { get; init; }

    /// <summary>The lift, at the lifter, that opening and closing count from.</summary>
    public double CheckingLiftMillimetres { get; init; }

    /// <summary>The middle of the lobe, 0 to 720.</summary>
    public double? CentrelineCrankDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? CentrelineCrankU95Degrees { get; init; }

    /// <summary>Where the lift rises through the checking lift.</summary>
    public double? OpeningCrankDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? OpeningCrankU95Degrees { get; init; }

    /// <summary>Where it falls through the checking lift.</summary>
    public double? ClosingCrankDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? ClosingCrankU95Degrees { get; init; }

    /// <summary>From opening to closing.</summary>
    public double? DurationCrankDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? DurationCrankU95Degrees { get; init; }

    /// <summary>How far the base circle runs out; it is not in the lift.</summary>
    public double? BaseCircleRunoutMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? BaseCircleRunoutU95Millimetres { get; init; }

    /// <summary>Top dead centre from the same reference, as it was given beforehand.</summary>
    public double? TopCrankDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? TopCrankU95Degrees { get; init; }

    /// <summary>Which shaft the angle was told of: <c>crank</c> or <c>cam</c>.</summary>
    public string? AngleOf { get; init; }

    /// <summary>Where zero degrees is, as a code: <c>mark</c>, <c>index</c> or <c>encoder</c>.</summary>
    public string? AngleReference { get; init; }

    /// <summary>Whether zero is the same place of the shaft in every capture.</summary>
    public bool ZeroTold { get; init; } = true;

    /// <summary>Lift at each whole degree of the cam from the reference; null where there is none.</summary>
    public IReadOnlyList<double>? CurveMillimetres { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.LiftCurve;

    /// <inheritdoc/>
    public override Length? Value => LobeLiftMillimetres is { } lift ? Length.FromMillimetres(lift) : null;

    /// <inheritdoc/>
    public override Length? ValueU95 => LobeLiftU95Millimetres is { } u95 ? Length.FromMillimetres(u95) : null;

    /// <inheritdoc/>
    public override string ValueTitle => "Lobe lift";

    /// <inheritdoc/>
    public override string SurerBy => "Measure again with more turns of the cam or a finer gauge.";

    /// <summary>Top dead centre; null where it was not given.</summary>
    public Measured<CrankAngle>? Top => TopCrankDegrees is { } top ? new(CrankAngle.FromDegrees(top), CrankAngle.FromDegrees(TopCrankU95Degrees ?? 0)) : null;

    /// <summary>The result as lobes are put together; its status is not measured where there is no lift.</summary>
    public LiftResult ToResult() => new()
    {
        Status = LobeLiftMillimetres is null ? LiftStatus.NotOpened : LiftStatus.Measured,
        Readings = Readings,
        AngleOf = AngleOf == "cam" ? AngleShaft.Cam : AngleShaft.Crank,
        Reference = AngleReference switch { "index" => Metrology.Runout.AngleReference.Index, "mark" => Metrology.Runout.AngleReference.Mark, _ => Metrology.Runout.AngleReference.Encoder },
        ZeroTold = ZeroTold,
        CheckingLift = Length.FromMillimetres(CheckingLiftMillimetres),
        Centreline = AtCam(CentrelineCrankDegrees, CentrelineCrankU95Degrees),
        Opening = AtCam(OpeningCrankDegrees, OpeningCrankU95Degrees),
        Closing = AtCam(ClosingCrankDegrees, ClosingCrankU95Degrees),
        Duration = AtCam(DurationCrankDegrees, DurationCrankU95Degrees),
    };

    /// <inheritdoc/>
    public override IEnumerable<Figure> ToShow(LengthUnit unit)
    {
        yield return new("Turns of the cam", CamTurns.ToString("0.0", CultureInfo.InvariantCulture));
        yield return new("Readings", Readings.ToString(CultureInfo.InvariantCulture));
        if (ValveLiftMillimetres is { } valve)
        {
            yield return new(string.Create(CultureInfo.InvariantCulture, $"Valve lift, ratio {RockerRatio:0.###}"), LengthText.WithUncertainty(Length.FromMillimetres(valve), Length.FromMillimetres(ValveLiftU95Millimetres ?? 0), unit));
        }

        if (LobeLiftMillimetres is not null)
        {
            yield return new("Counted from", $"{LengthText.Of(Length.FromMillimetres(CheckingLiftMillimetres), unit)} of lift at the lifter");
            yield return new("Duration", $"{Crank(DurationCrankDegrees, DurationCrankU95Degrees)} of the crank, {DurationCrankDegrees / 2:0.0}° of the cam");
            yield return new("Centreline", $"{Crank(CentrelineCrankDegrees, CentrelineCrankU95Degrees)} of the crank from {RunoutCodes.InWords(AngleReference)}");
            yield return new("Opens, closes", $"{Crank(OpeningCrankDegrees, OpeningCrankU95Degrees)}, {Crank(ClosingCrankDegrees, ClosingCrankU95Degrees)} of the crank");
        }

        if (BaseCircleRunoutMillimetres is { } circle)
        {
            yield return new("Base circle runs out", LengthText.Of(Length.FromMillimetres(circle), unit));
        }
    }

    private static string Crank(double? degrees, double? u95) => string.Create(CultureInfo.InvariantCulture, $"{degrees:0.0}° ± {Math.Ceiling(10 * (u95 ?? 0)) / 10:0.0}°").Replace('-', '\u2212');

    private static Measured<CamAngle>? AtCam(double? crankDegrees, double? u95) => crankDegrees is { } degrees
        ? new(CrankAngle.FromDegrees(degrees).AtCam(), CrankAngle.FromDegrees(u95 ?? 0).AtCam())
        : null;
}

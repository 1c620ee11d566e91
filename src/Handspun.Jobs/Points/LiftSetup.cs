using System.Text.Json.Serialization;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Points;

/// <summary>What is asked of a cam's lift curve, and where its angle counts from. All angles are of the crank, from the index or the mark, in the direction of rotation.</summary>
public sealed record LiftSetup : PointSetup
{
    private const double MostRatio = 4;
    private const double MostPulses = 3600;
    private const double MostDoubt = 30;
    private const int FewestTeeth = 8;

    /// <inheritdoc/>
    [JsonIgnore]
    public override PointKind Kind => PointKind.LiftCurve;

    /// <summary>Valve movement for one of the lifter; null where it is not known.</summary>
    public double? RockerRatio { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double RockerRatioU95 { get; init; }

    /// <summary>The lift at the lifter that opening and closing count from; null takes the usual 0.050 in.</summary>
    public double? CheckingLiftMillimetres { get; init; }

    /// <summary>Which shaft the index, the marks or the encoder are on: <c>crank</c> or <c>cam</c>; null lets the lobe tell.</summary>
    public string? AngleOf { get; init; }

    /// <summary>Index pulses in one turn of that shaft; null takes what the gauge's profile says.</summary>
    public double? PulsesPerTurn { get; init; }

    /// <summary>Whether one of these pulses is missing in each turn, which tells where zero is: at the pulse after the gap.</summary>
    public bool MissingTooth { get; init; }

    /// <summary>Where top dead centre is; null where it was not typed.</summary>
    public double? TopDegrees { get; init; }

    /// <summary>Where the piston met a stop in the plug's hole, turned one way; null where that was not done.</summary>
    public double? StopDegrees { get; init; }

    /// <summary>Where it met it turned the other way.</summary>
    public double? OtherStopDegrees { get; init; }

    /// <summary>How well each of these angles was read (k = 2).</summary>
    public double AngleU95Degrees { get; init; } = 1;

    /// <summary>Top dead centre: the middle between both stops, else as it was typed; null where neither is there.</summary>
    [JsonIgnore]
    public Measured<CrankAngle>? Top => ByStops?.Angle ?? (TopDegrees is { } typed ? Read(typed) : null);

    /// <inheritdoc/>
    public override IEnumerable<string> Problems()
    {
        if (RockerRatio is { } ratio && !(ratio > 0 && ratio <= MostRatio))
        {
            yield return $"A rocker ratio of {ratio:0.###} cannot be: it is valve movement over lifter movement, mostly 1.5 to 1.8.";
        }

        if (!(RockerRatioU95 >= 0) || RockerRatioU95 > MostRatio)
        {
            yield return "Give how well the rocker ratio is known as a number of 0 or more, such as 0.02.";
        }

        if (CheckingLiftMillimetres is { } lift && PlausibleLift.Doubt(Length.FromMillimetres(lift), "a checking lift") is { } odd)
        {
            yield return odd;
        }

        if (PulsesPerTurn is { } pulses && !(pulses > 0 && pulses <= MostPulses))
        {
            yield return $"Give the pulses in one turn as a number above 0 and up to {MostPulses}.";
        }

        if (MissingTooth && !(PulsesPerTurn is >= FewestTeeth && PulsesPerTurn == Math.Round(PulsesPerTurn.Value)))
        {
            yield return $"Give the teeth in one turn with the missing one counted, a whole number from {FewestTeeth} on, such as 36.";
        }

        if (AngleOf is not (null or "crank" or "cam"))
        {
            yield return "Say whether the angle is told of the crank or of the cam: crank, cam, or nothing.";
        }

        if (new[] { TopDegrees, StopDegrees, OtherStopDegrees }.Any(angle => angle is { } degrees && !(degrees is >= 0 and <= 360)) || !(AngleU95Degrees is > 0 and <= MostDoubt))
        {
            yield return $"Give angles of the crank from 0 to 360 degrees, from the index or the mark, and how well they were read as more than 0 and up to {MostDoubt}.";
        }
        else if (StopDegrees is null != OtherStopDegrees is null)
        {
            yield return "Give both stops: turn up to the stop one way, note the angle, then back the other way until the piston meets it again.";
        }
        else if (ByStops?.Missing is { } missing)
        {
            yield return missing;
        }
    }

    // A checking lift is a part of the lift: thousandths of an inch to some millimetres.
    private static PlausibleLength PlausibleLift { get; } = new(Length.FromMillimetres(0.1), Length.FromMillimetres(8));

    private TopDeadCentre? ByStops => StopDegrees is { } one && OtherStopDegrees is { } other ? TopDeadCentre.ByPositiveStop(Read(one), Read(other)) : null;

    private Measured<CrankAngle> Read(double degrees) => new(CrankAngle.FromDegrees(degrees), CrankAngle.FromDegrees(AngleU95Degrees));
}

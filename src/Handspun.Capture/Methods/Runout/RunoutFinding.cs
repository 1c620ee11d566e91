using Handspun.Jobs.Records;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.Runout;

/// <summary>What the readings of a turning shaft say.</summary>
/// <param name="Result">The runout with all that proves it.</param>
public sealed record RunoutFinding(RunoutResult Result) : CaptureFinding
{
    private const double TouchTurns = 0.4;

    /// <inheritdoc/>
    public override bool IsMeasured => Result.Status == RunoutStatus.Measured;

    /// <inheritdoc/>
    public override string? Missing => Result.Missing;

    /// <inheritdoc/>
    public override double Count => Result.Turns;

    /// <inheritdoc/>
    public override bool IsOnlyTouch => !IsMeasured && Result.Turns < TouchTurns;

    /// <inheritdoc/>
    public override ResultFigures Figures => new RunoutFigures
    {
        Readings = Result.Readings,
        Rejected = Result.Rejected.Count(rejected => rejected.Reason == RejectionReason.Knock),
        Turns = Result.Turns,
        TirMillimetres = Result.Tir?.Millimetres,
        TirU95Millimetres = Result.TirU95?.Millimetres,
        EccentricityMillimetres = Result.Eccentricity?.Millimetres,
        RoundnessMillimetres = Result.Roundness?.Millimetres,
        HighSpotDegrees = Result.HighSpot?.Degrees,
        HighSpotU95Degrees = Result.HighSpotU95Degrees,
        LowSpotDegrees = Result.LowSpot?.Degrees,
        AngleReference = Result.HighSpot is null ? null : RunoutCodes.Of(Result.Reference),
    };

    /// <inheritdoc/>
    public override IEnumerable<RecordWarning> Warnings =>
        Result.Warnings.Select(warning => new RecordWarning(RunoutWarningText.Code(warning), RunoutWarningText.Sentence(warning)));

    /// <inheritdoc/>
    public override LiveFigures Live(CaptureSoFar soFar) => new RunoutLive
    {
        Turns = Result.Turns,
        TurnsWanted = soFar.Wanted,
        TurnsPerSecond = Result.TurnsPerSecond,
        ReadingsPerTurn = Result.TurnsPerSecond > 0 ? soFar.ReadingsPerSecond / Result.TurnsPerSecond : 0,
        TirMillimetres = Result.Tir?.Millimetres,
        TirU95Millimetres = Result.TirU95?.Millimetres,
    };

    /// <inheritdoc/>
    public override string Advice(CaptureSoFar soFar) => RunoutAdvice.For(Result, soFar);
}

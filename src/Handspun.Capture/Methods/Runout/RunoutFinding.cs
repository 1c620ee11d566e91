using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Roundness;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Runout.Faults;

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
    public override ResultFigures Figures
    {
        get
        {
            // The circles cost more than a look at a running capture may; they are drawn for what is kept.
            var circles = Result.Profile is { } profile ? RoundnessMethod.OfProfile(profile) : null;
            return new RunoutFigures
            {
                Readings = Result.Readings,
                Rejected = Result.Rejected.Count(rejected => rejected.Reason == RejectionReason.Knock),
                Turns = Result.Turns,
                TirMillimetres = Result.Tir?.Millimetres,
                TirU95Millimetres = Result.TirU95?.Millimetres,
                EccentricityMillimetres = Result.Eccentricity?.Millimetres,
                EccentricityU95Millimetres = Result.EccentricityU95?.Millimetres,
                EccentricityTowardDegrees = Result.EccentricityToward?.Degrees,
                EccentricityTowardU95Degrees = Result.EccentricityTowardU95Degrees,
                RoundnessMillimetres = Result.Roundness?.Millimetres,
                ZoneRoundnessMillimetres = circles?.MinimumZone?.PeakToValley.Millimetres,
                CircumscribedRoundnessMillimetres = circles?.MinimumCircumscribed?.PeakToValley.Millimetres,
                InscribedRoundnessMillimetres = circles?.MaximumInscribed?.PeakToValley.Millimetres,
                HighSpotDegrees = Result.HighSpot?.Degrees,
                HighSpotU95Degrees = Result.HighSpotU95Degrees,
                LowSpotDegrees = Result.LowSpot?.Degrees,
                AngleReference = Result.HighSpot is null ? null : RunoutCodes.Of(Result.Reference),
                TirByTurnMillimetres = IsMeasured ? Result.TirByTurnMillimetres : null,
                TirWithFaultsMillimetres = Result.TirWithFaults?.Millimetres,
                Faults = IsMeasured ? [.. Result.Faults.Select(Kept)] : null,
            };
        }
    }

    /// <inheritdoc/>
    public override (Length? Value, Length? U95) Headline => (Result.Tir, Result.TirU95);

    /// <inheritdoc/>
    public override IEnumerable<RecordWarning> Warnings => Result.Warnings.Select(InWords);

    /// <inheritdoc/>
    public override IEnumerable<RecordWarning> LiveWarnings(CaptureSoFar soFar) => Outlook(soFar).Warnings.Select(InWords);

    /// <inheritdoc/>
    public override LiveFigures Live(CaptureSoFar soFar)
    {
        var outlook = Outlook(soFar);
        return new RunoutLive
        {
            Turns = Result.Turns,
            TurnsWanted = soFar.Wanted,
            TurnsPerSecond = Result.TurnsPerSecond,
            ReadingsPerTurn = outlook.ReadingsPerTurn,
            HiddenPeakMillimetres = outlook.HiddenPeak?.Millimetres,
            LeastSecondsPerTurn = outlook.LeastSecondsPerTurn,
            SecondsToGo = outlook.SecondsToGo,
            TirMillimetres = Result.Tir?.Millimetres,
            TirU95Millimetres = Result.TirU95?.Millimetres,
        };
    }

    /// <inheritdoc/>
    public override string Advice(CaptureSoFar soFar) => RunoutAdvice.For(Result, Outlook(soFar), soFar);

    private RunoutOutlook Outlook(CaptureSoFar soFar) => RunoutOutlook.Of(Result, soFar.ReadingsPerSecond, soFar.Wanted);

    private static FaultFigures Kept(LocalFault fault) => new()
    {
        Kind = RunoutCodes.Of(fault.Kind),
        AtDegrees = fault.At.Degrees,
        WidthDegrees = fault.WidthDegrees,
        HeightMillimetres = fault.Height.Millimetres,
        HeightU95Millimetres = fault.HeightU95.Millimetres,
        SeenOnTurns = fault.Turns,
        OfTurns = fault.TurnsLooked,
        Sentence = fault.Sentence,
    };

    private static RecordWarning InWords(RunoutWarning warning) => new(RunoutWarningText.Code(warning), RunoutWarningText.Sentence(warning));
}

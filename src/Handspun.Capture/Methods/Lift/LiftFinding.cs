using System.Globalization;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;

namespace Handspun.Capture.Methods.Lift;

/// <summary>What the readings of a cam that turns say.</summary>
/// <param name="Result">The lift curve with all that proves it.</param>
/// <param name="Setup">What was asked; null where nothing was.</param>
public sealed record LiftFinding(LiftResult Result, LiftSetup? Setup) : CaptureFinding
{
    private const double TouchTurns = 0.2;

    /// <summary>Turns of the cam by what told the angle alone.</summary>
    public double Told { get; init; }

    /// <summary>Highest less lowest reading of a capture that goes on, once the cam has gone round; null before, and where the lift was measured.</summary>
    public Length? RangeSoFar { get; init; }

    /// <inheritdoc/>
    public override bool IsMeasured => Result.Status == LiftStatus.Measured;

    /// <inheritdoc/>
    public override string? Missing => Result.Missing;

    /// <inheritdoc/>
    public override double Count => Math.Max(Result.CamTurns, Told);

    /// <inheritdoc/>
    public override bool IsOnlyTouch => Result.Status == LiftStatus.TooShort && Count < TouchTurns;

    /// <inheritdoc/>
    public override ResultFigures Figures
    {
        get
        {
            var figures = new LiftFigures
            {
                Readings = Result.Readings,
                Rejected = Result.Rejected.Count,
                CamTurns = Result.CamTurns,
                CheckingLiftMillimetres = Result.CheckingLift.Millimetres,
                RockerRatio = Setup?.RockerRatio,
                TopCrankDegrees = Setup?.Top?.Value.Degrees,
                TopCrankU95Degrees = Setup?.Top?.U95.Degrees,
            };
            return !IsMeasured ? figures : figures with
            {
                AngleOf = Result.AngleOf == AngleShaft.Cam ? "cam" : "crank",
                ZeroTold = Result.ZeroTold,
                AngleReference = RunoutCodes.Of(Result.Reference),
                LobeLiftMillimetres = Result.LobeLift?.Value.Millimetres,
                LobeLiftU95Millimetres = Result.LobeLift?.U95.Millimetres,
                ValveLiftMillimetres = Result.ValveLift?.Value.Millimetres,
                ValveLiftU95Millimetres = Result.ValveLift?.U95.Millimetres,
                CurveMillimetres = [.. Result.CurveMillimetres.Select(lift => Math.Round(lift, 5))],
                BaseCircleRunoutMillimetres = Result.BaseCircleRunout?.Value.Millimetres,
                BaseCircleRunoutU95Millimetres = Result.BaseCircleRunout?.U95.Millimetres,
                CentrelineCrankDegrees = Result.Centreline?.Value.AtCrank().Degrees,
                CentrelineCrankU95Degrees = Result.Centreline?.U95.AtCrank().Degrees,
                OpeningCrankDegrees = Result.Opening?.Value.AtCrank().Degrees,
                OpeningCrankU95Degrees = Result.Opening?.U95.AtCrank().Degrees,
                ClosingCrankDegrees = Result.Closing?.Value.AtCrank().Degrees,
                ClosingCrankU95Degrees = Result.Closing?.U95.AtCrank().Degrees,
                DurationCrankDegrees = Result.Duration?.Value.AtCrank().Degrees,
                DurationCrankU95Degrees = Result.Duration?.U95.AtCrank().Degrees,
            };
        }
    }

    /// <inheritdoc/>
    public override (Length? Value, Length? U95) Headline => IsMeasured ? (Result.LobeLift?.Value, Result.LobeLift?.U95) : (RangeSoFar, null);

    /// <inheritdoc/>
    public override IEnumerable<RecordWarning> Warnings
    {
        get
        {
            foreach (var warning in Result.Warnings)
            {
                yield return new(LiftWarningText.Code(warning), LiftWarningText.Sentence(warning));
            }

            if (IsMeasured && Setup?.RockerRatio is null)
            {
                yield return new("no-rocker-ratio", "No rocker ratio was given: the lift is the lobe's, and how far the valve opens is not known.");
            }
        }
    }

    /// <inheritdoc/>
    public override LiveFigures Live(CaptureSoFar soFar) => new LiftLive
    {
        CamTurns = Count,
        CamTurnsWanted = soFar.Wanted,
        AngleTold = Told > 0,
        LobeLiftMillimetres = Headline.Value?.Millimetres,
        LobeLiftU95Millimetres = Headline.U95?.Millimetres,
    };

    /// <inheritdoc/>
    public override string Advice(CaptureSoFar soFar) => Told <= 0
        ? "Keep turning the same way. Nothing tells the angle yet: press for the mark each time it passes, or look after the sensor."
        : string.Create(CultureInfo.InvariantCulture, $"Keep turning the same way: {Math.Min(Count, soFar.Wanted):0.0} of {soFar.Wanted:0.#} turns of the cam, two of the crank each.");
}

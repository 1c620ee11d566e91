using Handspun.Capture.Methods.Lift;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;

namespace Handspun.Analysis;

/// <summary>What a file of a cam's lift says. Its degrees are of the shaft that the file's own angle is of, and the answer names it.</summary>
internal static class LiftAnalysis
{
    public static AnalysisAnswer Of(string file, CaptureFile read, Limit? limit)
    {
        var setup = read.Setup as LiftSetup;
        var result = LiftMethod.Measure(LiftAsked.Readings(read.Capture, setup), read.Gauge, setup is null ? read.Lift : LiftAsked.Settings(setup));
        var ofCrank = result.AngleOf == AngleShaft.Crank;
        double? Degrees(CamAngle? angle) => ofCrank ? angle?.AtCrank().Degrees : angle?.Degrees;

        var centre = Degrees(result.Centreline?.Value) is { } degrees ? Angle.FromDegrees(degrees).Degrees : (double?)null;
        return new AnalysisAnswer
        {
            File = file,
            Point = read.Point,
            Status = result.Status == LiftStatus.Measured ? "ok" : "rejected",
            Readings = result.Readings,
            Turns = AnalysisAnswer.Rounded(ofCrank ? 2 * result.CamTurns : result.CamTurns, 4),
            MaxLiftMm = AnalysisAnswer.Rounded(result.LobeLift?.Value),
            MaxLiftU95Mm = AnalysisAnswer.Rounded(result.LobeLift?.U95),
            CentrelineDeg = AnalysisAnswer.Rounded(centre, 3),
            CentrelineU95Deg = AnalysisAnswer.Rounded(Degrees(result.Centreline?.U95), 3),
            DurationDeg = AnalysisAnswer.Rounded(Degrees(result.Duration?.Value), 3),
            DurationU95Deg = AnalysisAnswer.Rounded(Degrees(result.Duration?.U95), 3),
            DegreesOf = result.AngleOf switch { AngleShaft.Crank => "crank", AngleShaft.Cam => "cam", _ => null },
            CheckingLiftMm = AnalysisAnswer.Rounded(result.CheckingLift),
            AngleReference = result.Centreline is null ? null : RunoutCodes.Of(result.Reference),
            Reason = result.Missing,
            Warnings = [],
        }.Against(result.LobeLift?.Value, result.LobeLift?.U95, limit, result.Warnings.Select(LiftWarningText.Code));
    }
}

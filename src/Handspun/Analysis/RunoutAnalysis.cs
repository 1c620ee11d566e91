using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;
using Handspun.Metrology.Runout;

namespace Handspun.Analysis;

/// <summary>What a file of a turning shaft says.</summary>
internal static class RunoutAnalysis
{
    public static AnalysisAnswer Of(string file, CaptureFile read, Limit? limit)
    {
        var result = RunoutMethod.Measure(read.Capture, read.Gauge, new RunoutSettings());
        return new AnalysisAnswer
        {
            File = file,
            Point = read.Point,
            Status = result.Status == RunoutStatus.Measured ? "ok" : "rejected",
            Readings = result.Readings,
            Turns = AnalysisAnswer.Rounded(result.Turns, 4),
            TirMm = AnalysisAnswer.Rounded(result.Tir),
            TirU95Mm = AnalysisAnswer.Rounded(result.TirU95),
            EccentricityMm = AnalysisAnswer.Rounded(result.Eccentricity),
            RoundnessMm = AnalysisAnswer.Rounded(result.Roundness),
            HighSpotDeg = AnalysisAnswer.Rounded(result.HighSpot?.Degrees, 3),
            HighSpotU95Deg = AnalysisAnswer.Rounded(result.HighSpotU95Degrees, 3),
            LowSpotDeg = AnalysisAnswer.Rounded(result.LowSpot?.Degrees, 3),
            AngleReference = result.HighSpot is null ? null : RunoutCodes.Of(result.Reference),
            Reason = result.Missing,
            Warnings = [],
        }.Against(result.Tir, result.TirU95, limit, result.Warnings.Select(RunoutWarningText.Code));
    }
}

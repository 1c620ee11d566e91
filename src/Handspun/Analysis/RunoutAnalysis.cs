using Handspun.Jobs.Limits;
using Handspun.Jobs.Records;
using Handspun.Metrology.Roundness;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Runout.Faults;

namespace Handspun.Analysis;

/// <summary>What a file of a turning shaft says.</summary>
internal static class RunoutAnalysis
{
    public static AnalysisAnswer Of(string file, CaptureFile read, Limit? limit)
    {
        var result = RunoutMethod.Measure(read.Capture, read.Gauge, read.Wanted is { } turns ? new RunoutSettings { TurnsWanted = turns } : new RunoutSettings());
        var circles = result.Profile is { } profile ? RoundnessMethod.OfProfile(profile) : null;
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
            EccentricityU95Mm = AnalysisAnswer.Rounded(result.EccentricityU95),
            EccentricityTowardDeg = AnalysisAnswer.Rounded(result.EccentricityToward?.Degrees, 3),
            EccentricityTowardU95Deg = AnalysisAnswer.Rounded(result.EccentricityTowardU95Degrees, 3),
            ZoneRoundnessMm = AnalysisAnswer.Rounded(circles?.MinimumZone?.PeakToValley),
            CircumscribedRoundnessMm = AnalysisAnswer.Rounded(circles?.MinimumCircumscribed?.PeakToValley),
            InscribedRoundnessMm = AnalysisAnswer.Rounded(circles?.MaximumInscribed?.PeakToValley),
            TirByTurnMm = result.Tir is null ? null : [.. result.TirByTurnMillimetres.Select(tir => Math.Round(tir, 7))],
            TirWithFaultsMm = AnalysisAnswer.Rounded(result.TirWithFaults),
            Faults = result.Tir is null ? null : [.. result.Faults.Select(Told)],
            Reason = result.Missing,
            Warnings = [],
        }.Against(result.Tir, result.TirU95, limit, result.Warnings.Select(RunoutWarningText.Code));
    }

    private static FaultOfAnswer Told(LocalFault fault) => new(
        RunoutCodes.Of(fault.Kind),
        Math.Round(fault.At.Degrees, 3),
        Math.Round(fault.WidthDegrees, 3),
        Math.Round(fault.Height.Millimetres, 7),
        Math.Round(fault.HeightU95.Millimetres, 7),
        fault.Turns,
        fault.TurnsLooked,
        fault.Sentence);
}

using Handspun.Capture.Methods.EndPlay;
using Handspun.Jobs.Limits;
using Handspun.Metrology.EndPlay;

namespace Handspun.Analysis;

/// <summary>What a file of pushes and pulls says.</summary>
internal static class EndPlayAnalysis
{
    public static AnalysisAnswer Of(string file, CaptureFile read, Limit? limit)
    {
        var result = ((EndPlayFinding)read.Finding()).Result;
        return new AnalysisAnswer
        {
            File = file,
            Point = read.Point,
            Status = result.Status == EndPlayStatus.Measured ? "ok" : "rejected",
            Readings = result.Readings,
            EndPlayMm = AnalysisAnswer.Rounded(result.EndPlay),
            EndPlayU95Mm = AnalysisAnswer.Rounded(result.EndPlayU95),
            Cycles = result.Cycles,
            Reason = result.Missing,
            Warnings = [],
        }.Against(result.EndPlay, result.EndPlayU95, limit, result.Warnings.Select(EndPlayWarningText.Code));
    }
}

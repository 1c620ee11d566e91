using Handspun.Capture.Methods.Bore;
using Handspun.Jobs.Limits;
using Handspun.Metrology.Bore;

namespace Handspun.Analysis;

/// <summary>What a file of a rocked bore gauge says, or of a body that was rolled through under a gauge. Its size is held against a limit; a deviation alone is not.</summary>
internal static class BoreAnalysis
{
    public static AnalysisAnswer Of(string file, CaptureFile read, Limit? limit)
    {
        var result = ((BoreFinding)read.Finding()).Result;
        return new AnalysisAnswer
        {
            File = file,
            Point = read.Point,
            Status = result.Status == BoreStatus.Measured ? "ok" : "rejected",
            Readings = result.Readings,
            DeviationMm = AnalysisAnswer.Rounded(result.Deviation),
            DeviationU95Mm = AnalysisAnswer.Rounded(result.DeviationU95),
            Passes = result.Passes,
            SizeMm = AnalysisAnswer.Rounded(result.Size),
            SizeU95Mm = AnalysisAnswer.Rounded(result.SizeU95),
            Reason = result.Missing,
            Warnings = [],
        }.Against(result.Size, result.SizeU95, limit, result.Warnings.Select(BoreWarningText.Code));
    }
}

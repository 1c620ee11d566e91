using Handspun.Gauges.Profiles;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Finishing;

/// <summary>Makes the record of a capture: the figures, the verdict and the warnings.</summary>
public static class RecordMaking
{
    /// <summary>The record of a finished capture.</summary>
    public static CaptureRecord RecordOf(FinishedCapture capture)
    {
        var result = capture.Result;
        var measured = result.Status == RunoutStatus.Measured;
        var decision = Decide(capture);
        return new CaptureRecord
        {
            Id = capture.Id,
            At = capture.At,
            Seconds = (capture.To - capture.From).TotalSeconds,
            Ending = capture.Ending,
            Status = measured ? RecordStatus.Complete : RecordStatus.Incomplete,
            Missing = result.Missing,
            Gauge = GaugeOf(capture),
            Limit = capture.Task.Limit is { } limit ? limit with { } : null,
            Figures = FiguresOf(result),
            Verdict = decision?.Verdict,
            ProbabilityOutside = decision?.ProbabilityOutside,
            Warnings = [.. WarningsOf(capture)],
        };
    }

    /// <summary>What a profile says of its gauge, as the methods take it.</summary>
    public static GaugeTraits TraitsOf(GaugeProfile profile) => new()
    {
        Resolution = Length.FromMillimetres(profile.Accuracy.ResolutionMillimetres),
        ErrorLimit = Length.FromMillimetres(profile.Accuracy.ErrorLimitMillimetres),
    };

    private static ConformityDecision? Decide(FinishedCapture capture) =>
        capture is { Task.Limit: { } limit, Result: { Tir: { } tir, TirU95: { } uncertainty } }
            ? ConformityRule.Decide(tir, uncertainty, limit.Tolerance)
            : null;

    private static RecordGauge GaugeOf(FinishedCapture capture) => new()
    {
        Name = capture.Gauge.Name.ToString(),
        Profile = capture.Gauge.Profile.Name,
        Port = capture.Gauge.Port.ToString() ?? "",
        ResolutionMillimetres = capture.Gauge.Profile.Accuracy.ResolutionMillimetres,
        ErrorLimitMillimetres = capture.Gauge.Profile.Accuracy.ErrorLimitMillimetres,
    };

    private static RunoutFigures FiguresOf(RunoutResult result) => new()
    {
        Readings = result.Readings,
        Rejected = result.Rejected.Count(rejected => rejected.Reason == RejectionReason.Knock),
        Turns = result.Turns,
        TirMillimetres = result.Tir?.Millimetres,
        TirU95Millimetres = result.TirU95?.Millimetres,
        EccentricityMillimetres = result.Eccentricity?.Millimetres,
        RoundnessMillimetres = result.Roundness?.Millimetres,
        HighSpotDegrees = result.HighSpot?.Degrees,
        HighSpotU95Degrees = result.HighSpotU95Degrees,
        LowSpotDegrees = result.LowSpot?.Degrees,
        AngleReference = result.HighSpot is null ? null : RunoutCodes.Of(result.Reference),
    };

    private static IEnumerable<RecordWarning> WarningsOf(FinishedCapture capture)
    {
        foreach (var warning in capture.Result.Warnings)
        {
            yield return new RecordWarning(RunoutWarningText.Code(warning), RunoutWarningText.Sentence(warning));
        }

        if (capture.GaugeGap)
        {
            yield return RecordWarning.GaugeGap;
        }

        if (capture.Unreadable > 0)
        {
            yield return RecordWarning.UnreadableLines;
        }

        if (capture.Task.Limit is { Confirmed: false })
        {
            yield return RecordWarning.LimitUnconfirmed;
        }
    }
}

using Handspun.Capture.Methods.Runout;
using Handspun.Gauges.Profiles;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Finishing;

/// <summary>Makes the record of a capture: the figures, the verdict and the warnings.</summary>
public static class RecordMaking
{
    /// <summary>The record of a finished capture.</summary>
    public static CaptureRecord RecordOf(FinishedCapture capture)
    {
        var figures = capture.Finding.Figures;
        var limit = figures.NotJudged is null ? capture.Task.Limit : null;
        var decision = RecordVerdict.Of(figures, limit);
        return new CaptureRecord
        {
            Id = capture.Id,
            At = capture.At,
            Seconds = (capture.To - capture.From).TotalSeconds,
            Ending = capture.Ending,
            Status = capture.Finding.IsMeasured ? RecordStatus.Complete : RecordStatus.Incomplete,
            Missing = capture.Finding.Missing,
            Gauge = GaugeOf(capture),
            Limit = limit is null ? null : limit with { },
            Figures = figures,
            Verdict = decision?.Verdict,
            ProbabilityOutside = decision?.ProbabilityOutside,
            Warnings = [.. WarningsOf(capture, limit)],
        };
    }

    /// <summary>What is known of a gauge, as the methods take it: what its profile says, and its newest check where that leaves room for more error.</summary>
    /// <param name="profile">The profile.</param>
    /// <param name="check">The newest check; null where there is none.</param>
    /// <param name="setup">What was said of the point that it stands at; null where nothing was.</param>
    public static GaugeTraits TraitsOf(GaugeProfile profile, LastCheck? check = null, PointSetup? setup = null) => IndicatorStand.Gauge(
        new()
        {
            Resolution = Length.FromMillimetres(profile.Accuracy.ResolutionMillimetres),
            ErrorLimit = GaugeDoubt.ErrorLimit(check, Length.FromMillimetres(profile.Accuracy.ErrorLimitMillimetres)),
        },
        setup);

    private static RecordGauge GaugeOf(FinishedCapture capture) => new()
    {
        Name = capture.Gauge.Name.ToString(),
        Profile = capture.Gauge.Profile.Name,
        Port = capture.Gauge.Port.ToString() ?? "",
        ResolutionMillimetres = capture.Gauge.Profile.Accuracy.ResolutionMillimetres,
        ErrorLimitMillimetres = capture.Gauge.Profile.Accuracy.ErrorLimitMillimetres,
        LastCheck = capture.Task.LastCheck,
    };

    private static IEnumerable<RecordWarning> WarningsOf(FinishedCapture capture, Limit? limit)
    {
        foreach (var warning in capture.Finding.Warnings)
        {
            yield return warning;
        }

        foreach (var warning in GaugeDoubt.Warnings(capture.Task.LastCheck, GaugeWords.DayOf(capture.At)))
        {
            yield return warning;
        }

        if (capture.GaugeGap)
        {
            yield return RecordWarning.GaugeGap;
        }

        if (capture.Unreadable > 0)
        {
            yield return RecordWarning.UnreadableLines;
        }

        if (TravelRule.IsUsedUp(capture))
        {
            yield return RecordWarning.TravelUsedUp;
        }

        if (limit is { Confirmed: false })
        {
            yield return RecordWarning.LimitUnconfirmed;
        }
    }
}

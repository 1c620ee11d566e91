using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Standing;

/// <summary>What the record that counts at a point says against the limit of today. A record itself keeps the limit of its own day.</summary>
/// <param name="Record">The record that counts; null where there is none.</param>
/// <param name="Verdict">The verdict; null where there is no record or no limit.</param>
/// <param name="Limit">The limit of today; null where there is none.</param>
public sealed record StandingVerdict(CaptureRecord? Record, Verdict? Verdict, Limit? Limit)
{
    /// <summary>Whether a verdict stands on a limit that nobody has confirmed.</summary>
    public bool OnUnconfirmedLimit => Verdict is not null && Limit is { Confirmed: false };

    /// <summary>That of a point.</summary>
    public static StandingVerdict Of(JobPoint point)
    {
        var (record, limit) = (point.Counting, point.Limit);
        return new(record, Decide(record, limit), limit);
    }

    private static Verdict? Decide(CaptureRecord? record, Limit? limit)
    {
        if (record is null || limit is null)
        {
            return null;
        }

        return limit.AllowsTheSameAs(record.Limit) ? record.Verdict : RecordVerdict.Of(record.Figures, limit)?.Verdict;
    }
}

using Handspun.Jobs.Points;
using Handspun.Jobs.Records;

namespace Handspun.Jobs.Entries;

/// <summary>Makes the record of what was typed.</summary>
public static class EntryRecord
{
    /// <summary>The record.</summary>
    /// <param name="point">The point, with the limit that the result is held against.</param>
    /// <param name="read">What was typed; nothing may be wrong with it.</param>
    /// <param name="time">The wall clock.</param>
    public static CaptureRecord Of(JobPoint point, EntryReading read, TimeProvider time)
    {
        var decision = RecordVerdict.Of(read.Figures!, point.Limit);
        return new CaptureRecord
        {
            Id = RecordName.New(time),
            At = time.GetUtcNow(),
            Seconds = 0,
            Ending = CaptureEnding.Typed,
            Status = RecordStatus.Complete,
            Gauge = read.Tool!,
            Limit = point.Limit is { } limit ? limit with { } : null,
            Figures = read.Figures!,
            Verdict = decision?.Verdict,
            ProbabilityOutside = decision?.ProbabilityOutside,
            Warnings = point.Limit is { Confirmed: false } ? [.. read.Warnings, RecordWarning.LimitUnconfirmed] : read.Warnings,
        };
    }
}

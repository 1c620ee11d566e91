using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;

namespace Handspun.Jobs.Standing;

/// <summary>Whether a point may be measured now.</summary>
public static class PointHold
{
    /// <summary>Why it may not, in a sentence; null where it may. A gate that is shut may be measured again: only what comes after it waits.</summary>
    public static string? Of(Job job, JobPoint point) => job.ClosedAt is not null
        ? $"Job {job.Number} is closed: take it up again first."
        : JobStanding.Of(job).At(point.Code)?.WaitsFor;
}

using Handspun.Jobs.Bikes;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Standing;

namespace Handspun.Jobs.History;

/// <summary>What was measured on one bike over the years.</summary>
/// <param name="Bike">The bike.</param>
/// <param name="Jobs">Its jobs, oldest first.</param>
/// <param name="Points">Its points with a result, in the order of the newest job that has them.</param>
public sealed record BikeHistory(Bike Bike, IReadOnlyList<Job> Jobs, IReadOnlyList<PointHistory> Points)
{
    /// <summary>That of a bike.</summary>
    /// <param name="jobs">All jobs of it, with points and records, in any order; at least one.</param>
    public static BikeHistory Of(IEnumerable<Job> jobs)
    {
        List<Job> inTime = [.. jobs.OrderBy(job => job.OpenedAt).ThenBy(job => job.Id)];
        var codes = Enumerable.Reverse(inTime).SelectMany(job => job.InOrder).Select(point => point.Code).Distinct();
        return new(inTime[^1].Bike, inTime, [.. codes.Select(code => PointOf(inTime, code)).Where(point => point.Results.Count > 0)]);
    }

    private static PointHistory PointOf(List<Job> jobs, string code)
    {
        var at = jobs.SelectMany(job => job.Points.Where(point => point.Code == code).Select(point => (Job: job, Point: point))).ToList();
        return new(code, at[^1].Point.Title,
        [
            .. at.Select(one => (one.Job, Verdict: StandingVerdict.Of(one.Point)))
                .Where(one => one.Verdict.Record is { Figures: { Value: not null, ValueU95: not null } })
                .Select(one => new PastResult(one.Job.Number, one.Verdict)),
        ]);
    }
}

/// <summary>The results of one point of a bike that count, a job each.</summary>
/// <param name="Code">The point's name in data.</param>
/// <param name="Title">Its name on screens.</param>
/// <param name="Results">Oldest job first.</param>
public sealed record PointHistory(string Code, string Title, IReadOnlyList<PastResult> Results);

/// <summary>A result of a bike that counts in its job.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="Verdict">The record, which has a value and its uncertainty, and what it says against the job's limit.</param>
public sealed record PastResult(string Job, StandingVerdict Verdict);

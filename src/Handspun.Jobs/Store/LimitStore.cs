using Handspun.Jobs.Limits;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Jobs.Store;

/// <summary>The limits that the open jobs hold their results against.</summary>
public sealed class LimitStore(IDbContextFactory<JobsContext> contexts)
{
    /// <summary>One page of them: those that nobody has confirmed first, then by job, newest first. No record is loaded.</summary>
    /// <param name="page">From 1.</param>
    /// <param name="perPage">At least 1.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    public async Task<LimitsInUse> OfOpenJobsAsync(int page, int perPage, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        var limits = context.Jobs.AsNoTracking().Where(job => job.ClosedAt == null)
            .SelectMany(job => job.Points, (job, point) => new { Job = job, job.Bike, Point = point })
            .Where(at => at.Point.Limit != null);
        var (count, open) = (await limits.CountAsync(cancellationToken), await limits.CountAsync(at => at.Point.Limit!.ConfirmedBy == null, cancellationToken));
        var found = await limits
            .OrderBy(at => at.Point.Limit!.ConfirmedBy != null).ThenByDescending(at => at.Job.OpenedAt).ThenByDescending(at => at.Job.Id).ThenBy(at => at.Point.Place)
            .Skip((page - 1) * perPage).Take(perPage)
            .Select(at => new { at.Job.Number, at.Bike, at.Point.Code, at.Point.Title, at.Point.Limit })
            .ToListAsync(cancellationToken);
        return new([.. found.Select(at => new LimitInUse(at.Number, at.Bike.Title, at.Code, at.Title, at.Limit!))], count, open);
    }
}

/// <summary>A page of the limits in use.</summary>
/// <param name="Limits">In the order to be shown.</param>
/// <param name="Count">How many there are in all.</param>
/// <param name="Unconfirmed">How many of them nobody has confirmed.</param>
public sealed record LimitsInUse(IReadOnlyList<LimitInUse> Limits, int Count, int Unconfirmed);

/// <summary>The limit of a point of an open job.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="Bike">Year, make and model in one line.</param>
/// <param name="Point">The point's name in data.</param>
/// <param name="PointTitle">Its name on screens.</param>
/// <param name="Limit">The limit.</param>
public sealed record LimitInUse(string Job, string Bike, string Point, string PointTitle, Limit Limit);

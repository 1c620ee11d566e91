using Handspun.Jobs.History;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store.Finding;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Jobs.Store;

/// <summary>What the store knows of a bike over the years, and of its kind.</summary>
public sealed class HistoryStore(IDbContextFactory<JobsContext> contexts)
{
    /// <summary>All that was measured on the bike of a job, in this job and others.</summary>
    /// <exception cref="JobNotFoundException">There is no such job.</exception>
    public async Task<BikeHistory> OfBikeAsync(string job, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        var bike = await context.Jobs.Where(found => found.Number == job).Select(found => (int?)found.BikeId).FirstOrDefaultAsync(cancellationToken) ?? throw JobNotFoundException.Job(job);
        return BikeHistory.Of(await context.Jobs.AsNoTrackingWithIdentityResolution().Where(found => found.BikeId == bike)
            .Include(found => found.Bike).Include(found => found.Points).ThenInclude(point => point.Records).AsSplitQuery().ToListAsync(cancellationToken));
    }

    /// <summary>How the newest result of each of a bike's points lies among the shop's other bikes of the same make and model.</summary>
    /// <param name="history">The bike.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    /// <returns>By the point's code; a point is left out where too few other bikes have a result.</returns>
    public async Task<IReadOnlyDictionary<string, KindSpread>> OfKindAsync(BikeHistory history, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        var (kind, codes) = (FoldedText.Kind(history.Bike), history.Points.Select(point => point.Code).ToList());
        var found = await context.Jobs
            .Where(job => EF.Property<string>(job.Bike, SearchColumns.KindKey) == kind && job.BikeId != history.Bike.Id)
            .SelectMany(job => job.Points, (job, point) => new { job.BikeId, job.OpenedAt, JobId = job.Id, Point = point })
            .Where(at => codes.Contains(at.Point.Code))
            .SelectMany(at => at.Point.Records, (at, record) => new
            {
                at.Point.Code,
                at.BikeId,
                at.OpenedAt,
                at.JobId,
                record.Id,
                record.At,
                record.Status,
                Picked = at.Point.PickedRecordId == record.Id,
                Value = EF.Property<double?>(record, SearchColumns.ValueMillimetres),
            })
            .Where(result => result.Value != null && result.Status == RecordStatus.Complete)
            .ToListAsync(cancellationToken);
        var byPoint = found.GroupBy(result => result.Code).ToDictionary(
            point => point.Key,
            point => point.GroupBy(result => result.BikeId).Select(bike => bike
                .OrderByDescending(result => result.OpenedAt).ThenByDescending(result => result.JobId)
                .ThenByDescending(result => result.Picked).ThenByDescending(result => result.At).ThenByDescending(result => result.Id, StringComparer.Ordinal)
                .First().Value!.Value));
        var spreads = new Dictionary<string, KindSpread>();
        foreach (var point in history.Points)
        {
            if (byPoint.TryGetValue(point.Code, out var others) && KindSpread.Of(point.Results[^1].Verdict.Record!.Figures.Value!.Value, others) is { } spread)
            {
                spreads[point.Code] = spread;
            }
        }

        return spreads;
    }
}

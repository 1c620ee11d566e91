using Handspun.Jobs.Bikes;
using Handspun.Jobs.History;
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
        var spreads = new Dictionary<string, KindSpread>();
        foreach (var point in history.Points)
        {
            if (KindSpread.Of(point.Results[^1].Verdict.Record!.Figures.Value!.Value, await OthersAsync(context, history.Bike, point.Code, cancellationToken)) is { } spread)
            {
                spreads[point.Code] = spread;
            }
        }

        return spreads;
    }

    // One result a bike, looked up in the indexes alone.
    private static async Task<IEnumerable<double>> OthersAsync(JobsContext context, Bike bike, string code, CancellationToken cancellationToken)
    {
        var kind = FoldedText.Kind(bike);
        var newest = await context.Bikes.Where(other => EF.Property<string>(other, SearchColumns.KindKey) == kind && other.Id != bike.Id)
            .Select(other => (
                from job in context.Jobs
                where job.BikeId == other.Id
                from point in job.Points
                where point.Code == code && EF.Property<double?>(point, SearchColumns.CountingMillimetres) != null
                orderby job.OpenedAt descending, job.Id descending
                select EF.Property<double?>(point, SearchColumns.CountingMillimetres)).FirstOrDefault())
            .ToListAsync(cancellationToken);
        return newest.OfType<double>();
    }
}

using Handspun.Jobs.Store;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Jobs.ShopGauges;

/// <summary>The book that the shop keeps of its gauges, at rest: what they are, their checks and studies. Checks and studies are only ever added.</summary>
public sealed class GaugeBook(IDbContextFactory<JobsContext> contexts, TimeProvider time)
{
    /// <summary>All gauges that stand in the book, by name.</summary>
    public async Task<IReadOnlyList<ShopGauge>> AllAsync(CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        return await Whole(context).OrderBy(gauge => gauge.Name).ToListAsync(cancellationToken);
    }

    /// <summary>A gauge with its checks and studies; null where the book has none of that name.</summary>
    public async Task<ShopGauge?> FindAsync(string name, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        return await Whole(context).FirstOrDefaultAsync(gauge => gauge.Name == name, cancellationToken);
    }

    /// <summary>A gauge's newest check; null where it was never checked.</summary>
    public async Task<LastCheck?> LastCheckAsync(string name, CancellationToken cancellationToken) => (await FindAsync(name, cancellationToken))?.LastCheck;

    /// <summary>Says what a gauge is. One that the book does not have yet is added to it.</summary>
    /// <exception cref="ArgumentException">Something in it cannot be.</exception>
    /// <returns>The gauge as it is now.</returns>
    public Task<ShopGauge> DescribeAsync(string name, GaugeSheet sheet, CancellationToken cancellationToken) => sheet.Problem() is { } problem
        ? throw new ArgumentException(problem, nameof(sheet))
        : ChangeAsync(
            name,
            gauge => (gauge.Description, gauge.CheckEveryDays, gauge.ResolutionMillimetres, gauge.ErrorLimitMillimetres) =
                (sheet.Description, sheet.CheckEveryDays, sheet.ResolutionMillimetres, sheet.ErrorLimitMillimetres),
            cancellationToken);

    /// <summary>Adds a check that was made now.</summary>
    /// <exception cref="ArgumentException">Something in it cannot be.</exception>
    /// <returns>The gauge as it is now.</returns>
    public Task<ShopGauge> CheckAsync(string name, CheckSheet sheet, CancellationToken cancellationToken)
    {
        var today = DateOnly.FromDateTime(time.GetLocalNow().DateTime);
        return ChangeAsync(name, gauge => gauge.Checks.Add(KeptCheck.Of(sheet, time.GetUtcNow(), today, gauge.CheckEveryDays)), cancellationToken);
    }

    /// <summary>Adds a study.</summary>
    /// <exception cref="ArgumentException">Something in it cannot be.</exception>
    /// <returns>The gauge as it is now.</returns>
    public Task<ShopGauge> StudyAsync(string name, StudySheet sheet, CancellationToken cancellationToken) => sheet.Problem() is { } problem
        ? throw new ArgumentException(problem, nameof(sheet))
        : ChangeAsync(name, gauge => gauge.Studies.Add(new KeptStudy { At = time.GetUtcNow(), Sheet = sheet }), cancellationToken);

    private async Task<ShopGauge> ChangeAsync(string name, Action<ShopGauge> change, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        await using var transaction = await context.Database.BeginTransactionAsync(cancellationToken);   // takes the write lock before anything is read
        var gauge = await Whole(context).AsTracking().FirstOrDefaultAsync(found => found.Name == name, cancellationToken);
        if (gauge is null)
        {
            gauge = new ShopGauge { Name = name };
            context.Gauges.Add(gauge);
        }

        change(gauge);
        await context.SaveChangesAsync(cancellationToken);
        await transaction.CommitAsync(cancellationToken);
        return gauge;
    }

    private static IQueryable<ShopGauge> Whole(JobsContext context) =>
        context.Gauges.AsNoTrackingWithIdentityResolution().Include(gauge => gauge.Checks).Include(gauge => gauge.Studies).AsSplitQuery();
}

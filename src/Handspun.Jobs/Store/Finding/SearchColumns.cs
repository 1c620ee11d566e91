using Handspun.Jobs.Bikes;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace Handspun.Jobs.Store.Finding;

/// <summary>Columns that are worked out from others whenever a row is written, so that the database can search by them.</summary>
internal static class SearchColumns
{
    /// <summary>What a job or a bike is found by, folded.</summary>
    public const string FindText = "FindText";

    /// <summary>A bike's plate run together.</summary>
    public const string PlateKey = "PlateKey";

    /// <summary>A bike's make and model, folded.</summary>
    public const string KindKey = "KindKey";

    /// <summary>What the record that counts at a point found, in millimetres; null where none counts, or it found no length.</summary>
    public const string CountingMillimetres = "CountingMillimetres";

    private const int PointsAtOnce = 200;

    /// <summary>Adds them to the model.</summary>
    public static void Map(ModelBuilder model)
    {
        model.Entity<Job>(job =>
        {
            job.Property<string>(FindText).IsRequired().HasDefaultValue("");
            // All that a search looks at stands in the index: the rows themselves carry whole plans.
            job.HasIndex("OpenedAt", "Id", "BikeId", FindText);
            job.HasIndex("BikeId", "OpenedAt");
        });
        model.Entity<Bike>(bike =>
        {
            bike.Property<string>(FindText).IsRequired().HasDefaultValue("");
            bike.Property<string>(KindKey).IsRequired().HasDefaultValue("");
            bike.Property<string?>(PlateKey);
            bike.HasIndex(KindKey);
            bike.HasIndex(PlateKey);
        });
        model.Entity<JobPoint>(point =>
        {
            point.Property<double?>(CountingMillimetres);
            // Likewise: what a bike came to at a point is read without the point and its records.
            point.HasIndex("JobId", "Code", CountingMillimetres);
        });
    }

    /// <summary>Works them out for the rows that are about to be written.</summary>
    public static void Fill(ChangeTracker rows)
    {
        // A point's row changes with its records, which are rows of their own.
        foreach (var row in rows.Entries().Where(row => row.Entity is JobPoint || row.State is EntityState.Added or EntityState.Modified).ToList())
        {
            Fill(row);
        }
    }

    /// <summary>Works them out for the rows of a store that was kept before there were such columns.</summary>
    public static async Task FillEarlierAsync(JobsContext context, CancellationToken cancellationToken)
    {
        await context.Bikes.Where(bike => EF.Property<string>(bike, FindText) == "").LoadAsync(cancellationToken);
        await context.Jobs.Where(job => EF.Property<string>(job, FindText) == "").LoadAsync(cancellationToken);
        await WriteAsync(context, cancellationToken);
        var last = 0;
        while (true)
        {
            var points = await context.Points.Include(point => point.Records).Where(point => point.Id > last).OrderBy(point => point.Id).Take(PointsAtOnce).ToListAsync(cancellationToken);
            if (points.Count == 0)
            {
                return;
            }

            last = points[^1].Id;
            await WriteAsync(context, cancellationToken);
        }
    }

    private static async Task WriteAsync(JobsContext context, CancellationToken cancellationToken)
    {
        foreach (var row in context.ChangeTracker.Entries().ToList())
        {
            Fill(row);
        }

        await context.SaveChangesAsync(cancellationToken);
        context.ChangeTracker.Clear();
    }

    private static void Fill(EntityEntry row)
    {
        switch (row.Entity)
        {
            case Job job:
                row.Property(FindText).CurrentValue = FoldedText.Of(job);
                break;
            case Bike bike:
                row.Property(FindText).CurrentValue = FoldedText.Of(bike);
                row.Property(KindKey).CurrentValue = FoldedText.Kind(bike);
                row.Property(PlateKey).CurrentValue = FoldedText.Plate(bike.Plate);
                break;
            case JobPoint point when row.State == EntityState.Added || row.Collection(nameof(JobPoint.Records)).IsLoaded:
                row.Property(CountingMillimetres).CurrentValue = point.Counting?.Figures.Value?.Millimetres;
                break;
        }
    }
}

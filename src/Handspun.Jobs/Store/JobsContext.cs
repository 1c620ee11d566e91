using System.Text.Json;
using Handspun.Jobs.Bikes;
using Handspun.Jobs.Book;
using Handspun.Jobs.Cranks;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.ShopGauges;
using Handspun.Jobs.Store.Finding;
using Handspun.Metrology.Decision;
using Handspun.Metrology.GaugeStudy;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Handspun.Jobs.Store;

/// <summary>The tables of the store.</summary>
public sealed class JobsContext(DbContextOptions<JobsContext> options) : DbContext(options)
{
    /// <summary>The bikes.</summary>
    public DbSet<Bike> Bikes => Set<Bike>();

    /// <summary>The jobs.</summary>
    public DbSet<Job> Jobs => Set<Job>();

    /// <summary>The points of all jobs.</summary>
    public DbSet<JobPoint> Points => Set<JobPoint>();

    /// <summary>The lines of all jobs' books.</summary>
    public DbSet<BookEntry> Book => Set<BookEntry>();

    /// <summary>The records of all points.</summary>
    public DbSet<CaptureRecord> Records => Set<CaptureRecord>();

    /// <summary>The book of the shop's gauges.</summary>
    public DbSet<ShopGauge> Gauges => Set<ShopGauge>();

    /// <inheritdoc/>
    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        SearchColumns.Fill(ChangeTracker);
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    /// <inheritdoc/>
    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        SearchColumns.Fill(ChangeTracker);
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        // SQLite cannot sort a DateTimeOffset; ticks in UTC sort everywhere.
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcTicks>();
        configurationBuilder.Properties<PointKind>().HaveConversion<string>();
        configurationBuilder.Properties<RecordStatus>().HaveConversion<string>();
        configurationBuilder.Properties<CaptureEnding>().HaveConversion<string>();
        configurationBuilder.Properties<Verdict>().HaveConversion<string>();
        configurationBuilder.Properties<CamDrive>().HaveConversion<string>();
        configurationBuilder.Properties<LimitAge>().HaveConversion<string>();
        configurationBuilder.Properties<GaugeStanding>().HaveConversion<string>();
    }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<Bike>(bike =>
        {
            bike.Ignore(b => b.Title);
            bike.HasIndex(b => b.Vin);
        });
        modelBuilder.Entity<Job>(job =>
        {
            job.Ignore(j => j.InOrder);
            job.Ignore(j => j.Book);
            job.Property(j => j.Plan).HasConversion((ValueConverter)new AsJson<Plan>(), AsJson<Plan>.SameObject);
            job.Property(j => j.Version).IsConcurrencyToken();
            job.HasMany(j => j.Entries).WithOne().HasForeignKey(e => e.JobId);
            job.HasIndex(j => j.Number).IsUnique();
            job.Property(j => j.Crank).HasConversion((ValueConverter)new AsJson<CrankSheet>(), AsJson<CrankSheet>.SameObject);
            job.HasOne(j => j.Bike).WithMany().HasForeignKey(j => j.BikeId);
            job.HasMany(j => j.Points).WithOne().HasForeignKey(p => p.JobId);
        });
        modelBuilder.Entity<BookEntry>(entry =>
        {
            entry.HasIndex(e => new { e.JobId, e.Number }).IsUnique();
            entry.Property(e => e.Deed).HasConversion(new AsJson<Deed>(), AsJson<Deed>.SameObject);
        });
        modelBuilder.Entity<JobPoint>(point =>
        {
            point.Ignore(p => p.NewestFirst);
            point.Ignore(p => p.Counting);
            point.HasIndex(p => new { p.JobId, p.Code }).IsUnique();
            point.Property(p => p.Setup).HasConversion((ValueConverter)new AsJson<PointSetup>(), AsJson<PointSetup>.SameObject);
            point.OwnsOne(p => p.Limit, limit =>
            {
                limit.Ignore(l => l.Confirmed);
                limit.Ignore(l => l.Tolerance);
            });
            point.HasMany(p => p.Records).WithOne().HasForeignKey(r => r.JobPointId);
        });
        modelBuilder.Entity<CaptureRecord>(record =>
        {
            record.HasKey(r => r.Id);
            record.Ignore(r => r.HasFiles);
            record.HasIndex(r => new { r.JobPointId, r.At });
            record.OwnsOne(r => r.Gauge, gauge => gauge.Property(g => g.LastCheck).HasConversion((ValueConverter)new AsJson<LastCheck>(), AsJson<LastCheck>.SameObject));
            record.Property(r => r.Figures).HasConversion(new AsJson<ResultFigures>(), AsJson<ResultFigures>.SameObject);
            record.OwnsOne(r => r.Limit, limit =>
            {
                limit.Ignore(l => l.Confirmed);
                limit.Ignore(l => l.Tolerance);
            });
            record.Navigation(r => r.Gauge).IsRequired();
            record.Property(r => r.Warnings).HasConversion(
                warnings => JsonSerializer.Serialize(warnings, JsonSerializerOptions.Default),
                json => JsonSerializer.Deserialize<List<RecordWarning>>(json, JsonSerializerOptions.Default) ?? new(),
                new ValueComparer<IReadOnlyList<RecordWarning>>(
                    (left, right) => left == right || (left != null && right != null && left.SequenceEqual(right)),
                    warnings => warnings.Count,
                    warnings => warnings));
        });
        OnGaugesCreating(modelBuilder);
        SearchColumns.Map(modelBuilder);
    }

    private static void OnGaugesCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<ShopGauge>(gauge =>
        {
            gauge.Ignore(g => g.ChecksNewestFirst);
            gauge.Ignore(g => g.StudiesNewestFirst);
            gauge.Ignore(g => g.LastCheck);
            gauge.HasIndex(g => g.Name).IsUnique();
            gauge.HasMany(g => g.Checks).WithOne().HasForeignKey(c => c.ShopGaugeId);
            gauge.HasMany(g => g.Studies).WithOne().HasForeignKey(s => s.ShopGaugeId);
        });
        modelBuilder.Entity<KeptCheck>(check =>
        {
            check.ToTable("GaugeChecks");
            check.Property(c => c.Sheet).HasConversion(new AsJson<CheckSheet>(), AsJson<CheckSheet>.SameObject);
        });
        modelBuilder.Entity<KeptStudy>(study =>
        {
            study.ToTable("GaugeStudies");
            study.Property(s => s.Sheet).HasConversion(new AsJson<StudySheet>(), AsJson<StudySheet>.SameObject);
        });
    }

    /// <summary>What is never changed in place, only replaced, kept in one column with its kind.</summary>
    private sealed class AsJson<T>() : ValueConverter<T, string>(
        value => JsonSerializer.Serialize(value, FiguresJson.Options),
        json => JsonSerializer.Deserialize<T>(json, FiguresJson.Options)!)
        where T : class
    {
        public static ValueComparer<T> SameObject { get; } = new((left, right) => ReferenceEquals(left, right), value => value.GetHashCode(), value => value);
    }

    private sealed class UtcTicks() : ValueConverter<DateTimeOffset, long>(
        time => time.UtcTicks,
        ticks => new DateTimeOffset(ticks, TimeSpan.Zero));
}

using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Points.Catalogue;
using Handspun.Jobs.ShopGauges;
using Handspun.Jobs.Store;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Jobs.Tests.Store;

/// <summary>A store in a file of the test's own, as the program sets it up.</summary>
internal sealed class StoreBench : IAsyncDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("handspun-jobs-").FullName;
    private ServiceProvider _services;

    private StoreBench() => _services = Services();

    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero));

    public JobStore Store => _services.GetRequiredService<JobStore>();

    public HistoryStore History => _services.GetRequiredService<HistoryStore>();

    public LimitStore Limits => _services.GetRequiredService<LimitStore>();

    public JobBook Book => _services.GetRequiredService<JobBook>();

    public GaugeBook Gauges => _services.GetRequiredService<GaugeBook>();

    public IDbContextFactory<JobsContext> Contexts => _services.GetRequiredService<IDbContextFactory<JobsContext>>();

    public static NewJob Order { get; } = new() { Make = "Ardent", Model = "Twin 900", Year = 2004, Title = "Cam chest service" };

    /// <summary>A store whose file has no tables yet.</summary>
    public static StoreBench OnANewFile() => new();

    public static async Task<StoreBench> OpenAsync()
    {
        var bench = new StoreBench();
        await StoreSchema.BringUpToDateAsync(bench.Contexts, CancellationToken.None);
        return bench;
    }

    /// <summary>Opens a job with the pinion's runout to be measured, and gives its number.</summary>
    /// <summary>A plan of one point.</summary>
    public static IReadOnlyList<MeasuringPoint> PinionOnly { get; } = [RunoutPoints.Pinion];

    public async Task<string> JobAsync() => (await Store.OpenAsync(Order, PinionOnly, CancellationToken.None)).Number;

    public async Task<Job> FindAsync(string number) => (await Store.FindAsync(number, CancellationToken.None))!;

    public async Task<JobPoint> PointAsync(string number) => (await FindAsync(number)).Points.Single();

    /// <summary>Closes the file and opens it again, as another run of the program does.</summary>
    public async Task ReopenAsync()
    {
        await _services.DisposeAsync();
        SqliteConnection.ClearAllPools();
        _services = Services();
        await StoreSchema.BringUpToDateAsync(Contexts, CancellationToken.None);
    }

    public async Task<object?> AskAsync(string sql)
    {
        await using var context = await Contexts.CreateDbContextAsync();
        await context.Database.OpenConnectionAsync();
        await using var command = context.Database.GetDbConnection().CreateCommand();
#pragma warning disable CA2100 // the statements are the tests' own
        command.CommandText = sql;
#pragma warning restore CA2100
        return await command.ExecuteScalarAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    private ServiceProvider Services() => new ServiceCollection()
        .AddSingleton<TimeProvider>(Time)
        .AddJobStore(Path.Combine(_folder, "jobs.db"))
        .BuildServiceProvider();
}

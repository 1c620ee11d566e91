using System.Globalization;
using Handspun.Jobs.Store;
using Handspun.Jobs.Store.Finding;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Handspun.Benchmarks;

/// <summary>How soon a store of many jobs answers: each question many times, the middle and the 95 % of the times that it took, and the processor time of one answer.</summary>
internal static class StoreAnswers
{
    private const int Seed = 20261;
    private const int Warm = 20;
    private const int Times = 200;

    /// <summary>Makes the store, asks, and prints a table.</summary>
    /// <param name="jobs">How many jobs.</param>
    /// <param name="folder">Where the store is left for a station to serve; one that is there from before is asked again. Null leaves nothing.</param>
    public static async Task RunAsync(int jobs, string? folder)
    {
        var place = Directory.CreateDirectory(folder ?? Directory.CreateTempSubdirectory("handspun-shop-").FullName).FullName;
        await using (var services = new ServiceCollection().AddSingleton(TimeProvider.System).AddJobStore(Path.Combine(place, "handspun.db")).BuildServiceProvider())
        {
            var contexts = services.GetRequiredService<IDbContextFactory<JobsContext>>();
            await StoreSchema.BringUpToDateAsync(contexts, CancellationToken.None);
            var shop = new InventedShop(jobs, Seed);
            await shop.FillAsync(contexts, CancellationToken.None);   // nothing where it was filled before
            await AskAsync(shop, services.GetRequiredService<JobStore>(), services.GetRequiredService<HistoryStore>());
        }

        SqliteConnection.ClearAllPools();
        if (folder is null)
        {
            Directory.Delete(place, recursive: true);
        }
    }

    private static async Task AskAsync(InventedShop shop, JobStore store, HistoryStore history)
    {
        var random = new Random(Seed + 1);
        string Any() => shop.Numbers[random.Next(shop.Numbers.Count)];
        int Bike() => random.Next(shop.Numbers.Count * 2 / 5);
        for (var i = 0; i < Times; i++)
        {
            await SearchAsync(store, new());   // until the runtime has compiled for speed what all questions have in common
        }

        Console.WriteLine("| question | median | 95 % | processor |");
        Console.WriteLine("| --- | --- | --- | --- |");
        await TellAsync("list, first page", () => SearchAsync(store, new()));
        await TellAsync("list, any page", () => SearchAsync(store, new(null, 1 + random.Next(shop.Numbers.Count / JobSearch.UsualPerPage))));
        await TellAsync("search, job number", () => SearchAsync(store, new(Any())));
        await TellAsync("search, plate", () => SearchAsync(store, new($"kx{Bike():D5}")));
        await TellAsync("search, end of a VIN", () => SearchAsync(store, new($"test{Bike():D8}")));
        await TellAsync("search, customer", () => SearchAsync(store, new($"öre {random.Next(977)}")));
        await TellAsync("search, a word of most jobs", () => SearchAsync(store, new("inspection")));
        await TellAsync("search, nothing found", () => SearchAsync(store, new("no such bike")));
        await TellAsync("a page of whole jobs", () => store.SearchAsync(new(), CancellationToken.None));
        await TellAsync("history of a bike", () => history.OfBikeAsync(Any(), CancellationToken.None));
        await TellAsync("history and where it lies in its kind", async () => await history.OfKindAsync(await history.OfBikeAsync(Any(), CancellationToken.None), CancellationToken.None));
    }

    private static Task<FoundJobs> SearchAsync(JobStore store, JobSearch search) => store.ListAsync(search, CancellationToken.None);

    private static async Task TellAsync(string question, Func<Task> ask)
    {
        var took = new double[Times];
        var worked = TimeSpan.Zero;
        for (var i = -Warm; i < Times; i++)
        {
            worked = i == 0 ? Environment.CpuUsage.TotalTime : worked;
            var start = TimeProvider.System.GetTimestamp();
            await ask();
            took[Math.Max(0, i)] = TimeProvider.System.GetElapsedTime(start).TotalMilliseconds;
        }

        worked = Environment.CpuUsage.TotalTime - worked;
        Array.Sort(took);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {question} | {took[Times / 2]:0.0} ms | {took[Times * 95 / 100]:0.0} ms | {worked.TotalMilliseconds / Times:0.0} ms |"));
    }
}

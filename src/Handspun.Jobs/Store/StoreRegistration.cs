using Handspun.Jobs.Book;
using Handspun.Jobs.ShopGauges;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Handspun.Jobs.Store;

/// <summary>Adds the store to a host.</summary>
public static class StoreRegistration
{
    /// <summary>A store in one SQLite file, which is made when it is first needed.</summary>
    public static IServiceCollection AddJobStore(this IServiceCollection services, string file) => services
        .AddDbContextFactory<JobsContext>(options => options
            .UseSqlite(new SqliteConnectionStringBuilder { DataSource = file, Pooling = true }.ConnectionString))
        .AddSingleton<JobStore>()
        .AddSingleton<HistoryStore>()
        .AddSingleton<LimitStore>()
        .AddSingleton<JobBook>()
        .AddSingleton<GaugeBook>();
}

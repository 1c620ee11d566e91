using Handspun.Jobs.Store;
using Handspun.Station;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Commands;

/// <summary>The store of a data folder for a command that works beside a station that runs, or without one.</summary>
internal static class StoreAtHand
{
    /// <summary>Works with the store, or with another way to ask it that <see cref="StoreRegistration"/> adds.</summary>
    /// <exception cref="StationTroubleException">A later version of the program wrote it.</exception>
    // The store's file takes several programs at once; its tables are only brought up to date where no station works on them.
    public static async Task<int> UseAsync<TStore>(DataFolder folder, Func<TStore, Task<int>> work, CancellationToken stopping)
        where TStore : notnull
    {
        using var taken = folder.IsTaken ? null : DataFolder.Take(folder.Root);
        await using var services = new ServiceCollection().AddSingleton(TimeProvider.System).AddLogging().AddJobStore(folder.Store).BuildServiceProvider();
        try
        {
            if (taken is not null)
            {
                await StoreSchema.BringUpToDateAsync(services.GetRequiredService<IDbContextFactory<JobsContext>>(), stopping);
            }
        }
        catch (StoreTooNewException e)
        {
            throw new StationTroubleException(e.Message);
        }

        return await work(services.GetRequiredService<TStore>());
    }
}

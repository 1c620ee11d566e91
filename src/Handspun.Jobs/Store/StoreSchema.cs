using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Jobs.Store;

/// <summary>Brings the tables of a store up to date.</summary>
public static class StoreSchema
{
    /// <summary>Applies what is missing. Where nothing is, that is found out without starting the migration machinery, which takes over a second.</summary>
    public static async Task BringUpToDateAsync(IDbContextFactory<JobsContext> contexts, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        if (await LastAppliedAsync(context, cancellationToken) != context.Database.GetMigrations().Last())
        {
            await context.Database.MigrateAsync(cancellationToken);
        }
    }

    private static async Task<string?> LastAppliedAsync(JobsContext context, CancellationToken cancellationToken)
    {
        try
        {
            return await context.Database
                .SqlQuery<string?>($"SELECT MAX(\"MigrationId\") AS \"Value\" FROM \"__EFMigrationsHistory\"")
                .FirstAsync(cancellationToken);
        }
        catch (SqliteException e) when (e.SqliteErrorCode is 1 or 14)
        {
            return null;   // no such table, or no file yet
        }
    }
}

using Handspun.Jobs.Store.Finding;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Jobs.Store;

/// <summary>Brings the tables of a store up to date.</summary>
public static class StoreSchema
{
    /// <summary>Applies what is missing. Where nothing is, that is found out without starting the migration machinery, which takes over a second.</summary>
    /// <exception cref="StoreTooNewException">A later version of the program wrote the store.</exception>
    public static async Task BringUpToDateAsync(IDbContextFactory<JobsContext> contexts, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        await context.Database.OpenConnectionAsync(cancellationToken);
        await WriteAheadAsync(context, cancellationToken);
        var (applied, known) = (await LastAppliedAsync(context, cancellationToken), context.Database.GetMigrations().Last());
        if (string.CompareOrdinal(applied, known) > 0)
        {
            throw new StoreTooNewException();
        }

        if (applied != known)
        {
            await context.Database.MigrateAsync(cancellationToken);
            await SearchColumns.FillEarlierAsync(context, cancellationToken);
        }
    }

    // The file remembers it. The migration machinery would say so of a file that it makes itself, but opening has made it already.
    private static async Task WriteAheadAsync(JobsContext context, CancellationToken cancellationToken)
    {
        await using var command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = "PRAGMA journal_mode = 'wal'";
        await command.ExecuteScalarAsync(cancellationToken);
    }

    // Asked past the model: a query that fails, as it would on a new file, is logged as an error.
    private static async Task<string?> LastAppliedAsync(JobsContext context, CancellationToken cancellationToken)
    {
        await using var command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = "SELECT name FROM sqlite_master WHERE type = 'table' AND name = '__EFMigrationsHistory'";
        if (await command.ExecuteScalarAsync(cancellationToken) is null)
        {
            return null;
        }

        command.CommandText = "SELECT MAX(MigrationId) FROM __EFMigrationsHistory";
        return await command.ExecuteScalarAsync(cancellationToken) as string;
    }
}

/// <summary>The store was written by a later version of the program; nothing in it was touched.</summary>
public sealed class StoreTooNewException() : Exception("The store was written by a later version of this program: start that version, or give another folder with --data.");

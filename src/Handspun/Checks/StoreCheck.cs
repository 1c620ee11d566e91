using Handspun.Jobs.Store;
using Handspun.Station;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Checks;

/// <summary>The store: whether it opens, is whole and is of this version.</summary>
internal static class StoreCheck
{
    private const string Subject = "Store";

    /// <summary>Looks at it; nothing in it is changed, and none is made.</summary>
    public static async Task<CheckLine> OfAsync(DataFolder data, CancellationToken cancellationToken)
    {
        if (!File.Exists(data.Store))
        {
            return CheckLine.Good(Subject, "There is none yet: the first start of the station makes it.");
        }

        try
        {
            var source = new SqliteConnectionStringBuilder { DataSource = data.Store, Mode = SqliteOpenMode.ReadOnly, Pooling = false };
            await using var context = new JobsContext(new DbContextOptionsBuilder<JobsContext>().UseSqlite(source.ConnectionString).Options);
            await context.Database.OpenConnectionAsync(cancellationToken);
            await using var command = context.Database.GetDbConnection().CreateCommand();
            command.CommandText = "PRAGMA quick_check(1)";
            if (await command.ExecuteScalarAsync(cancellationToken) as string is not "ok" and var damage)
            {
                return CheckLine.Failing(Subject, $"{data.Store} is damaged ({damage}): stop the station and put a backup in its place.");
            }

            command.CommandText = "SELECT MAX(MigrationId) FROM __EFMigrationsHistory";
            var applied = await command.ExecuteScalarAsync(cancellationToken) as string;
            return string.CompareOrdinal(applied, context.Database.GetMigrations().Last()) switch
            {
                > 0 => CheckLine.Failing(Subject, new StoreTooNewException().Message),
                < 0 => CheckLine.Mind(Subject, $"{data.Store} is of an earlier version: the next start of the station brings it up to date; back it up before."),
                _ => CheckLine.Good(Subject, $"{data.Store} is whole and of this version."),
            };
        }
        catch (SqliteException e)
        {
            return CheckLine.Failing(Subject, $"{data.Store} does not open as a store ({e.Message}): mend its rights, or put a backup in its place.");
        }
    }
}

using Handspun.Jobs.Store;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Jobs.Tests.Store;

public sealed class StoreSchemaTests : IAsyncLifetime
{
    private StoreBench _bench = null!;

    public Task InitializeAsync()
    {
        _bench = StoreBench.OnANewFile();
        return Task.CompletedTask;
    }

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Fact]
    public async Task Schema_OfANewFile_HasEveryMigration()
    {
        await BringUpToDateAsync();

        await using var context = await _bench.Contexts.CreateDbContextAsync();
        Assert.Empty(await context.Database.GetPendingMigrationsAsync());
        Assert.Equal(context.Database.GetMigrations(), await context.Database.GetAppliedMigrationsAsync());
        Assert.Equal(0, await context.Jobs.CountAsync());
    }

    [Fact]
    public async Task Schema_ThatIsUpToDate_IsLeftAlone()
    {
        await BringUpToDateAsync();
        await _bench.JobAsync();
        var before = await _bench.AskAsync("PRAGMA schema_version");
        await BringUpToDateAsync();

        Assert.Equal(before, await _bench.AskAsync("PRAGMA schema_version"));
        Assert.Equal(1L, await _bench.AskAsync("SELECT COUNT(*) FROM Jobs"));
    }

    [Fact]
    public async Task Schema_OfALaterVersion_IsRefusedAndLeftAlone()
    {
        await BringUpToDateAsync();
        await _bench.AskAsync("INSERT INTO __EFMigrationsHistory VALUES ('29991231000000_FromTheFuture', '99.0.0')");

        var refusal = await Assert.ThrowsAsync<StoreTooNewException>(BringUpToDateAsync);

        Assert.Contains("later version", refusal.Message, StringComparison.Ordinal);
        await using var context = await _bench.Contexts.CreateDbContextAsync();
        Assert.Equal(context.Database.GetMigrations().Count() + 1L, await _bench.AskAsync("SELECT COUNT(*) FROM __EFMigrationsHistory"));
    }

    [Fact]
    public async Task Migrations_AreThoseOfTheModel()
    {
        await using var context = await _bench.Contexts.CreateDbContextAsync();

        Assert.False(context.Database.HasPendingModelChanges());
    }

    // Readers and the writer do not wait for each other then, and a crash loses nothing that was saved (SQLite: Write-Ahead Logging).
    [Fact]
    public async Task File_IsInWriteAheadLogging_AndMindsItsKeys()
    {
        await BringUpToDateAsync();

        Assert.Equal("wal", await _bench.AskAsync("PRAGMA journal_mode"));
        Assert.Equal(1L, await _bench.AskAsync("PRAGMA foreign_keys"));
        Assert.Equal("ok", await _bench.AskAsync("PRAGMA integrity_check"));
    }

    private Task BringUpToDateAsync() => StoreSchema.BringUpToDateAsync(_bench.Contexts, CancellationToken.None);
}

using System.Net;
using System.Net.Sockets;
using Handspun.Checks;
using Handspun.Gauges.Profiles;
using Handspun.Jobs.Store;
using Handspun.Station;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Tests.Checks;

public sealed class StationChecksTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("check-").FullName;

    private DataFolder Data => DataFolder.LookInto(_folder);

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public void Profile_OfTheShopsOwn_ThatDoesNotHold_FailsWithItsKey()
    {
        Directory.CreateDirectory(Data.Profiles);
        File.WriteAllText(Path.Combine(Data.Profiles, "ours.toml"), "[link]\nbaud = 5\n");

        var lines = ProfileChecks.All(new ProfileShelf(Data.Profiles, ProfileShelf.ShippedFolder)).ToList();
        Assert.Contains("'link.baud'", Assert.Single(lines, line => line.Mark == CheckMark.Failing).Sentence, StringComparison.Ordinal);
        Assert.Single(lines, line => line.Mark == CheckMark.Good);
    }

    [Fact]
    public void ShopFile_ThatDoesNotHold_Fails()
    {
        Assert.Equal(CheckMark.Good, ProfileChecks.Shop(Data).Mark);
        File.WriteAllText(Data.Shop, "unit = \"furlong\"\n");
        Assert.Equal(CheckMark.Failing, ProfileChecks.Shop(Data).Mark);
    }

    [Fact]
    public async Task Store_OfThisVersion_IsGood_AndOneOfAnotherIsTold()
    {
        Assert.Equal(CheckMark.Good, (await StoreCheck.OfAsync(Data, CancellationToken.None)).Mark);
        Assert.False(File.Exists(Data.Store));
        await using var services = new ServiceCollection().AddLogging().AddJobStore(Data.Store).BuildServiceProvider();
        await StoreSchema.BringUpToDateAsync(services.GetRequiredService<IDbContextFactory<JobsContext>>(), CancellationToken.None);
        Assert.Contains("whole and of this version", (await StoreCheck.OfAsync(Data, CancellationToken.None)).Sentence, StringComparison.Ordinal);

        Tell("INSERT INTO __EFMigrationsHistory VALUES ('99990101000000_Later', '99')");
        Assert.Contains("later version", (await StoreCheck.OfAsync(Data, CancellationToken.None)).Sentence, StringComparison.Ordinal);
        Tell("DELETE FROM __EFMigrationsHistory");
        Assert.Equal(CheckMark.Mind, (await StoreCheck.OfAsync(Data, CancellationToken.None)).Mark);
    }

    [Fact]
    public async Task Store_ThatIsNone_Fails()
    {
        File.WriteAllText(Data.Store, new string('x', 5000));

        Assert.Equal(CheckMark.Failing, (await StoreCheck.OfAsync(Data, CancellationToken.None)).Mark);
    }

    [Fact]
    public async Task Address_IsGood_WhereTheStationAnswersOrNobodyDoes()
    {
        using var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();
        var address = (IPEndPoint)other.LocalEndpoint;
        Assert.Equal(("ok", "failing"), (await AddressAsync(address, stationRuns: true), await AddressAsync(address, stationRuns: false)));
        other.Stop();
        Assert.Equal(("failing", "ok"), (await AddressAsync(address, stationRuns: true), await AddressAsync(address, stationRuns: false)));
    }

    [Fact]
    public void Clock_ThatIsBehindTheNewestRecord_Fails()
    {
        var now = DateTimeOffset.UnixEpoch + (File.GetLastWriteTimeUtc(typeof(ClockCheck).Assembly.Location) - DateTime.UnixEpoch) + TimeSpan.FromDays(2);
        Assert.Equal(CheckMark.Good, ClockCheck.Of(Data, new FakeTimeProvider(now)).Mark);
        Directory.CreateDirectory(Data.Record("r1"));
        File.WriteAllText(Data.PackedJournalOf("r1"), "");
        File.SetLastWriteTimeUtc(Data.PackedJournalOf("r1"), now.UtcDateTime + TimeSpan.FromDays(1));

        Assert.Equal(CheckMark.Failing, ClockCheck.Of(Data, new FakeTimeProvider(now)).Mark);
        Assert.Equal(CheckMark.Good, ClockCheck.Of(Data, new FakeTimeProvider(now + TimeSpan.FromDays(1))).Mark);
        Assert.Contains("before this program was made", ClockCheck.Of(DataFolder.LookInto(Path.Combine(_folder, "other")), new FakeTimeProvider(now - TimeSpan.FromDays(3))).Sentence, StringComparison.Ordinal);
    }

    private static async Task<string> AddressAsync(IPEndPoint address, bool stationRuns) =>
        (await AddressChecks.OfAsync("Pages", address, "--http", stationRuns, TimeProvider.System, CancellationToken.None)).Code;

    private void Tell(string command)
    {
        using var connection = new SqliteConnection($"Data Source={Data.Store};Pooling=False");
        connection.Open();
        using var telling = connection.CreateCommand();
        telling.CommandText = command;
        telling.ExecuteNonQuery();
    }
}

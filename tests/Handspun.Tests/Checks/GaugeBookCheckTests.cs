using Handspun.Checks;
using Handspun.Jobs.ShopGauges;
using Handspun.Jobs.Store;
using Handspun.Station;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Tests.Checks;

public sealed class GaugeBookCheckTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("check-").FullName;
    private readonly FakeTimeProvider _time = new(new DateTimeOffset(2026, 3, 14, 12, 0, 0, TimeSpan.Zero));

    private DataFolder Data => DataFolder.LookInto(_folder);

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public async Task Shop_WithoutAStore_HasNoBookToLookInto()
    {
        Assert.Empty(await LookAsync());
        Assert.False(File.Exists(Data.Store));
    }

    [Fact]
    public async Task Store_ThatIsNone_LeavesTheWordToItsOwnLine()
    {
        File.WriteAllText(Data.Store, new string('x', 5000));

        Assert.Empty(await LookAsync());
    }

    [Fact]
    public async Task Gauges_WhoseChecksStand_AreGoodTogether()
    {
        await using var services = await StoreAsync();
        Assert.Empty(await LookAsync());
        var book = services.GetRequiredService<GaugeBook>();
        await book.CheckAsync("pinion", Check(5.001), CancellationToken.None);
        Assert.Contains("'pinion' stands", Assert.Single(await LookAsync()).Sentence, StringComparison.Ordinal);
        await book.CheckAsync("bore", Check(5.001), CancellationToken.None);

        var line = Assert.Single(await LookAsync());
        Assert.Equal(("ok", "The checks of all 2 gauges stand."), (line.Code, line.Sentence));
    }

    [Theory]
    [InlineData(5.001, 400, "mind", "was due for a check on 14 Mar 2027: check it against a block or a ring")]
    [InlineData(5.02, 0, "failing", "beyond its error limit when it was last checked: measure with another one")]
    [InlineData(5.02, 400, "failing", "was due for a check on 14 Mar 2027")]
    [InlineData(5.0038, 0, "mind", "too close to call: check it again")]
    public async Task Gauge_WhoseCheckDoesNotStand_IsNamedWithWhatToDo(double shown, int daysLater, string code, string words)
    {
        await using var services = await StoreAsync();
        var book = services.GetRequiredService<GaugeBook>();
        await book.CheckAsync("pinion", Check(shown), CancellationToken.None);
        _time.Advance(TimeSpan.FromDays(daysLater));
        await book.CheckAsync("bore", Check(5.001), CancellationToken.None);

        var line = Assert.Single(await LookAsync());
        Assert.Equal(("Gauge 'pinion'", code), (line.Subject, line.Code));
        Assert.Contains(words, line.Sentence, StringComparison.Ordinal);
        Assert.EndsWith("The page Gauges takes the check.", line.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gauge_ThatWasNeverChecked_IsNamed()
    {
        await using var services = await StoreAsync();
        await services.GetRequiredService<GaugeBook>().DescribeAsync("pinion", new GaugeSheet { Description = "dial indicator" }, CancellationToken.None);

        var line = Assert.Single(await LookAsync());
        Assert.Equal("mind", line.Code);
        Assert.Contains("never checked", line.Sentence, StringComparison.Ordinal);
    }

    private Task<IReadOnlyList<CheckLine>> LookAsync() => GaugeBookCheck.OfAsync(Data, _time, CancellationToken.None);

    private async Task<ServiceProvider> StoreAsync()
    {
        var services = new ServiceCollection().AddLogging().AddSingleton<TimeProvider>(_time).AddJobStore(Data.Store).BuildServiceProvider();
        await StoreSchema.BringUpToDateAsync(services.GetRequiredService<IDbContextFactory<JobsContext>>(), CancellationToken.None);
        return services;
    }

    private static CheckSheet Check(double shown) => new()
    {
        By = "A. Nobody",
        Against = "gauge block 5 mm, certificate 17",
        SizeMillimetres = 5,
        SizeU95Millimetres = 0.0002,
        ReadingsMillimetres = [shown, shown, shown, shown, shown],
        ResolutionMillimetres = 0.001,
        ErrorLimitMillimetres = 0.004,
    };
}

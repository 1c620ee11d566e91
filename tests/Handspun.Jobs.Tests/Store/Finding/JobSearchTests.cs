using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Store.Finding;
using Handspun.Jobs.Tests.Records;

namespace Handspun.Jobs.Tests.Store.Finding;

public sealed class JobSearchTests : IAsyncLifetime
{
    private StoreBench _bench = null!;

    public async Task InitializeAsync() => _bench = await StoreBench.OpenAsync();

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Theory]
    [InlineData("2026-0002", "2026-0002")]
    [InlineData("öre", "2026-0002")]
    [InlineData("ÖRE ARDENT", "2026-0002")]
    [InlineData("ΝΙΚΟΣ", "2026-0003")]
    [InlineData("νικοσ", "2026-0003")]
    [InlineData("kx47abc", "2026-0002")]
    [InlineData("kx 47-abc", "2026-0002")]
    [InlineData("b123456", "2026-0003")]
    [InlineData("corvid", "2026-0001")]
    [InlineData("TOP END", "2026-0003")]
    [InlineData("  ", "2026-0003 2026-0002 2026-0001")]
    [InlineData("ardent twin", "2026-0003 2026-0002")]
    [InlineData("ardent corvid", "")]
    [InlineData("50%", "2026-0001")]
    [InlineData("a_b", "2026-0001")]
    [InlineData("a%b", "")]
    [InlineData("5_%", "")]
    [InlineData("'quoted\"", "2026-0001")]
    [InlineData("' OR 1=1 --", "")]
    public async Task Search_ByWhatIsWrittenDown_FindsTheJobsWithEveryWord(string typed, string numbers)
    {
        await OpenAsync(StoreBench.Order with { Make = "Aldermoor", Model = "Corvid", Title = "A_b 'quoted\" at 50%" });
        await OpenAsync(StoreBench.Order with { Customer = "Fru Öre", Plate = "KX 47-ABC" });
        await OpenAsync(StoreBench.Order with { Customer = "Νίκος Νικος", Vin = "ab1234567", Title = "Top end" });

        var found = await _bench.Store.SearchAsync(new(typed), CancellationToken.None);

        Assert.Equal(numbers, string.Join(' ', found.Jobs.Select(job => job.Number)));
        Assert.Equal(found.Jobs.Count, found.Count);
    }

    [Fact]
    public async Task Search_PageByPage_GivesEveryJobOnceWithItsRecords()
    {
        for (var i = 0; i < 5; i++)
        {
            var number = await _bench.JobAsync();
            await _bench.Store.AttachAsync(number, "pinion-runout", SampleRecords.Complete($"r{i}"), CancellationToken.None);
        }

        var first = await _bench.Store.SearchAsync(new("cam", 1, 2), CancellationToken.None);
        var last = await _bench.Store.SearchAsync(new("cam", 3, 2), CancellationToken.None);
        var beyond = await _bench.Store.SearchAsync(new("cam", 4, 2), CancellationToken.None);

        Assert.Equal(["2026-0005", "2026-0004"], first.Jobs.Select(job => job.Number));
        Assert.Equal("2026-0001", Assert.Single(last.Jobs).Number);
        Assert.Equal("r0", last.Jobs[0].Points.Single().Counting!.Id);
        Assert.Empty(beyond.Jobs);
        Assert.Equal((5, 3), (beyond.Count, beyond.Pages));
    }

    [Fact]
    public async Task List_ReadsOfEachPointWhatCounts_AndOfTheBookWhatTheStepsCameTo()
    {
        var number = await _bench.JobAsync();
        foreach (var (record, minutes) in new[] { ("a", 0), ("b", 5), ("c", 9) })
        {
            await _bench.Store.AttachAsync(number, "pinion-runout", SampleRecords.Complete(record, minutes), CancellationToken.None);
        }

        async Task<Job> ListedAsync() => Assert.Single((await _bench.Store.ListAsync(new(), CancellationToken.None)).Jobs);
        Assert.Equal("c", Assert.Single((await ListedAsync()).Points.Single().Records).Id);

        await _bench.Store.PickAsync(number, "pinion-runout", "a", CancellationToken.None);
        foreach (var (about, deed) in new (string, Deed)[] { (Subject.Step("ready"), new Ticked(null)), (Subject.Part("lifter"), new PartFaced("front")), (Subject.Finding(3), new FindingNoted([], "worn", null, "magnet", null)), (Subject.Job, new JobClosed([], "done")) })
        {
            await _bench.Book.WriteAsync(number, _ => null, new Signature("A. Nobody", null), _ => [new(about, deed)], CancellationToken.None);
        }

        var listed = await ListedAsync();
        Assert.Equal("a", Assert.Single(listed.Points.Single().Records).Id);
        Assert.Equal(["step/ready", "finding/3"], listed.Book.Select(entry => entry.About));
        Assert.Equal(("Ardent", true), (listed.Bike.Make, listed.ClosedAt is not null));
        Assert.Equal(3, Assert.Single((await _bench.Store.SearchAsync(new(), CancellationToken.None)).Jobs).Points.Single().Records.Count);
    }

    [Fact]
    public async Task Search_AfterATitleOrPlateChanged_FindsWhatItIsNow()
    {
        var number = await _bench.JobAsync();
        await _bench.Store.ChangeAsync(number, job => (job.Title, job.Bike.Plate) = ("Bottom end", "ZZ 9"), CancellationToken.None);

        Assert.Equal(1, (await _bench.Store.SearchAsync(new("bottom zz9"), CancellationToken.None)).Count);
        Assert.Equal(0, (await _bench.Store.SearchAsync(new("chest"), CancellationToken.None)).Count);
    }

    [Theory]
    [InlineData(0, 10)]
    [InlineData(1, 0)]
    [InlineData(1, 201)]
    public async Task Search_ForNoPage_IsRefusedWithASentence(int page, int perPage)
    {
        var search = new JobSearch("", page, perPage);

        Assert.EndsWith(".", search.Problem, StringComparison.Ordinal);
        await Assert.ThrowsAsync<ArgumentException>(() => _bench.Store.SearchAsync(search, CancellationToken.None));
    }

    [Fact]
    public async Task Bike_WithTheSamePlateMakeAndModel_IsTheSameWhereOneHasNoVin()
    {
        var first = await OpenAsync(StoreBench.Order with { Plate = "KX 47-ABC" });
        var second = await OpenAsync(StoreBench.Order with { Plate = "kx47abc", Vin = "AB1234567" });
        var otherVin = await OpenAsync(StoreBench.Order with { Plate = "KX47ABC", Vin = "CD1234567" });
        var otherModel = await OpenAsync(StoreBench.Order with { Plate = "KX47ABC", Model = "Single 350" });

        Assert.Equal(first, second);
        Assert.Equal("AB1234567", (await _bench.FindAsync("2026-0001")).Bike.Vin);
        Assert.Equal(3, new[] { first, otherVin, otherModel }.Distinct().Count());
    }

    [Fact]
    public async Task Store_KeptBeforeItCouldBeSearched_IsFoundAfterwards()
    {
        var number = await OpenedWithCustomerAsync("Åse");
        await _bench.AskAsync("UPDATE Jobs SET FindText = ''");
        await _bench.AskAsync("UPDATE Bikes SET FindText = '', KindKey = ''");
        await _bench.AskAsync("UPDATE Points SET CountingMillimetres = NULL");
        await using (var context = await _bench.Contexts.CreateDbContextAsync())
        {
            await SearchColumns.FillEarlierAsync(context, CancellationToken.None);
        }

        Assert.Equal(number, Assert.Single((await _bench.Store.SearchAsync(new("åse ardent"), CancellationToken.None)).Jobs).Number);
        Assert.Equal(0.0508, await _bench.AskAsync("SELECT CountingMillimetres FROM Points"));
    }

    private async Task<int> OpenAsync(NewJob order) => (await _bench.Store.OpenAsync(order, StoreBench.PinionOnly, CancellationToken.None)).BikeId;

    private async Task<string> OpenedWithCustomerAsync(string customer)
    {
        var number = (await _bench.Store.OpenAsync(StoreBench.Order with { Customer = customer }, StoreBench.PinionOnly, CancellationToken.None)).Number;
        await _bench.Store.AttachAsync(number, "pinion-runout", SampleRecords.Complete("r"), CancellationToken.None);
        return number;
    }
}

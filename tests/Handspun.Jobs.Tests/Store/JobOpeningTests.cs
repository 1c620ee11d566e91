using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Points.Catalogue;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Jobs.Tests.Store;

public sealed class JobOpeningTests : IAsyncLifetime
{
    private StoreBench _bench = null!;

    public async Task InitializeAsync() => _bench = await StoreBench.OpenAsync();

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Fact]
    public async Task Job_ThatIsOpened_IsAsItWasOrdered()
    {
        var order = new NewJob { Make = " Ardent ", Model = "Twin 900", Year = 2004, Vin = " ab1234567 ", Odometer = 41000, Customer = " ", Title = " Cam chest service " };
        var number = (await _bench.Store.OpenAsync(order, StoreBench.PinionOnly, CancellationToken.None)).Number;

        var job = await _bench.FindAsync(number);
        Assert.Equal(("Cam chest service", null, _bench.Time.GetUtcNow(), null), (job.Title, job.Customer, job.OpenedAt, job.CautionsReadAt));
        Assert.Equal(("Ardent", "Twin 900", 2004, "AB1234567", 41000), (job.Bike.Make, job.Bike.Model, job.Bike.Year, job.Bike.Vin, job.Bike.Odometer));
        Assert.Equal("2004 Ardent Twin 900", job.Bike.Title);
        var point = Assert.Single(job.InOrder);
        Assert.Equal((0, "pinion-runout", "Pinion shaft runout"), (point.Place, point.Code, point.Title));
        Assert.Equal(RunoutPoints.Pinion.ShippedLimit, point.Limit);
        Assert.False(point.Limit!.Confirmed);
        Assert.Null(point.Counting);
    }

    [Fact]
    public async Task Points_OfAJob_AreInTheOrderOfThePlan()
    {
        MeasuringPoint[] plan = [.. new[] { "c", "a", "b" }.Select(code => RunoutPoints.Pinion with { Code = code })];
        var number = (await _bench.Store.OpenAsync(StoreBench.Order, plan, CancellationToken.None)).Number;

        Assert.Equal(["c", "a", "b"], (await _bench.FindAsync(number)).InOrder.Select(point => point.Code));
    }

    [Fact]
    public async Task Numbers_CountUpWithinAYear_AndBeginAgainInTheNext()
    {
        Assert.Equal(["2026-0001", "2026-0002"], [await _bench.JobAsync(), await _bench.JobAsync()]);
        _bench.Time.SetUtcNow(new DateTimeOffset(2027, 1, 2, 0, 0, 0, TimeSpan.Zero));

        Assert.Equal("2027-0001", await _bench.JobAsync());
    }

    [Fact]
    public async Task Numbers_OnNewYearsEve_AreOfTheShopsYear()
    {
        _bench.Time.SetLocalTimeZone(TimeZoneInfo.CreateCustomTimeZone("shop", TimeSpan.FromHours(-6), "shop", "shop"));
        _bench.Time.SetUtcNow(new DateTimeOffset(2027, 1, 1, 3, 0, 0, TimeSpan.Zero));   // nine in the evening in the shop

        Assert.Equal("2026-0001", await _bench.JobAsync());
    }

    [Fact]
    public async Task Numbers_AboveFourDigits_GoOnCounting()
    {
        await _bench.JobAsync();
        await using (var context = await _bench.Contexts.CreateDbContextAsync())
        {
            await context.Jobs.ExecuteUpdateAsync(change => change.SetProperty(job => job.Number, "2026-9999"));
        }

        Assert.Equal(["2026-10000", "2026-10001"], [await _bench.JobAsync(), await _bench.JobAsync()]);
    }

    [Fact]
    public async Task Jobs_OpenedAtTheSameTime_HaveDistinctNumbers()
    {
        const int Jobs = 24;
        var numbers = await Task.WhenAll(Enumerable.Range(0, Jobs).Select(_ => Task.Run(_bench.JobAsync)));

        Assert.Equal(Enumerable.Range(1, Jobs).Select(running => $"2026-{running:D4}"), numbers.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Bike_WithTheSameVin_IsTheSameBike_HoweverItIsWritten()
    {
        var order = StoreBench.Order with { Vin = "AB1234567", Odometer = 41000 };
        var first = await _bench.Store.OpenAsync(order, StoreBench.PinionOnly, CancellationToken.None);
        var second = await _bench.Store.OpenAsync(order with { Vin = " ab1234567", Odometer = 42500 }, StoreBench.PinionOnly, CancellationToken.None);
        var third = await _bench.Store.OpenAsync(order with { Odometer = null }, StoreBench.PinionOnly, CancellationToken.None);

        Assert.Equal([first.BikeId, first.BikeId], [second.BikeId, third.BikeId]);
        Assert.Equal(42500, (await _bench.FindAsync(third.Number)).Bike.Odometer);
        Assert.Equal(1L, await _bench.AskAsync("SELECT COUNT(*) FROM Bikes"));
    }

    [Fact]
    public async Task Bike_WithTheSameVin_InJobsOpenedAtTheSameTime_IsOneBike()
    {
        var order = StoreBench.Order with { Vin = "AB1234567" };
        await Task.WhenAll(Enumerable.Range(0, 12).Select(_ => Task.Run(() => _bench.Store.OpenAsync(order, StoreBench.PinionOnly, CancellationToken.None))));

        Assert.Equal(1L, await _bench.AskAsync("SELECT COUNT(*) FROM Bikes"));
    }

    [Fact]
    public async Task Bikes_WithoutAVin_AreDifferentBikes()
    {
        await _bench.JobAsync();
        await _bench.JobAsync();

        Assert.Equal(2L, await _bench.AskAsync("SELECT COUNT(*) FROM Bikes"));
    }

    [Fact]
    public async Task Order_WithProblems_OpensNothing()
    {
        var refused = await Assert.ThrowsAsync<ArgumentException>(() => _bench.Store.OpenAsync(StoreBench.Order with { Make = null }, StoreBench.PinionOnly, CancellationToken.None));

        Assert.Contains("Say who made the bike.", refused.Message, StringComparison.Ordinal);
        Assert.Equal(0L, await _bench.AskAsync("SELECT COUNT(*) FROM Jobs"));
    }

    [Fact]
    public async Task Newest_AreTheNewestFirst_AndNoMoreThanAskedFor()
    {
        var first = await _bench.JobAsync();
        _bench.Time.Advance(TimeSpan.FromMinutes(1));
        var second = await _bench.JobAsync();
        var third = await _bench.JobAsync();   // at the same moment: the later number is the newer

        Assert.Equal([third, second], (await _bench.Store.NewestAsync(2, CancellationToken.None)).Select(job => job.Number));
        Assert.Equal([third, second, first], (await _bench.Store.NewestAsync(50, CancellationToken.None)).Select(job => job.Number));
    }

    [Fact]
    public async Task Job_ThatIsNotThere_IsNull() => Assert.Null(await _bench.Store.FindAsync("2026-0001", CancellationToken.None));
}

using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;

namespace Handspun.Jobs.Tests.Store;

public sealed class LimitStoreTests : IAsyncLifetime
{
    private StoreBench _bench = null!;

    public async Task InitializeAsync() => _bench = await StoreBench.OpenAsync();

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Fact]
    public async Task Limits_NotConfirmed_ComeFirst_AndClosedJobsAreLeftOut()
    {
        var (old, confirmed, closed) = (await JobAsync(), await JobAsync(), await JobAsync());
        var newest = await JobAsync();
        await _bench.Book.WriteAsync(
            confirmed, Subject.Limit("pinion-runout"), new("A. Nobody"),
            job => LimitActs.Confirm(job, "pinion-runout", new(null, "0.004 in", "invented manual, page 7", "gear", "service"), "A. Nobody", _bench.Time.GetUtcNow()), CancellationToken.None);
        await _bench.Book.WriteAsync(closed, Subject.Job, new("A. Nobody"), job => JobActs.Close(job, "gone"), CancellationToken.None);

        var found = await _bench.Limits.OfOpenJobsAsync(1, 10, CancellationToken.None);

        Assert.Equal((3, 2), (found.Count, found.Unconfirmed));
        Assert.Equal([newest, old, confirmed], found.Limits.Select(limit => limit.Job));
        Assert.Equal(("A. Nobody", _bench.Time.GetUtcNow()), (found.Limits[2].Limit.ConfirmedBy, found.Limits[2].Limit.ConfirmedAt));
        Assert.Equal("2004 Ardent Twin 900", found.Limits[0].Bike);
        Assert.Equal([confirmed], (await _bench.Limits.OfOpenJobsAsync(2, 2, CancellationToken.None)).Limits.Select(limit => limit.Job));
    }

    [Fact]
    public async Task Limits_OfAnEmptyShop_AreNone() => Assert.Empty((await _bench.Limits.OfOpenJobsAsync(1, 10, CancellationToken.None)).Limits);

    private async Task<string> JobAsync()
    {
        _bench.Time.Advance(TimeSpan.FromMinutes(1));
        return await _bench.JobAsync();
    }
}

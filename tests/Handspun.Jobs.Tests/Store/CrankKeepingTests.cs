using Handspun.Jobs.Cranks;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Points.Catalogue;
using Handspun.Jobs.Store;
using Handspun.Jobs.Tests.Cranks;

namespace Handspun.Jobs.Tests.Store;

public sealed class CrankKeepingTests : IAsyncLifetime
{
    private static readonly CrankSheet Sheet = new() { BetweenBearingsMillimetres = 120, DivisionMillimetres = 1, CrankpinDegrees = 30, CrankpinDivisionDegrees = 5 };

    private StoreBench _bench = null!;

    public async Task InitializeAsync() => _bench = await StoreBench.OpenAsync();

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Fact]
    public async Task Crank_ThatWasTyped_IsThereAfterReopening_AndCanBeTypedAnew()
    {
        var job = (await _bench.Store.OpenAsync(StoreBench.Order, PointCatalogue.Usual, CancellationToken.None)).Number;
        Assert.Null((await _bench.FindAsync(job)).Crank);

        var told = await SetAsync(job, Sheet);
        await _bench.ReopenAsync();

        var kept = await _bench.FindAsync(job);
        Assert.Equal((Sheet, Sheet), (told.Crank, kept.Crank));
        Assert.Equal([MeasuredCrank.PinionSetup, MeasuredCrank.DriveSetup], kept.InOrder.Select(point => point.Setup));

        await SetAsync(job, Sheet with { CrankpinDegrees = null });
        Assert.Null((await _bench.FindAsync(job)).Crank!.CrankpinDegrees);
    }

    [Fact]
    public async Task Crank_ThatCannotBe_IsRefusedAndNothingIsKept()
    {
        var job = (await _bench.Store.OpenAsync(StoreBench.Order, PointCatalogue.Usual, CancellationToken.None)).Number;

        var refused = await Assert.ThrowsAsync<ArgumentException>(() => SetAsync(job, Sheet with { BetweenBearingsMillimetres = 0 }));

        Assert.StartsWith("Give the distance between the middles of the two bearings", refused.Message, StringComparison.Ordinal);
        Assert.Null((await _bench.FindAsync(job)).Crank);
    }

    [Fact]
    public async Task Crank_OfAJobWithOneEnd_IsRefusedAndNothingIsKept()
    {
        var job = await _bench.JobAsync();

        var refused = await Assert.ThrowsAsync<JobNotFoundException>(() => SetAsync(job, Sheet));

        Assert.Contains("no point 'drive-side-runout'", refused.Message, StringComparison.Ordinal);
        Assert.Equal((null, null), ((await _bench.FindAsync(job)).Crank, (await _bench.PointAsync(job)).Setup));
    }

    [Fact]
    public async Task Point_ThatIsAdded_ComesLast_OnceAndAfterReopening()
    {
        var job = await _bench.JobAsync();
        await _bench.Store.AddPointAsync(job, RunoutPoints.DriveSide, CancellationToken.None);
        await _bench.Store.AddPointAsync(job, RunoutPoints.DriveSide, CancellationToken.None);
        await _bench.ReopenAsync();

        var points = (await _bench.FindAsync(job)).InOrder.ToList();
        Assert.Equal([(0, "pinion-runout"), (1, "drive-side-runout")], points.Select(point => (point.Place, point.Code)));
        Assert.Equal((PointKind.Runout, null), (points[1].Kind, points[1].Limit));
        await Assert.ThrowsAsync<JobNotFoundException>(() => _bench.Store.AddPointAsync("1999-0001", RunoutPoints.DriveSide, CancellationToken.None));
    }

    private Task<Job> SetAsync(string job, CrankSheet sheet) =>
        _bench.Store.SetCrankAsync(job, sheet, MeasuredCrank.DriveSetup, MeasuredCrank.PinionSetup, CancellationToken.None);
}

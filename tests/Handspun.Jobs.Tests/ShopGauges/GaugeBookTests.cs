using Handspun.Jobs.Records;
using Handspun.Jobs.ShopGauges;
using Handspun.Jobs.Tests.Records;
using Handspun.Jobs.Tests.Store;
using Handspun.Metrology.GaugeStudy;

namespace Handspun.Jobs.Tests.ShopGauges;

public sealed class GaugeBookTests : IAsyncLifetime
{
    private StoreBench _bench = null!;

    public async Task InitializeAsync() => _bench = await StoreBench.OpenAsync();

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Fact]
    public async Task Gauge_ThatIsCheckedAndStudied_IsThereAfterReopening()
    {
        await _bench.Gauges.DescribeAsync("pinion", new GaugeSheet { Description = "dial indicator, bench drawer", CheckEveryDays = 180, ErrorLimitMillimetres = 0.004 }, CancellationToken.None);
        await _bench.Gauges.CheckAsync("pinion", SampleChecks.Sheet, CancellationToken.None);
        await _bench.Gauges.StudyAsync("pinion", new StudySheet { Mechanics = ["A", "B"], Parts = ["1", "2"], ValuesMillimetres = [[[1, 1.001], [2, 2.001]], [[1.001, 1], [2.001, 2]]] }, CancellationToken.None);
        await _bench.ReopenAsync();

        var gauge = (await _bench.Gauges.FindAsync("pinion", CancellationToken.None))!;
        Assert.Equal(("dial indicator, bench drawer", 180, null, 0.004), (gauge.Description, gauge.CheckEveryDays, gauge.ResolutionMillimetres, gauge.ErrorLimitMillimetres));
        var check = Assert.Single(gauge.Checks);
        Assert.Equal((GaugeStanding.Good, new DateOnly(2026, 9, 10), _bench.Time.GetUtcNow()), (check.Standing, check.DueOn, check.At));   // 180 days after 14 March
        Assert.Equal(SampleChecks.Sheet.ReadingsMillimetres, check.Sheet.ReadingsMillimetres);
        Assert.Equal(SampleChecks.Sheet with { ReadingsMillimetres = [] }, check.Sheet with { ReadingsMillimetres = [] });
        Assert.Equal(1.001, Assert.Single(gauge.Studies).Sheet.ValuesMillimetres[1][0][0]);
    }

    [Fact]
    public async Task Check_ThatIsNewest_Counts_AndNoneIsLost()
    {
        await _bench.Gauges.CheckAsync("pinion", SampleChecks.Sheet with { ReadingsMillimetres = [5.02, 5.02, 5.02] }, CancellationToken.None);
        Assert.Equal("failed", (await _bench.Gauges.LastCheckAsync("pinion", CancellationToken.None))!.Found);
        _bench.Time.Advance(TimeSpan.FromHours(1));
        await _bench.Gauges.CheckAsync("pinion", SampleChecks.Sheet, CancellationToken.None);

        var gauge = (await _bench.Gauges.FindAsync("pinion", CancellationToken.None))!;
        Assert.Equal([GaugeStanding.Good, GaugeStanding.Failed], gauge.ChecksNewestFirst.Select(check => check.Standing));
        Assert.Equal("good", gauge.LastCheck!.Found);
        Assert.Equal(ShopGauge.UsualDays, gauge.CheckEveryDays);
    }

    [Fact]
    public async Task Book_OfAnUnknownGauge_HasNothing_AndOfWhatCannotBe_KeepsNothing()
    {
        Assert.Null(await _bench.Gauges.FindAsync("pinion", CancellationToken.None));
        Assert.Null(await _bench.Gauges.LastCheckAsync("pinion", CancellationToken.None));
        await Assert.ThrowsAsync<ArgumentException>(() => _bench.Gauges.CheckAsync("pinion", SampleChecks.Sheet with { By = "" }, CancellationToken.None));
        await Assert.ThrowsAsync<ArgumentException>(() => _bench.Gauges.DescribeAsync("pinion", new GaugeSheet { CheckEveryDays = 0 }, CancellationToken.None));
        await Assert.ThrowsAsync<ArgumentException>(() => _bench.Gauges.StudyAsync("pinion", new StudySheet { Mechanics = [], Parts = [], ValuesMillimetres = [] }, CancellationToken.None));

        Assert.Empty(await _bench.Gauges.AllAsync(CancellationToken.None));
    }

    [Fact]
    public async Task Record_OfACheckedGauge_KeepsTheCheck()
    {
        var job = await _bench.JobAsync();
        var made = SampleRecords.Complete("r1");
        await _bench.Store.AttachAsync(job, "pinion-runout", new CaptureRecord
        {
            Id = made.Id,
            At = made.At,
            Seconds = made.Seconds,
            Ending = made.Ending,
            Status = made.Status,
            Gauge = made.Gauge with { LastCheck = SampleChecks.Last() },
            Figures = made.Figures,
        }, CancellationToken.None);
        await _bench.ReopenAsync();

        Assert.Equal(SampleChecks.Last(), (await _bench.PointAsync(job)).Records.Single().Gauge.LastCheck);
    }
}

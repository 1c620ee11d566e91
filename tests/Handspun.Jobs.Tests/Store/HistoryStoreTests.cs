using Handspun.Jobs.Orders;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store;
using Handspun.Jobs.Tests.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Tests.Store;

public sealed class HistoryStoreTests : IAsyncLifetime
{
    private StoreBench _bench = null!;

    public async Task InitializeAsync() => _bench = await StoreBench.OpenAsync();

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Fact]
    public async Task History_OfABikeThatCameAgain_HasWhatCountedEachTime()
    {
        var order = StoreBench.Order with { Vin = "AB1234567" };
        var first = await MeasuredAsync(order, "a", 0.02);
        await _bench.Store.AttachAsync(first, "pinion-runout", Record("b", 0.03, 5), CancellationToken.None);
        await _bench.Store.PickAsync(first, "pinion-runout", "a", CancellationToken.None);
        _bench.Time.Advance(TimeSpan.FromDays(700));
        var second = await MeasuredAsync(order, "c", 0.2);
        await MeasuredAsync(StoreBench.Order, "other", 0.9);

        var history = await _bench.History.OfBikeAsync(first, CancellationToken.None);

        Assert.Equal([first, second], history.Jobs.Select(job => job.Number));
        var point = Assert.Single(history.Points);
        Assert.Equal([(first, "a"), (second, "c")], point.Results.Select(result => (result.Job, result.Verdict.Record!.Id)));
        Assert.Equal([Verdict.Within, Verdict.Over], point.Results.Select(result => result.Verdict.Verdict!.Value));
    }

    [Fact]
    public async Task History_OfABikeNobodyMeasured_HasNoPoints() =>
        Assert.Empty((await _bench.History.OfBikeAsync(await _bench.JobAsync(), CancellationToken.None)).Points);

    [Fact]
    public async Task History_OfNoJob_IsRefused() =>
        await Assert.ThrowsAsync<JobNotFoundException>(() => _bench.History.OfBikeAsync("2026-9999", CancellationToken.None));

    [Fact]
    public async Task Kind_WithFiveOtherBikes_TakesTheNewestCountingResultOfEach()
    {
        var number = await MeasuredAsync(StoreBench.Order with { Vin = "AB1234567" }, "own", 0.05);
        for (var i = 1; i <= 5; i++)
        {
            var order = StoreBench.Order with { Make = i == 3 ? "ARDENT" : "Ardent", Vin = $"CD000000{i}" };
            await MeasuredAsync(order, $"old{i}", 0.5);
            _bench.Time.Advance(TimeSpan.FromDays(1));
            await MeasuredAsync(order, $"new{i}", 0.01 * i);
        }

        await MeasuredAsync(StoreBench.Order with { Model = "Single 350", Vin = "EF0000001" }, "other kind", 0.9);
        var history = await _bench.History.OfBikeAsync(number, CancellationToken.None);

        var spread = (await _bench.History.OfKindAsync(history, CancellationToken.None))["pinion-runout"];

        Assert.Equal([0.01, 0.02, 0.03, 0.04, 0.05], spread.RisingMillimetres.Select(value => Math.Round(value, 6)));
        Assert.Equal(0.03, spread.Median.Millimetres, 1e-9);
    }

    [Fact]
    public async Task Kind_WhereAnEarlierRecordWasPicked_OrTheNewestJobMeasuredNothing_TakesWhatCounts()
    {
        var number = await MeasuredAsync(StoreBench.Order with { Vin = "AB1234567" }, "own", 0.05);
        for (var i = 1; i <= 5; i++)
        {
            var order = StoreBench.Order with { Vin = $"CD000000{i}" };
            var job = await MeasuredAsync(order, $"picked{i}", 0.01 * i);
            await _bench.Store.AttachAsync(job, "pinion-runout", Record($"again{i}", 0.7, 5), CancellationToken.None);
            await _bench.Store.PickAsync(job, "pinion-runout", $"picked{i}", CancellationToken.None);
            _bench.Time.Advance(TimeSpan.FromDays(1));
            await _bench.Store.OpenAsync(order, StoreBench.PinionOnly, CancellationToken.None);
        }

        var spread = (await _bench.History.OfKindAsync(await _bench.History.OfBikeAsync(number, CancellationToken.None), CancellationToken.None))["pinion-runout"];

        Assert.Equal([0.01, 0.02, 0.03, 0.04, 0.05], spread.RisingMillimetres.Select(value => Math.Round(value, 6)));
    }

    [Fact]
    public async Task Kind_WithFourOtherBikes_SaysNothing()
    {
        var number = await MeasuredAsync(StoreBench.Order, "own", 0.05);
        for (var i = 0; i < 4; i++)
        {
            await MeasuredAsync(StoreBench.Order, $"other{i}", 0.02);
        }

        Assert.Empty(await _bench.History.OfKindAsync(await _bench.History.OfBikeAsync(number, CancellationToken.None), CancellationToken.None));
    }

    private async Task<string> MeasuredAsync(NewJob order, string record, double millimetres)
    {
        var number = (await _bench.Store.OpenAsync(order, StoreBench.PinionOnly, CancellationToken.None)).Number;
        await _bench.Store.AttachAsync(number, "pinion-runout", Record(record, millimetres), CancellationToken.None);
        return number;
    }

    private static CaptureRecord Record(string id, double millimetres, double minutes = 0)
    {
        var sample = SampleRecords.Complete(id, minutes);
        var figures = ((RunoutFigures)sample.Figures) with { TirMillimetres = millimetres };
        return SampleRecords.Measured(id, figures, sample.Limit, ConformityRule.Decide(figures.Value!.Value, figures.ValueU95!.Value, sample.Limit!.Tolerance).Verdict, minutes);
    }
}

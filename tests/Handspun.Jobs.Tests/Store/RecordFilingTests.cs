using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store;
using Handspun.Jobs.Tests.Records;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Tests.Store;

public sealed class RecordFilingTests : IAsyncLifetime
{
    private const string Point = "pinion-runout";

    private StoreBench _bench = null!;
    private string _job = "";

    public async Task InitializeAsync()
    {
        _bench = await StoreBench.OpenAsync();
        _job = await _bench.JobAsync();
    }

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Fact]
    public async Task Record_WithEverything_ComesBackAsItWas_AlsoFromAFileThatIsOpenedAgain()
    {
        await AttachAsync(SampleRecords.Complete("c1"));
        await AttachAsync(SampleRecords.Incomplete("c2", 1));
        await _bench.ReopenAsync();

        var (job, point, record) = (await _bench.Store.FindRecordAsync("c1", CancellationToken.None))!.Value;
        Assert.Equal((_job, Point), (job.Number, point.Code));
        Assert.Equivalent(SampleRecords.Complete("c1", point: point.Id), record, strict: true);
        Assert.Equivalent(SampleRecords.Incomplete("c2", 1, point.Id), point.Records.Single(r => r.Id == "c2"), strict: true);
    }

    [Fact]
    public async Task Record_InAnyState_IsKeptByName()
    {
        var sample = SampleRecords.Complete("c1");
        List<string> states = [];
        foreach (var ending in Enum.GetValues<CaptureEnding>())
        {
            foreach (var verdict in Enum.GetValues<Verdict>())
            {
                states.Add($"{ending} {verdict}");
                await AttachAsync(new CaptureRecord
                {
                    Id = states[^1],
                    At = sample.At,
                    Seconds = 1,
                    Ending = ending,
                    Status = RecordStatus.Complete,
                    Gauge = sample.Gauge,
                    Figures = sample.Figures with { },
                    Verdict = verdict,
                });
            }
        }

        Assert.Equal(string.Join(",", states), await _bench.AskAsync("SELECT group_concat(Ending || ' ' || Verdict) FROM (SELECT * FROM Records ORDER BY rowid)"));
        Assert.Equal(states.Order(), (await _bench.PointAsync(_job)).Records.Select(record => $"{record.Ending} {record.Verdict}").Order());
    }

    [Fact]
    public async Task Newest_ThatIsComplete_Counts_AndAnIncompleteOneNever()
    {
        await AttachAsync(SampleRecords.Incomplete("early", -1));
        Assert.Null(await CountingAsync());

        await AttachAsync(SampleRecords.Complete("first", 1));
        await AttachAsync(SampleRecords.Complete("second", 2));
        await AttachAsync(SampleRecords.Incomplete("late", 3));
        Assert.Equal("second", (await CountingAsync())?.Id);
        Assert.Equal(["late", "second", "first", "early"], (await _bench.PointAsync(_job)).NewestFirst.Select(record => record.Id));
    }

    [Fact]
    public async Task Record_ThatIsPicked_Counts_UntilANewerOneHasAResult()
    {
        await AttachAsync(SampleRecords.Complete("first", 1));
        await AttachAsync(SampleRecords.Complete("second", 2));
        await PickAsync("first");
        Assert.Equal("first", (await CountingAsync())?.Id);

        await AttachAsync(SampleRecords.Incomplete("third", 3));
        Assert.Equal("first", (await CountingAsync())?.Id);

        await AttachAsync(SampleRecords.Complete("fourth", 4));
        Assert.Equal("fourth", (await CountingAsync())?.Id);
        Assert.Equal(4L, await _bench.AskAsync("SELECT COUNT(*) FROM Records"));
    }

    [Fact]
    public async Task Record_ThatIsThereAlready_IsNotOverwritten()
    {
        await AttachAsync(SampleRecords.Complete("c1"));
        await Assert.ThrowsAnyAsync<Exception>(() => AttachAsync(SampleRecords.Incomplete("c1", 5)));
        var other = await _bench.JobAsync();
        await Assert.ThrowsAnyAsync<Exception>(() => _bench.Store.AttachAsync(other, Point, SampleRecords.Incomplete("c1", 5), CancellationToken.None));

        var point = await _bench.PointAsync(_job);
        Assert.Equivalent(SampleRecords.Complete("c1", point: point.Id), Assert.Single(point.Records), strict: true);
        Assert.Empty((await _bench.PointAsync(other)).Records);
    }

    [Fact]
    public async Task Records_AttachedAtTheSameTime_AreAllThere()
    {
        await Task.WhenAll(Enumerable.Range(0, 12).Select(i => Task.Run(() => AttachAsync(SampleRecords.Complete($"c{i:D2}", i)))));

        var point = await _bench.PointAsync(_job);
        Assert.Equal(12, point.Records.Count);
        Assert.Equal("c11", point.Counting?.Id);
    }

    [Theory]
    [InlineData("c2")]   // it has no result
    [InlineData("elsewhere")]
    [InlineData("nowhere")]
    public async Task Record_ThatCannotCount_IsNotPicked(string record)
    {
        await AttachAsync(SampleRecords.Complete("c1"));
        await AttachAsync(SampleRecords.Incomplete("c2", 1));
        await _bench.Store.AttachAsync(await _bench.JobAsync(), Point, SampleRecords.Complete("elsewhere"), CancellationToken.None);

        var refused = await Assert.ThrowsAsync<JobNotFoundException>(() => PickAsync(record));
        Assert.Equal($"Point '{Point}' of job {_job} has no record '{record}' with a result that could count.", refused.Message);
        Assert.Equal("c1", (await CountingAsync())?.Id);
    }

    [Fact]
    public async Task JobOrPoint_ThatIsNotThere_IsToldByName()
    {
        async Task RefusedAsync(string sentence, Func<JobStore, Task> act) =>
            Assert.Equal(sentence, (await Assert.ThrowsAsync<JobNotFoundException>(() => act(_bench.Store))).Message);

        const string NoJob = "There is no job '2026-0099': open it first, or pick one from the list of jobs.";
        await RefusedAsync(NoJob, store => store.AttachAsync("2026-0099", Point, SampleRecords.Complete("c1"), CancellationToken.None));
        await RefusedAsync(NoJob, store => store.PickAsync("2026-0099", Point, "c1", CancellationToken.None));
        await RefusedAsync(NoJob, store => store.CautionsReadAsync("2026-0099", CancellationToken.None));
        var noPoint = $"Job {_job} has no point 'end-play': the job's page lists its points.";
        await RefusedAsync(noPoint, store => store.AttachAsync(_job, "end-play", SampleRecords.Complete("c1"), CancellationToken.None));
        await RefusedAsync(noPoint, _ => SetLimitAsync("end-play", new("", "0.1 mm", "invented")));
        Assert.Null(await _bench.Store.FindRecordAsync("c1", CancellationToken.None));
    }

    [Fact]
    public async Task Limit_ThatIsSet_IsThePoints_AndRecordsKeepTheirs()
    {
        await AttachAsync(SampleRecords.Complete("c1"));
        await SetLimitAsync(Point, new("0.01 mm", "0.1 mm", "invented manual, page 13"));
        await _bench.ReopenAsync();

        Assert.Equal(new Limit { LowerMillimetres = 0.01, UpperMillimetres = 0.1, Source = "invented manual, page 13" }, (await _bench.PointAsync(_job)).Limit);
        Assert.Equal(SampleRecords.Limit, (await CountingAsync())?.Limit);
    }

    // A limit that decides nothing would let every later capture at the point fail.
    [Theory]
    [InlineData("", "")]
    [InlineData("2 mm", "1 mm")]
    [InlineData("", "1")]
    public async Task Limit_ThatCanDecideNothing_IsNotSet(string lower, string upper)
    {
        await Assert.ThrowsAsync<BookRefusalException>(() => SetLimitAsync(Point, new(lower, upper, "invented")));

        Assert.Equal(0.127, (await _bench.PointAsync(_job)).Limit!.UpperMillimetres!.Value, 1e-12);
    }

    [Fact]
    public async Task Cautions_AreNotedOnce()
    {
        await _bench.Store.CautionsReadAsync(_job, CancellationToken.None);
        var noted = _bench.Time.GetUtcNow();
        _bench.Time.Advance(TimeSpan.FromHours(1));
        await _bench.Store.CautionsReadAsync(_job, CancellationToken.None);

        Assert.Equal(noted, (await _bench.FindAsync(_job)).CautionsReadAt);
    }

    private Task<Job> AttachAsync(CaptureRecord record) => _bench.Store.AttachAsync(_job, Point, record, CancellationToken.None);

    private Task<Job> PickAsync(string record) => _bench.Store.PickAsync(_job, Point, record, CancellationToken.None);

    private async Task<CaptureRecord?> CountingAsync() => (await _bench.PointAsync(_job)).Counting;

    private Task<Job> SetLimitAsync(string point, TypedLimit typed) =>
        _bench.Book.WriteAsync(_job, Subject.Limit(point), new Signature("B. Nobody"), job => LimitActs.Set(job, point, typed), CancellationToken.None);
}

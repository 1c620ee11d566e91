using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Tests.Store;

namespace Handspun.Jobs.Tests.Book;

public sealed class JobBookTests : IAsyncLifetime
{
    private static readonly Signature Nobody = new(" A. Nobody ");

    private StoreBench _bench = null!;
    private string _job = "";

    public async Task InitializeAsync()
    {
        _bench = await StoreBench.OpenAsync();
        _job = (await _bench.Store.OpenAsync(StoreBench.Order, PlannedJob.Plan, CancellationToken.None)).Number;
    }

    public Task DisposeAsync() => _bench.DisposeAsync().AsTask();

    [Fact]
    public async Task Job_KeepsItsOwnCopyOfThePlan_AlsoAfterARestart()
    {
        await _bench.ReopenAsync();

        var job = await _bench.FindAsync(_job);
        Assert.Equal(PlannedJob.Plan.Steps.Select(step => (step.Code, step.Title, step.Kind, step.Gate, step.How)), job.Plan!.Steps.Select(step => (step.Code, step.Title, step.Kind, step.Gate, step.How)));
        Assert.Equal(PlannedJob.Plan.Parts, job.Plan.Parts);
        Assert.Equal(["pinion-runout", "drive-side-runout"], job.InOrder.Select(point => point.Code));
        Assert.Equal((0, null), (job.Version, job.ClosedAt));
    }

    [Fact]
    public async Task EveryDeed_IsAfterARestartAsItWasWritten()
    {
        Deed[] deeds =
        [
            new Ticked("page 12"), new Unticked(null), new Skipped("why"), new TakenUpAgain("after all"),
            new GateDecided(true, "customer knows", "r1", Metrology.Decision.Verdict.Over, "0.0130 in: over"),
            new PhotoAdded("p1.jpg", 4000, 3000, 2_000_000, "ab", null), new PartAdded("Feed rotor", "feed side"),
            new PartFaced("mark up"), new PartDecided(PartChoice.MeasureAgain, "at the limit"),
            new JobClosed(["ready"], "customer took it home"), new JobReopened("came back"),
        ];
        foreach (var deed in deeds)
        {
            await WriteAsync("job", Nobody, deed);
        }

        await _bench.ReopenAsync();

        var book = (await _bench.FindAsync(_job)).Book.ToList();
        Assert.Equal(deeds.Select(BookSentence.Of), book.Select(entry => BookSentence.Of(entry.Deed)));
        Assert.Equal(deeds.Where(deed => deed is not JobClosed), book.Select(entry => entry.Deed).Where(deed => deed is not JobClosed));
        Assert.Equal(Enumerable.Range(1, deeds.Length), book.Select(entry => entry.Number));
        Assert.All(book, entry => Assert.Equal(("A. Nobody", _bench.Time.GetUtcNow()), (entry.By, entry.At)));
    }

    [Fact]
    public async Task Finding_IsAfterARestartAsItWasNoted()
    {
        await _bench.Book.WriteAsync(_job, _ => null, Nobody, job => FindingActs.Note(job, new TypedFinding { Signs = ["wear", "heat"], Words = "“blue”", Place = "return side", Step = "pump", Part = "lifter-front-intake", Choice = "keep", Why = "light" }), CancellationToken.None);
        await _bench.ReopenAsync();

        var job = await _bench.FindAsync(_job);
        var finding = Assert.Single(JobFindings.Of(job));
        Assert.Equal((1, "return side: Wear, Heat marks: “blue”"), (finding.Number, BookSentence.Finding(finding.Noted)));
        Assert.Equal(PartChoice.Keep, JobParts.Of(job)[0].Decision!.Choice);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("  ")]
    public async Task Deed_WithoutAName_IsNotWritten(string? name)
    {
        var refusal = await Assert.ThrowsAsync<BookRefusalException>(() => WriteAsync("job", new Signature(name), new Ticked(null)));

        Assert.Equal("by", refusal.Field);
        Assert.Empty((await _bench.FindAsync(_job)).Entries);
    }

    [Fact]
    public async Task TwoPeople_WritingAboutTheSameThing_TheSecondIsToldWhatTheFirstWrote()
    {
        await WriteAsync("step/ready", new Signature("First", Seen: 0), new Ticked("strapped"));

        var refusal = await Assert.ThrowsAsync<WrittenMeanwhileException>(() => WriteAsync("step/ready", new Signature("Second", Seen: 0), new Skipped("no")));

        Assert.StartsWith("First wrote in this job meanwhile (ticked it: strapped).", refusal.Message, StringComparison.Ordinal);
        Assert.Single((await _bench.FindAsync(_job)).Entries);
    }

    [Fact]
    public async Task TwoPeople_WritingAboutDifferentThings_AreNotInEachOthersWay_UnlessTheyAskToBe()
    {
        await WriteAsync("step/ready", new Signature("First", Seen: 0), new Ticked(null));
        await WriteAsync("step/pump", new Signature("Second", Seen: 0), new Ticked(null));

        await Assert.ThrowsAsync<WrittenMeanwhileException>(() => WriteAsync("step/fasteners", new Signature("Third", Seen: 1, Exact: true), new Ticked(null)));
        Assert.Equal(2, (await _bench.FindAsync(_job)).Version);
    }

    [Fact]
    public async Task ManyPeople_AtOnce_GetNumbersWithoutGaps()
    {
        const int People = 16;
        await Task.WhenAll(Enumerable.Range(0, People).Select(n => Task.Run(() => WriteAsync($"part/p{n}", Nobody, new PartAdded("Part", "")))));

        Assert.Equal(Enumerable.Range(1, People), (await _bench.FindAsync(_job)).Book.Select(entry => entry.Number));
    }

    [Fact]
    public async Task Limit_ThatIsSet_IsThePointsFromThenOn()
    {
        var limit = new Limit { UpperMillimetres = 0.1016, Source = "invented manual, page 7", ConfirmedBy = "A. Nobody", ConfirmedAt = _bench.Time.GetUtcNow(), Drive = CamDrive.Gear, Age = LimitAge.Service };
        await _bench.Book.WriteAsync(_job, Subject.Limit("pinion-runout"), Nobody, job => LimitActs.Confirm(job, "pinion-runout", new("", "0.004 in", "invented manual, page 7", "gear", "service"), "A. Nobody", _bench.Time.GetUtcNow()), CancellationToken.None);
        await _bench.ReopenAsync();

        var job = await _bench.FindAsync(_job);
        Assert.Equal(limit, job.Points.Single(point => point.Code == "pinion-runout").Limit);
        Assert.Equal(new LimitSet(limit, "at most 0.004 in"), job.Book.Single().Deed);
    }

    [Fact]
    public async Task ClosedJob_TakesNothingMore_UntilItIsTakenUpAgain()
    {
        await WriteAsync("job", Nobody, new JobClosed([], null));
        Assert.Equal(_bench.Time.GetUtcNow(), (await _bench.FindAsync(_job)).ClosedAt);

        var refusal = await Assert.ThrowsAsync<HeldBackException>(() => WriteAsync("step/ready", Nobody, new Ticked(null)));
        Assert.Contains("is closed: take it up again first", refusal.Message, StringComparison.Ordinal);

        await WriteAsync("job", Nobody, new JobReopened("came back"));
        await WriteAsync("step/ready", Nobody, new Ticked(null));
        Assert.Null((await _bench.FindAsync(_job)).ClosedAt);
    }

    private Task<Jobs.Orders.Job> WriteAsync(string about, Signature signature, Deed deed) => _bench.Book.WriteAsync(_job, about, signature, _ => deed, CancellationToken.None);
}

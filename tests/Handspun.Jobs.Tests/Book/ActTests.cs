using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Tests.Book;

public sealed class ActTests
{
    private readonly Job _job = PlannedJob.New();

    [Fact]
    public void Tick_OfWhatIsHeldBack_IsRefusedWithWhatItWaitsFor()
    {
        var refusal = Assert.Throws<HeldBackException>(() => StepActs.Tick(_job, "fasteners", null));

        Assert.Equal("Held back until 'Oil pump' is done.", refusal.Message);
    }

    [Fact]
    public void Tick_OfAPoint_IsRefused_BecauseItIsMeasured() =>
        Assert.Contains("measure it", Assert.Throws<HeldBackException>(() => StepActs.Tick(_job, "pinion-runout", null)).Message, StringComparison.Ordinal);

    [Fact]
    public void Tick_Twice_SaysWhoWasFirst()
    {
        _job.Write(Subject.Step("ready"), StepActs.Tick(_job, "ready", "  strapped "));

        Assert.Equal(new Ticked("strapped"), _job.Book.Last().Deed);
        Assert.Contains("A. Nobody ticked 'Machine ready' already", Assert.Throws<HeldBackException>(() => StepActs.Tick(_job, "ready", null)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Untick_OfWhatIsNotTicked_IsRefused() => Assert.Throws<HeldBackException>(() => StepActs.Untick(_job, "ready", null));

    [Fact]
    public void Skip_NeedsAReason_AndNeverPassesAGate()
    {
        Assert.Equal("why", Assert.Throws<BookRefusalException>(() => StepActs.Skip(_job, "fasteners", " ")).Field);
        Assert.Equal(new Skipped("cover stays on"), StepActs.Skip(_job, "drive-side-runout", "cover stays on"));
        Assert.Contains("is a gate and cannot be left out", Assert.Throws<HeldBackException>(() => StepActs.Skip(_job, "pinion-runout", "no time")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Decision_KeepsTheVerdictOfThatMoment()
    {
        _job.Measure("r1", 0.3302, Verdict.Over);

        var deed = StepActs.Decide(_job, "pinion-runout", goOn: true, "customer knows", "r1", _ => "0.0130 in: over");

        Assert.Equal(new GateDecided(true, "customer knows", "r1", Verdict.Over, "0.0130 in: over"), deed);
    }

    [Fact]
    public void Decision_WithoutAReason_IsRefused()
    {
        _job.Measure("r1", 0.3302, Verdict.Over);

        Assert.Equal("why", Assert.Throws<BookRefusalException>(() => StepActs.Decide(_job, "pinion-runout", true, null, "r1", _ => "")).Field);
    }

    [Fact]
    public void Decision_OnARecordThatNoLongerCounts_IsRefused()
    {
        _job.Measure("r1", 0.3302, Verdict.Over);
        _job.Measure("r2", 0.0762, Verdict.Within, minutes: 3);

        Assert.Contains("measured again meanwhile", Assert.Throws<HeldBackException>(() => StepActs.Decide(_job, "pinion-runout", false, "no", "r1", _ => "")).Message, StringComparison.Ordinal);
        Assert.Contains("goes on by itself", Assert.Throws<HeldBackException>(() => StepActs.Decide(_job, "pinion-runout", true, "yes", "r2", _ => "")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Decision_AtAStepThatIsNoGate_IsRefused() =>
        Assert.Contains("is no gate", Assert.Throws<HeldBackException>(() => StepActs.Decide(_job, "ready", true, "yes", null, _ => "")).Message, StringComparison.Ordinal);

    [Fact]
    public void Step_ThatIsNotThere_IsNotFound() => Assert.Throws<JobNotFoundException>(() => StepActs.Tick(_job, "no-such", null));

    [Fact]
    public void Finding_OnAHeldBackStep_IsNoted_AndCanDecideOfAPart()
    {
        var lines = FindingActs.Note(_job, new TypedFinding { Signs = ["scoring"], Words = " deep ", Place = "feed side", Step = "pump", NewPart = "Feed rotor", Choice = "replace" });

        Assert.Equal(["part/feed-rotor-feed-side", "finding/2", "part/feed-rotor-feed-side"], lines.Select(line => line.About));
        Assert.Equal("feed side: Scoring: deep", BookSentence.Finding((FindingNoted)lines[1].Deed));
        Assert.Equal(new PartDecided(PartChoice.Replace, "feed side: Scoring: deep"), lines[2].Deed);   // the finding is the reason
    }

    [Theory]
    [InlineData("words", "", "", "", "")]
    [InlineData("signs", "rust", "", "", "")]
    [InlineData("signs", "as-it-should-be,wear", "", "", "")]
    [InlineData("part", "wear", "", "", "keep")]
    [InlineData("choice", "wear", "", "lifter-front-intake", "throw")]
    public void Finding_ThatSaysNothingOrCannotBe_IsRefusedByField(string field, string signs, string words, string part, string choice)
    {
        var typed = new TypedFinding { Signs = [.. signs.Split(',', StringSplitOptions.RemoveEmptyEntries)], Words = words, Part = part, Choice = choice };

        Assert.Equal(field, Assert.Throws<BookRefusalException>(() => FindingActs.Note(_job, typed)).Field);
    }

    [Fact]
    public void Part_ThatIsAdded_GetsACodeOfItsOwn()
    {
        Assert.Equal("lifter-front-intake-2", PartActs.Add(_job, "Lifter", "front intake").Code);
        Assert.Equal("part", PartActs.Add(_job, "Δ", null).Code);
        Assert.Equal("title", Assert.Throws<BookRefusalException>(() => PartActs.Add(_job, "", null)).Field);
    }

    [Fact]
    public void Part_ShowsHowItSatAndWhatWasDecidedLast()
    {
        _job.Write("part/lifter-front-intake", PartActs.Face(_job, "lifter-front-intake", "oil hole inward"));
        _job.Write("part/lifter-front-intake", PartActs.Decide(_job, "lifter-front-intake", "keep", "rolls well"));
        _job.Write("part/lifter-front-intake", PartActs.Decide(_job, "lifter-front-intake", "replace", "flat spot"));

        var part = Assert.Single(JobParts.Of(_job));
        Assert.Equal(("Lifter, front intake", "oil hole inward", new PartDecided(PartChoice.Replace, "flat spot")), (part.Name, part.FacedInWords, part.Decision));
        Assert.Equal(3, part.Entries.Count);
    }

    [Fact]
    public void Photo_BelongsToSomethingOfTheJob()
    {
        var photo = new PhotoAdded("p1.jpg", 4, 3, 100, "00", " worn ");

        Assert.Equal(photo with { Caption = "worn" }, FindingActs.Photo(_job, "step/pump", photo));
        Assert.Throws<JobNotFoundException>(() => FindingActs.Photo(_job, "finding/9", photo));
    }

    [Fact]
    public void Close_WithStepsLeft_IsRefusedUnlessSomebodySaysWhy()
    {
        var refusal = Assert.Throws<BookRefusalException>(() => JobActs.Close(_job, null));
        Assert.StartsWith("5 things are still open (Machine ready, Pinion shaft runout, ", refusal.Message, StringComparison.Ordinal);

        var closed = Assert.IsType<JobClosed>(JobActs.Close(_job, "customer took it home"));
        Assert.Equal(["ready", "pinion-runout", "pump", "drive-side-runout", "fasteners"], closed.Left);
    }

    [Fact]
    public void Close_OfAJobWithoutAPlan_AsksForItsPoints() =>
        Assert.StartsWith("One thing is still open (Pinion shaft runout)", Assert.Throws<BookRefusalException>(() => JobActs.Close(PlannedJob.WithoutPlan(), null)).Message, StringComparison.Ordinal);
}

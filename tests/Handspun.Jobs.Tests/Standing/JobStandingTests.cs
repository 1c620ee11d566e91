using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Tests.Book;
using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Tests.Standing;

public sealed class JobStandingTests
{
    private readonly Job _job = PlannedJob.New();

    [Fact]
    public void Steps_BeforeAnythingIsDone_WaitForTheFirst()
    {
        Assert.Equal(
            [("ready", StepState.Open), ("pinion-runout", StepState.HeldBack), ("pump", StepState.HeldBack), ("drive-side-runout", StepState.HeldBack), ("fasteners", StepState.HeldBack)],
            Standing.Steps.Select(step => (step.Step.Code, step.State)));
        Assert.Equal("Held back until 'Machine ready' is done.", Standing.Steps[1].WaitsFor);
        Assert.Equal("Held back until 'Pinion shaft runout' is measured.", Standing.Steps[2].WaitsFor);
        Assert.Equal("ready", Standing.Next!.Step.Code);
        Assert.Null(Standing.Stop);
        Assert.Equal(5, Standing.Left.Count());
    }

    [Fact]
    public void Gate_WithinItsLimit_LetsWhatComesAfterBegin()
    {
        _job.Write(Subject.Step("ready"), new Ticked(null));
        _job.Measure("r1", 0.0762, Verdict.Within);

        Assert.Equal([StepState.Done, StepState.Done, StepState.Open, StepState.Open, StepState.HeldBack], Standing.Steps.Select(step => step.State));
        Assert.True(Standing.Steps[1].Gate!.IsOpen);
        Assert.Null(Standing.Stop);
    }

    [Theory]
    [InlineData(0.3302, Verdict.Over, GateReason.Over)]
    [InlineData(0.1275, Verdict.Undecided, GateReason.Undecided)]
    public void Gate_NotWithinItsLimit_HoldsBackUntilSomebodyDecides(double tir, Verdict verdict, GateReason reason)
    {
        _job.Write(Subject.Step("ready"), new Ticked(null));
        _job.Measure("r1", tir, verdict);

        Assert.Equal(reason, Standing.Stop!.Gate!.Reason);
        Assert.Equal([StepState.Done, StepState.Done, StepState.HeldBack, StepState.HeldBack, StepState.HeldBack], Standing.Steps.Select(step => step.State));
        Assert.Contains(Standing.Left, step => step.Step.Code == "pinion-runout");   // measured, but nobody has decided

        _job.Write(Subject.Step("pinion-runout"), new GateDecided(true, "customer knows", "r1", verdict, "…"));
        Assert.Equal(GateReason.GoneOn, Standing.Steps[1].Gate!.Reason);
        Assert.Equal(StepState.Open, Standing.Steps[2].State);
        Assert.Null(Standing.Stop);

        _job.Write(Subject.Step("pinion-runout"), new GateDecided(false, "customer says no", "r1", verdict, "…"));
        Assert.Equal(GateReason.Stopped, Standing.Stop!.Gate!.Reason);
        Assert.StartsWith("Stopped at 'Pinion shaft runout' by A. Nobody", Standing.Steps[2].WaitsFor, StringComparison.Ordinal);
    }

    [Fact]
    public void Decision_IsForTheRecordThatCountedThen()
    {
        _job.Measure("r1", 0.3302, Verdict.Over);
        _job.Write(Subject.Step("pinion-runout"), new GateDecided(true, "customer knows", "r1", Verdict.Over, "…"));
        _job.Measure("r2", 0.3402, Verdict.Over, minutes: 5);

        Assert.Equal(GateReason.Over, Standing.Steps[1].Gate!.Reason);
        Assert.Null(Standing.Steps[1].Gate!.Decision);
    }

    [Fact]
    public void Gate_ThatNobodyMeasured_OpensByADecisionUntilSomebodyDoes()
    {
        _job.Write(Subject.Step("pinion-runout"), new GateDecided(true, "gauge broken", null, null, "Not measured."));
        Assert.Equal(GateReason.GoneOn, Standing.Steps[1].Gate!.Reason);

        _job.Measure("r1", 0.3302, Verdict.Over);
        Assert.Equal(GateReason.Over, Standing.Steps[1].Gate!.Reason);
    }

    [Fact]
    public void Verdict_IsHeldAgainstTheLimitOfToday()
    {
        _job.Measure("r1", 0.1016, Verdict.Within);
        var point = _job.Points[0];
        point.Limit = point.Limit! with { UpperMillimetres = 0.0508, Source = "invented manual, page 9", ConfirmedBy = "A. Nobody" };

        var verdict = StandingVerdict.Of(point);

        Assert.Equal(Verdict.Over, verdict.Verdict);
        Assert.Equal(Verdict.Within, verdict.Record!.Verdict);   // the record keeps its day's
        Assert.False(verdict.OnUnconfirmedLimit);
        Assert.Equal(GateReason.Over, Standing.Steps[1].Gate!.Reason);
    }

    [Fact]
    public void Tick_ThatIsTakenBack_LeavesTheStepOpen_AndBothLinesInTheBook()
    {
        _job.Write(Subject.Step("ready"), new Ticked(null));
        _job.Write(Subject.Step("ready"), new Unticked("battery was still on"));

        Assert.Equal(StepState.Open, Standing.Steps[0].State);
        Assert.Equal(2, Standing.Steps[0].Entries.Count);
    }

    [Fact]
    public void Step_ThatIsLeftOut_IsThrough_AndHoldsNothingBack()
    {
        _job.Write(Subject.Step("ready"), new Skipped("done in another job"));

        Assert.Equal((StepState.Skipped, true), (Standing.Steps[0].State, Standing.Steps[0].IsThrough));
        Assert.Equal(StepState.Open, Standing.Steps[1].State);

        _job.Write(Subject.Step("ready"), new TakenUpAgain(null));
        Assert.Equal(StepState.Open, Standing.Steps[0].State);
    }

    [Fact]
    public void FindingStep_IsDone_WhenSomethingWasNotedOrSomebodyLooked()
    {
        _job.Measure("r1", 0.0762, Verdict.Within);
        _job.Write(Subject.Finding(1), new FindingNoted(["wear"], "", "feed side", "pump", null));

        Assert.Equal(StepState.Done, Standing.Find("pump")!.State);
    }

    [Fact]
    public void Job_WithoutAPlan_HasNoSteps()
    {
        Assert.Empty(JobStanding.Of(PlannedJob.WithoutPlan()).Steps);
    }

    private JobStanding Standing => JobStanding.Of(_job);
}

using Handspun.Bays;
using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Tests.Book;
using Handspun.Metrology.Decision;

namespace Handspun.Tests.Bays;

public sealed class NextPointTests
{
    [Fact]
    public void After_AStepThatIsNoPoint_IsNothing() => Assert.Null(NextPoint.After(Measured(Verdict.Within), "pinion-runout"));

    [Fact]
    public void After_WithAPointNext_IsThatPoint()
    {
        var job = Measured(Verdict.Within);
        job.Write(Subject.Step("pump"), new Ticked(null));

        Assert.Equal("drive-side-runout", NextPoint.After(job, "pinion-runout")?.Code);
    }

    [Theory]
    [InlineData(Verdict.Over)]
    [InlineData(Verdict.Undecided)]
    public void After_AGateThatIsShut_IsNothing(Verdict verdict)
    {
        var job = Measured(verdict);
        job.Write(Subject.Step("pump"), new Ticked(null));

        Assert.Null(NextPoint.After(job, "pinion-runout"));
    }

    [Fact]
    public void After_AJobWithoutAPlan_IsNothing() => Assert.Null(NextPoint.After(PlannedJob.WithoutPlan(), "pinion-runout"));

    [Fact]
    public void After_APointThatIsNotMeasured_IsNothing()
    {
        var job = PlannedJob.New();
        job.Write(Subject.Step("ready"), new Ticked(null));
        job.Write(Subject.Step("pump"), new Ticked(null));

        Assert.Null(NextPoint.After(job, "pinion-runout"));
    }

    private static Job Measured(Verdict verdict)
    {
        var job = PlannedJob.New();
        job.Write(Subject.Step("ready"), new Ticked(null));
        job.Measure("r1", 0.08, verdict);
        return job;
    }
}

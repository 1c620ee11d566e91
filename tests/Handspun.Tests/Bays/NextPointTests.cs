using Handspun.Bays;
using Handspun.Capture.Bays;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
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

    [Theory]
    [InlineData(PointKind.Runout, PointKind.Runout, true)]      // both ends of a shaft
    [InlineData(PointKind.Bore, PointKind.Runout, false)]       // the indicator rests where it was
    [InlineData(PointKind.EndPlay, PointKind.Bore, false)]
    [InlineData(PointKind.Bore, PointKind.Bore, true)]
    public void LedByHand_IsAGaugeThatAnotherOfItsSortWorksBeside(PointKind kind, PointKind beside, bool expected)
    {
        var task = At("first", kind);

        Assert.Equal(expected, NextPoint.IsLedByHand(task, [task, At("second", beside)]));
        Assert.False(NextPoint.IsLedByHand(task, [task]));
    }

    private static BayTask At(string gauge, PointKind kind) =>
        new() { Job = "2026-0001", JobTitle = "", Bike = "", Point = gauge, PointTitle = "", Kind = kind, Wanted = 3, Gauge = GaugeName.Parse(gauge) };

    private static Job Measured(Verdict verdict)
    {
        var job = PlannedJob.New();
        job.Write(Subject.Step("ready"), new Ticked(null));
        job.Measure("r1", 0.08, verdict);
        return job;
    }
}

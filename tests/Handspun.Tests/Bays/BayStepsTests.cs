using System.Net;
using Handspun.Bays;
using Handspun.Capture.Bays;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Points;
using Handspun.Station;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Tests.Bays;

public sealed class BayStepsTests
{
    private static readonly GaugeName Gauge = GaugeName.Parse("pinion");
    private static readonly JobPoint Next = new() { Code = "cam-end-play", Title = "Cam end play", Kind = PointKind.EndPlay };

    private readonly FakeTimeProvider _time = new();

    [Fact]
    public void Step_BeforeItsTime_IsToldAndNotDue_AndThenDueOnce()
    {
        var steps = Steps(TimeSpan.FromSeconds(8));
        steps.Measured(Task("pinion-runout"), Next);

        _time.Advance(TimeSpan.FromSeconds(7.9));
        Assert.Equal("Cam end play", steps.Coming(Task("pinion-runout"))?.PointTitle);
        Assert.Empty(steps.TakeDue());
        _time.Advance(TimeSpan.FromSeconds(0.1));

        Assert.Equal("cam-end-play", Assert.Single(steps.TakeDue()).Point);
        Assert.Empty(steps.TakeDue());
    }

    [Fact]
    public void Step_ThatWasTaken_CanBeTakenBack_UntilTheNewPointIsMeasured()
    {
        var steps = Steps(TimeSpan.FromSeconds(1));
        steps.Measured(Task("pinion-runout"), Next);
        _time.Advance(TimeSpan.FromSeconds(1));
        steps.Taken(Assert.Single(steps.TakeDue()));

        Assert.Equal("pinion-runout", steps.Before(Task("cam-end-play"))?.Point);
        Assert.Null(steps.Before(Task("pinion-runout")));
        steps.Measured(Task("cam-end-play"), null);
        Assert.Null(steps.Before(Task("cam-end-play")));
    }

    [Fact]
    public void Step_WhereSomebodyStays_NeverComes()
    {
        var steps = Steps(TimeSpan.FromSeconds(1));
        steps.Measured(Task("pinion-runout"), Next);
        steps.Stay(Gauge);
        _time.Advance(TimeSpan.FromMinutes(1));

        Assert.Empty(steps.TakeDue());
        Assert.Null(steps.Coming(Task("pinion-runout")));
    }

    [Fact]
    public void Step_WhereTheGaugeWasGivenAnotherPoint_IsNotTold()
    {
        var steps = Steps(TimeSpan.FromSeconds(1));
        steps.Measured(Task("pinion-runout"), Next);

        Assert.Null(steps.Coming(Task("drive-side-runout")));
        Assert.Null(steps.Coming(null));
    }

    [Fact]
    public void Step_ThatIsPutOff_ComesAfterTheSameTimeAgain()
    {
        var steps = Steps(TimeSpan.FromSeconds(8));
        steps.Measured(Task("pinion-runout"), Next);
        _time.Advance(TimeSpan.FromSeconds(8));
        steps.PutOff(Assert.Single(steps.TakeDue()));

        _time.Advance(TimeSpan.FromSeconds(7.9));
        Assert.Empty(steps.TakeDue());
        _time.Advance(TimeSpan.FromSeconds(0.1));
        Assert.Single(steps.TakeDue());
    }

    [Fact]
    public void Step_OfAShopThatWantsNone_NeverComes()
    {
        var steps = Steps(TimeSpan.Zero);
        steps.Measured(Task("pinion-runout"), Next);

        Assert.Empty(steps.TakeDue());
    }

    private static BayTask Task(string point) =>
        new() { Job = "2026-0001", JobTitle = "", Bike = "", Point = point, PointTitle = "", Kind = PointKind.Runout, Wanted = 3, Gauge = Gauge };

    private BaySteps Steps(TimeSpan after)
    {
        var nowhere = new IPEndPoint(IPAddress.Loopback, 0);
        return new(new StationOptions { Data = DataFolder.LookInto("nowhere"), Http = nowhere, Mqtt = nowhere, Gauges = [], Shop = new(ShopFile.Usual with { StepAfter = after }) }, _time);
    }
}

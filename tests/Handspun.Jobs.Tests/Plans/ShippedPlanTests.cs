using Handspun.Jobs.Plans;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Tests.Records;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Tests.Plans;

public sealed class ShippedPlanTests
{
    private static PlanShelf Shelf { get; } = new(PlanShelf.ShippedFolder);

    public static TheoryData<string> Codes => new(Shelf.Codes);

    [Fact]
    public void Shipped_AreTheThreeUsualJobs() => Assert.Equal(["bottom-end", "cam-job", PlanShelf.Usual], Shelf.Codes);

    [Theory]
    [MemberData(nameof(Codes))]
    public void Plan_Holds_AndBeginsWithASafeMachine(string code)
    {
        var plan = Shelf.Find(code);

        Assert.Equal("machine-ready", plan.Steps[0].Code);
        Assert.Equal(StepKind.Check, plan.Steps[0].Kind);
        Assert.All(new[] { "raised", "exhaust", "fuel", "battery" }, danger => Assert.Contains(plan.Steps[0].Cautions, caution => caution.Contains(danger, StringComparison.Ordinal)));
        Assert.Contains(plan.Steps, step => step.Gate);
        Assert.All(plan.Steps.Where(step => step.Limit is not null), step => Assert.False(step.Limit!.Confirmed));
    }

    // Common practice, no source: where each danger is, its caution is.
    [Theory]
    [InlineData("pushrods-free", "Valve springs are under load")]
    [InlineData("pushrods-free", "only when both of that cylinder turn freely")]
    [InlineData("pushrods-free", "Never cut a pushrod with a grinder")]
    [InlineData("cam-drive-off", "by the rear brake with the gearbox in gear")]
    [InlineData("cam-drive-off", "Never use an impact wrench")]
    [InlineData("pinion-runout", "by hand only")]
    [InlineData("magnet", "Hot oil burns")]
    [InlineData("fasteners", "no impact wrench")]
    public void CamJob_CautionsWhereTheStepIs(string step, string caution) =>
        Assert.Contains(Shelf.Find("cam-job").Find(step)!.Cautions, sentence => sentence.Contains(caution, StringComparison.Ordinal));

    [Fact]
    public void CamJob_CutsNoPushrodBeforeBothTurn_AndKeepsFourLifters()
    {
        var plan = Shelf.Find("cam-job");

        Assert.Contains("pushrods-free", plan.Find("timing-marks-before")!.After);
        Assert.Equal(4, plan.Parts.Count(part => part.Title == "Lifter"));
        Assert.All(plan.Parts, part => Assert.NotNull(part.Faces));
    }

    // Common practice, no source: 0.003 in is a good shaft, and 0.013 in is not. The uncertainty is that of a usual gauge.
    [Theory]
    [InlineData("cam-job", 0.003, GateReason.Within)]
    [InlineData("cam-job", 0.013, GateReason.Over)]
    [InlineData("quick-runout", 0.003, GateReason.Within)]
    [InlineData("quick-runout", 0.013, GateReason.Over)]
    public void PinionGate_LetsAGoodShaftPass_AndNotABadOne(string code, double inches, GateReason reason)
    {
        var plan = Shelf.Find(code);
        var step = plan.Find("pinion-runout")!;
        var point = PlanPoints.Of(plan).Single(p => p.Code == step.Point);

        var gate = GateStanding.Of(StandingVerdict.Of(Measured(point, Length.FromInches(inches))), null);

        Assert.Equal((reason, reason == GateReason.Within), (gate.Reason, gate.IsOpen));
        Assert.True(gate.Result.OnUnconfirmedLimit);
        Assert.Equal(reason == GateReason.Over, GateSentence.ToCustomer(step, gate)?.Contains("crank specialist", StringComparison.Ordinal) == true);
    }

    private static JobPoint Measured(MeasuringPoint point, Length tir)
    {
        var (uncertainty, limit) = (Length.FromInches(0.0003), point.ShippedLimit!);
        return new JobPoint
        {
            Code = point.Code,
            Title = point.Title,
            Kind = point.Kind,
            Limit = limit,
            Records =
            [
                SampleRecords.Measured("r1", new RunoutFigures { TirMillimetres = tir.Millimetres, TirU95Millimetres = uncertainty.Millimetres }, limit, ConformityRule.Decide(tir, uncertainty, limit.Tolerance).Verdict),
            ],
        };
    }
}

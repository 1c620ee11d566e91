using Handspun.Capture.Methods;
using Handspun.Capture.Methods.EndPlay;
using Handspun.Jobs.Records;
using Handspun.Metrology.EndPlay;
using Handspun.Metrology.Quantities;

namespace Handspun.Capture.Tests.Methods.EndPlay;

public sealed class EndPlayFindingTests
{
    private static readonly CaptureSoFar SoFar = new(Wanted: 3);

    [Fact]
    public void Figures_OfAMeasuredEndPlay_KeepEveryCycleAndWhatWasLeftOut()
    {
        var figures = (EndPlayFigures)new EndPlayFinding(Measured with { Holds = [.. Measured.Holds, Hold(Stop.Low, false)] }, default).Figures;

        Assert.Equal((0.12, 0.002, 3, 0.0015, 1, 2), (figures.EndPlayMillimetres, figures.EndPlayU95Millimetres, figures.Cycles, figures.SpreadMillimetres, figures.HoldsLeftOut, figures.Rejected));
        Assert.Equal([0.1193, 0.1208, 0.12], figures.ByCycleMillimetres!);
    }

    [Fact]
    public void Headline_OfAFinding_IsWhatItsFiguresHoldAgainstTheLimit()
    {
        var finding = new EndPlayFinding(Measured, default);

        Assert.Equal((finding.Figures.Value, finding.Figures.ValueU95), finding.Headline);
    }

    [Theory]
    [InlineData(0.2, false)]   // the last stop is not held for long yet
    [InlineData(0.6, true)]
    [InlineData(0, true)]   // it was held, and the hand has left it
    public void Finding_WithAsManyCyclesAsWanted_IsEnoughOnceTheLastStopWasHeld(double held, bool enough) =>
        Assert.Equal(enough, new EndPlayFinding(Measured, held == 0 ? default : new HeldNow(Stop.High, held)).IsEnough(3));

    [Fact]
    public void Advice_ToAHand_FollowsWhatItDoes()
    {
        Assert.Equal("Push the shaft to its stop and hold it there for half a second.", new EndPlayFinding(Measured with { Holds = [] }, default).Advice(SoFar));
        Assert.Equal("Hold it there. 3 of 3 cycles.", new EndPlayFinding(Measured, new HeldNow(Stop.Low, 0.3)).Advice(SoFar));
        Assert.StartsWith("Now the other way", new EndPlayFinding(Measured, new HeldNow(Stop.Low, 0.7)).Advice(SoFar), StringComparison.Ordinal);
        Assert.StartsWith("On to the stop", new EndPlayFinding(Measured, default).Advice(SoFar), StringComparison.Ordinal);
    }

    [Fact]
    public void Warnings_OfARunningCapture_LeaveOutWhatOnlyTimeCanBring()
    {
        var finding = new EndPlayFinding(Measured with { Warnings = [EndPlayWarning.FewCycles, EndPlayWarning.ShortHolds] }, default);

        Assert.Equal("short-holds", Assert.Single(finding.LiveWarnings(SoFar)).Code);
        Assert.Equal(2, finding.Warnings.Count());
    }

    private static EndPlayResult Measured { get; } = new()
    {
        Status = EndPlayStatus.Measured,
        Readings = 400,
        Cycles = 3,
        EndPlay = Length.FromMillimetres(0.12),
        EndPlayU95 = Length.FromMillimetres(0.002),
        Spread = Length.FromMillimetres(0.0015),
        ByCycleMillimetres = [0.1193, 0.1208, 0.12],
        Holds = [Hold(Stop.Low, true), Hold(Stop.High, true)],
        Knocks = [3, 90],
    };

    private static HeldStop Hold(Stop stop, bool counts) => new(stop, 10, 40, 30, 0.5, stop == Stop.Low ? 0 : 0.12, counts);
}

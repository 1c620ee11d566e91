using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.Runout;

public class RunoutOutlookTests
{
    // 1 − cos(π/N) for even N: 0.03407 at 12 readings a turn, 0.000952 at 72 (worked out again by scanning the phase of a sampled sine).
    [Theory]
    [InlineData(24, 0.0034074173710931604)]
    [InlineData(144, 0.00009517784181420902)]
    public void HiddenPeak_OfTwoTurns_IsTheShareOfTheMovementBetweenReadings(int readings, double hidden)
    {
        var outlook = RunoutOutlook.Of(Seen(turns: 2, perSecond: 0.5) with { Readings = readings, Tir = Length.FromMillimetres(0.1) }, 50, 3);

        Assert.Equal(hidden, outlook.HiddenPeak!.Value.Millimetres, 1e-12);
    }

    [Fact]
    public void Outlook_BeforeTheFirstTurn_KnowsNoHiddenPeakAndTheTimeToGo()
    {
        var outlook = RunoutOutlook.Of(Seen(turns: 0.5, perSecond: 0.5), readingsPerSecond: 100, turnsWanted: 3);

        Assert.Null(outlook.HiddenPeak);
        Assert.Equal(200, outlook.ReadingsPerTurn);
        Assert.Equal(5, outlook.SecondsToGo);
        Assert.Equal(0.12, outlook.LeastSecondsPerTurn!.Value, 1e-12);
        Assert.Empty(outlook.Warnings);
    }

    [Theory]
    [InlineData(10, 0.84, true)]    // 11.9 readings a turn
    [InlineData(10, 0.83, false)]   // 12.05
    [InlineData(10, 1.5, true)]
    [InlineData(100, 1.5, false)]
    [InlineData(0, 1.5, false)]
    public void Speed_ThatLeavesFewerThanTwelveReadingsATurn_IsTooFast(double readingsPerSecond, double turnsPerSecond, bool tooFast)
    {
        var outlook = RunoutOutlook.Of(Seen(turns: 1, turnsPerSecond), readingsPerSecond, turnsWanted: 3);

        Assert.Equal(tooFast, outlook.IsTooFast);
    }

    [Fact]
    public void Shaft_ThatStands_HasNoTimeToGoUntilItHasEnough()
    {
        Assert.Null(RunoutOutlook.Of(Seen(turns: 1, perSecond: 0), 50, 3).SecondsToGo);
        Assert.Equal(0, RunoutOutlook.Of(Seen(turns: 3.1, perSecond: 0), 50, 3).SecondsToGo);
    }

    [Fact]
    public void Warnings_WhileItTurns_LeaveOutThatTurnsAreStillMissing()
    {
        var seen = Seen(turns: 1.5, perSecond: 1.2) with { Warnings = [RunoutWarning.FewTurns, RunoutWarning.NoReference] };

        Assert.Equal([RunoutWarning.TurningTooFast, RunoutWarning.NoReference], RunoutOutlook.Of(seen, readingsPerSecond: 10, turnsWanted: 3).Warnings);
    }

    private static RunoutResult Seen(double turns, double perSecond) =>
        new() { Status = RunoutStatus.TooShort, Readings = 50, Turns = turns, TurnsPerSecond = perSecond };
}

using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;
using Handspun.Simulation.Cams;

namespace Handspun.Metrology.Tests.Lift;

/// <summary>Lobes whose every angle follows from a formula.</summary>
public class ClosedFormTests
{
    public static TheoryData<FlankLaw, double, double> Durations()
    {
        var data = new TheoryData<FlankLaw, double, double>();
        foreach (var (lift, harmonic, cycloidal) in ConstructedLobe.Rows())
        {
            data.Add(FlankLaw.Harmonic, lift, harmonic);
            data.Add(FlankLaw.Cycloidal, lift, cycloidal);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Durations))]
    public void CamLobe_AtACheckingLift_IsOpenAsLongAsTheClosedFormSays(FlankLaw law, double checkingLift, double crankDegrees)
    {
        var lobe = ConstructedLobe.Of(law);

        Assert.Equal(crankDegrees, 2 * (lobe.ClosesAt(checkingLift) - lobe.OpensAt(checkingLift)), 1e-9);
    }

    [Theory]
    [MemberData(nameof(Durations))]
    public void LiftMethod_OnAConstructedLobe_FindsLiftCentrelineAndDuration(FlankLaw law, double checkingLift, double crankDegrees)
    {
        var settings = new LiftSettings { AngleOf = AngleShaft.Crank, CheckingLift = Length.FromMillimetres(checkingLift) };

        var result = LiftCaptures.Measure(LiftCaptures.Exact(ConstructedLobe.Of(law)), settings);

        Assert.Equal(LiftStatus.Measured, result.Status);
        Assert.Equal(9, result.LobeLift!.Value.Value.Millimetres, 0.002);
        Assert.Equal(106, result.Centreline!.Value.Value.AtCrank().Degrees, 0.1);
        // Low on the harmonic flank the series rounds off the corner where the lobe leaves its base circle.
        Assert.Equal(crankDegrees, result.Duration!.Value.Value.AtCrank().Degrees, checkingLift < 1 ? 0.4 : 0.2);
        Assert.InRange(Math.Abs(crankDegrees - result.Duration.Value.Value.AtCrank().Degrees), 0, Math.Max(checkingLift < 1 ? 0.3 : 0.12, result.Duration.Value.U95.AtCrank().Degrees));
    }

    [Fact]
    public void LiftMethod_OnALobeThatClosesSlower_PutsTheCentrelineMidwayAndSaysSo()
    {
        var lobe = new CamLobe { Law = FlankLaw.Harmonic, LiftMillimetres = 9, CentrelineDegrees = 200, OpeningDegrees = 60, ClosingDegrees = 80 };

        // 9/2·(1 + cos(π d/w)) = 9 − 1.27 gives d = w/π·acos(1 − 2·1.27/9) on each flank.
        var share = Math.Acos(1 - 2 * 1.27 / 9) / Math.PI;
        var middle = 200 + (80 - 60) * share / 2;

        var result = LiftCaptures.Measure(LiftCaptures.Exact(lobe));

        Assert.Equal(middle, result.Centreline!.Value.Value.Degrees, 0.05);
        Assert.Contains(LiftWarning.LopsidedLobe, result.Warnings);
    }

    [Fact]
    public void LiftMethod_OnACamOffCentre_TakesTheRunoutOutOfTheLiftAndReportsIt()
    {
        var lobe = ConstructedLobe.Of(FlankLaw.Cycloidal) with { BaseRunoutMillimetres = 0.06, BaseHighDegrees = 53 + 90 };

        var result = LiftCaptures.Measure(LiftCaptures.Exact(lobe));

        // Highest square to the nose: over the 144° opposite it the circle moves 0.03·(sin 72° + sin 72°).
        Assert.Equal(0.06 * Math.Sin(72 * Math.PI / 180), result.BaseCircleRunout!.Value.Value.Millimetres, 0.001);
        Assert.Equal(9, result.LobeLift!.Value.Value.Millimetres, 0.003);
        Assert.Contains(LiftWarning.BaseCircleRunsOut, result.Warnings);
    }

    [Fact]
    public void LiftMethod_WithARockerRatio_MultipliesTheLiftAndAddsTheDoubts()
    {
        var settings = new LiftSettings { AngleOf = AngleShaft.Crank, RockerRatio = 1.6, RockerRatioU95 = 0.02 };

        var result = LiftCaptures.Measure(LiftCaptures.Exact(ConstructedLobe.Of(FlankLaw.Cycloidal)), settings);

        var lobe = result.LobeLift!.Value;
        Assert.Equal(1.6 * lobe.Value.Millimetres, result.ValveLift!.Value.Value.Millimetres, 1e-12);
        Assert.Equal(
            Math.Sqrt(Math.Pow(1.6 * lobe.U95.Millimetres, 2) + Math.Pow(0.02 * lobe.Value.Millimetres, 2)),
            result.ValveLift.Value.U95.Millimetres,
            1e-12);
    }

    [Fact]
    public void LiftMethod_OnALobeThatRestsAtTheTop_FindsItsMiddle()
    {
        var lobe = ConstructedLobe.Of(FlankLaw.Polynomial) with { NoseDegrees = 12 };

        var result = LiftCaptures.Measure(LiftCaptures.Exact(lobe));

        Assert.Equal(106, result.Centreline!.Value.Value.AtCrank().Degrees, 0.1);
        Assert.Equal(2 * (lobe.ClosesAt(1.27) - lobe.OpensAt(1.27)), result.Duration!.Value.Value.AtCrank().Degrees, 0.15);
    }
}

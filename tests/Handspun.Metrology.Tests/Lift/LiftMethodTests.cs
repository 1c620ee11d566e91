using Handspun.Accuracy;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Tests.Runout;
using Handspun.Simulation;
using Handspun.Simulation.Cams;

namespace Handspun.Metrology.Tests.Lift;

public class LiftMethodTests
{
    private static readonly CamLobe Lobe = new() { LiftMillimetres = 8.5, CentrelineDegrees = 140, OpeningDegrees = 72, ClosingDegrees = 74 };

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void LiftMethod_OnAnUnevenHandWithAToothedDisc_IsWithinItsUncertainty(int seed)
    {
        var drawn = LiftCaptures.ByHand(Lobe, seed);

        var result = LiftCaptures.Measure(drawn.ToCapture(1.0 / 36));

        Assert.Equal(LiftStatus.Measured, result.Status);
        Assert.Equal(8.5, result.LobeLift!.Value.Value.Millimetres, 0.01);
        Assert.Equal(0, LiftCaptures.OffAtCrank(result.Centreline!.Value.Value, Lobe.MiddleBelow(1.27) - drawn.ZeroDegrees / 2), 0.5);
        Assert.True(result.Opening!.Value.Value.Degrees < result.Centreline.Value.Value.Degrees);
        Assert.True(result.Closing!.Value.Value.Degrees > result.Centreline.Value.Value.Degrees);
        Assert.Equal(drawn.Seconds.Length, result.AngleDegrees.Count);
        Assert.Equal(360, result.CurveMillimetres.Count);
    }

    [Fact]
    public void LiftMethod_WhereNobodySaysOfWhichShaftTheAngleIs_TellsItFromTheLobe()
    {
        var crank = LiftCaptures.ByHand(Lobe, 4).ToCapture(1.0 / 36);
        var cam = crank with { TurnsPerIndex = 1.0 / 72 };

        var ofCrank = LiftCaptures.Measure(crank, new LiftSettings());
        var ofCam = LiftCaptures.Measure(cam, new LiftSettings());

        Assert.Equal(AngleShaft.Crank, ofCrank.AngleOf);
        Assert.Equal(AngleShaft.Cam, ofCam.AngleOf);
        Assert.Equal(ofCrank.Duration!.Value.Value.Degrees, ofCam.Duration!.Value.Value.Degrees, 0.1);
    }

    [Theory]
    [InlineData(AngleShaft.Crank, 1.0 / 72)]
    [InlineData(AngleShaft.Cam, 1.0 / 36)]
    public void LiftMethod_WhereTheLobeContradictsTheShaftThatWasSaid_RejectsAndSaysWhich(AngleShaft said, double turnsPerIndex)
    {
        var result = LiftCaptures.Measure(LiftCaptures.ByHand(Lobe, 4).ToCapture(turnsPerIndex), new LiftSettings { AngleOf = said });

        Assert.Equal(LiftStatus.Rejected, result.Status);
        Assert.Contains("correct the setting", result.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void LiftMethod_WithoutAnyAngle_SaysWhatToFit()
    {
        var result = LiftCaptures.Measure(LiftCaptures.ByHand(Lobe, 1, AngleAid.None).ToCapture());

        Assert.Equal(LiftStatus.NoAngle, result.Status);
        Assert.Null(result.Centreline);
        Assert.Contains("index", result.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void LiftMethod_OnLessThanATurnOfTheCam_AsksForMore()
    {
        var result = LiftCaptures.Measure(LiftCaptures.ByHand(Lobe, 1, crankTurns: 1.4).ToCapture(1.0 / 36));

        Assert.Equal(LiftStatus.TooShort, result.Status);
        Assert.Equal(0.7, result.CamTurns, 0.03);
        Assert.Contains("two of the crank", result.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void LiftMethod_OnAShaftWithoutARest_FindsNoBaseCircle()
    {
        var eccentric = new CamLobe { Law = FlankLaw.Harmonic, LiftMillimetres = 8, OpeningDegrees = 180, ClosingDegrees = 180 };

        var result = LiftCaptures.Measure(LiftCaptures.Exact(eccentric));

        Assert.Equal(LiftStatus.NoBaseCircle, result.Status);
        Assert.Contains("base circle", result.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void LiftMethod_WhereTheLobeStaysBelowTheCheckingLift_KeepsTheLiftAndSaysSo()
    {
        var low = Lobe with { LiftMillimetres = 1.1 };

        var result = LiftCaptures.Measure(LiftCaptures.Exact(low));

        Assert.Equal(LiftStatus.NotOpened, result.Status);
        Assert.Equal(1.1, result.LobeLift!.Value.Value.Millimetres, 0.002);
        Assert.Contains("checking lift", result.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void LiftMethod_OnReadingsThatDoNotMove_AsksToTurn()
    {
        var result = LiftCaptures.Measure(Captures.Of(300, 10, _ => 1.25));

        Assert.Equal(LiftStatus.TooShort, result.Status);
        Assert.Contains("do not move", result.Missing, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, null)]
    [InlineData(1.27, 0.0)]
    [InlineData(1.27, 16.0)]
    [InlineData(1.27, double.NaN)]
    public void LiftMethod_AskedWhatCannotBe_SaysWhatToCorrect(double checkingLift, double? ratio)
    {
        var settings = new LiftSettings { CheckingLift = Length.FromMillimetres(checkingLift), RockerRatio = ratio };

        var result = LiftCaptures.Measure(LiftCaptures.ByHand(Lobe, 1).ToCapture(1.0 / 36), settings);

        Assert.Equal(LiftStatus.Rejected, result.Status);
        Assert.NotNull(result.Missing);
    }

    [Fact]
    public void LiftMethod_OnDamagedContents_RejectsAsARunoutDoes()
    {
        var good = LiftCaptures.ByHand(Lobe, 1).ToCapture(1.0 / 36);

        var result = LiftCaptures.Measure(good with { Seconds = good.Seconds[1..] });

        Assert.Equal(LiftStatus.Rejected, result.Status);
        Assert.Contains("capture again", result.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void LiftMethod_WithOnePulseATurn_KnowsTheLiftAndOwnsUpToTheAngle()
    {
        var drawn = LiftCaptures.ByHand(Lobe, 2, AngleAid.IndexEachTurn, crankTurns: 8);

        var result = LiftCaptures.Measure(drawn.ToCapture());

        Assert.Contains(LiftWarning.AngleSeldomTold, result.Warnings);
        var off = LiftCaptures.OffAtCrank(result.Centreline!.Value.Value, Lobe.MiddleBelow(1.27) - drawn.ZeroDegrees / 2);
        Assert.True(Math.Abs(off) < result.Centreline.Value.U95.AtCrank().Degrees);
        Assert.True(result.Centreline.Value.U95.AtCrank().Degrees > 10);
    }

    [Fact]
    public void LiftWarningText_OfEveryWarning_HasACodeAndASentence()
    {
        foreach (var warning in Enum.GetValues<LiftWarning>())
        {
            Assert.Matches("^[a-z-]+$", LiftWarningText.Code(warning));
            Assert.EndsWith(".", LiftWarningText.Sentence(warning), StringComparison.Ordinal);
        }
    }
}

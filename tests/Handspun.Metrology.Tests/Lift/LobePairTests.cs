using Handspun.Metrology.Decision;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.Lift;

/// <summary>Two symmetric lobes whose every angle is arithmetic: durations 240 and 244, centrelines 108 after and 112 before the top, degrees of the crank.</summary>
public class LobePairTests
{
    private const double Top = 37;
    private static readonly Measured<CrankAngle> TopCentre = new(CrankAngle.FromDegrees(Top), CrankAngle.FromDegrees(0.4));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(360, 0)]
    [InlineData(0, 360)]
    public void LobePair_WhicheverTurnOfTheCrankTheReferenceMeant_HasTheSameAngles(double intakeTurn, double exhaustTurn)
    {
        var pair = LobePair.Of(Lobe(Top + 108 + intakeTurn, 240), Lobe(Top - 112 + exhaustTurn, 244), TopCentre);

        Assert.Equal(110, pair.Separation.Value.Degrees, 1e-9);
        Assert.Equal(108, pair.IntakeCentreline!.Value.Value.Degrees, 1e-9);
        Assert.Equal(112, pair.ExhaustCentreline!.Value.Value.Degrees, 1e-9);
        Assert.Equal(120 - 108, pair.IntakeOpens!.Value.Value.Degrees, 1e-9);
        Assert.Equal(108 + 120 - 180, pair.IntakeCloses!.Value.Value.Degrees, 1e-9);
        Assert.Equal(112 + 122 - 180, pair.ExhaustOpens!.Value.Value.Degrees, 1e-9);
        Assert.Equal(122 - 112, pair.ExhaustCloses!.Value.Value.Degrees, 1e-9);
        Assert.Equal(12 + 10, pair.Overlap.Value.Degrees, 1e-9);
    }

    [Fact]
    public void LobePair_OfTwoDoubts_AddsTheirSquares()
    {
        var pair = LobePair.Of(Lobe(Top + 108, 240), Lobe(Top - 112, 244), TopCentre);

        Assert.Equal(Math.Sqrt(2) * 0.6, pair.Overlap.U95.Degrees, 1e-9);   // of the crank, each 0.6
        Assert.Equal(Math.Sqrt(2) * 0.6 / 2, pair.Separation.U95.Degrees, 1e-9);   // of the cam
        Assert.Equal(Math.Sqrt(0.6 * 0.6 + 0.4 * 0.4), pair.IntakeCentreline!.Value.U95.Degrees, 1e-9);
    }

    [Fact]
    public void LobePair_WithoutTopDeadCentre_KnowsSeparationAndOverlapOnly()
    {
        var pair = LobePair.Of(Lobe(150, 240), Lobe(290, 244), null);

        Assert.Equal(110, pair.Separation.Value.Degrees, 1e-9);
        Assert.Equal(22, pair.Overlap.Value.Degrees, 1e-9);
        Assert.Null(pair.IntakeCentreline);
    }

    [Fact]
    public void LobePair_OfLobesFromDifferentReferences_IsRefusedInASentence()
    {
        var other = Lobe(290, 244) with { Reference = AngleReference.Mark };

        Assert.Contains("different references", LobePair.Fault(Lobe(150, 240), other), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => LobePair.Of(Lobe(150, 240), other, null));
        Assert.Contains("not measured", LobePair.Fault(Lobe(150, 240) with { Status = LiftStatus.NoAngle }, other), StringComparison.Ordinal);
        Assert.Contains("checking lifts", LobePair.Fault(Lobe(150, 240), Lobe(290, 244) with { CheckingLift = Length.FromMillimetres(1) }), StringComparison.Ordinal);
    }

    [Fact]
    public void CardComparison_OfEachLine_SaysTheDifferenceAndJudgesItWithItsDoubt()
    {
        var card = new CamCard
        {
            CheckingLift = LiftSettings.UsualCheckingLift,
            IntakeOpens = CrankAngle.FromDegrees(12),
            IntakeDuration = CrankAngle.FromDegrees(244.5),
            ExhaustCentreline = CrankAngle.FromDegrees(110.2),
            LobeSeparation = CamAngle.FromDegrees(110),
        };

        var lines = CardComparison.Of(card, Lobe(Top + 108, 240), Lobe(Top - 112, 244), TopCentre, CrankAngle.FromDegrees(2));

        Assert.Equal(
            [(false, 0, Verdict.Within), (false, -4.5, Verdict.Over), (false, 1.8, Verdict.Undecided), (true, 0, Verdict.Within)],
            lines.Select(line => (line.OfCam, Math.Round(line.Degrees, 6), line.Verdict)));
        Assert.Contains("of the cam", lines[3].Sentence, StringComparison.Ordinal);
        Assert.Contains("4.5° less", lines[1].Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void CardComparison_AtAnotherCheckingLift_AsksToMeasureAtTheCards()
    {
        var card = new CamCard { CheckingLift = Length.FromMillimetres(1) };

        Assert.Contains("card's checking lift", CardComparison.Fault(card, Lobe(145, 240), Lobe(285, 244)), StringComparison.Ordinal);
    }

    [Fact]
    public void CrankAngle_OfACamAngle_IsExactlyTwice()
    {
        Assert.Equal(106.5, CamAngle.FromDegrees(53.25).AtCrank().Degrees);
        Assert.Equal(53.25, CrankAngle.FromDegrees(106.5).AtCam().Degrees);
        Assert.Equal(-170, CrankAngle.FromDegrees(190).ShortWay().Degrees);
        Assert.Equal(350, CamAngle.FromDegrees(-10).WithinTurn().Degrees);
        Assert.Throws<ArgumentOutOfRangeException>(() => CrankAngle.FromDegrees(double.NaN));
    }

    private static LiftResult Lobe(double crankCentreline, double crankDuration)
    {
        Measured<CamAngle> At(double crankDegrees) => new(CrankAngle.FromDegrees(crankDegrees).AtCam(), CamAngle.FromDegrees(0.3));
        return new()
        {
            Status = LiftStatus.Measured,
            Readings = 1000,
            AngleOf = AngleShaft.Crank,
            Reference = AngleReference.Index,
            CheckingLift = LiftSettings.UsualCheckingLift,
            Centreline = At(crankCentreline),
            Opening = At(crankCentreline - crankDuration / 2),
            Closing = At(crankCentreline + crankDuration / 2),
            Duration = At(crankDuration),
        };
    }
}

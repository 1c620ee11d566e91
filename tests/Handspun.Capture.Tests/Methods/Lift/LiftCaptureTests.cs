using Handspun.Capture.Methods;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Tests.Methods.Lift;

public sealed class LiftCaptureTests
{
    private static readonly ICaptureMethod Method = CaptureMethods.For(PointKind.LiftCurve);
    private static readonly LiftSetup Disc = new() { PulsesPerTurn = 36, MissingTooth = true, AngleOf = "crank", RockerRatio = 1.6, RockerRatioU95 = 0.02 };

    // Wherever the crank stands when the capture begins, the centreline is that of the lobe, from the tooth after the gap.
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.4)]
    [InlineData(1.83)]
    public void Disc_WithAToothMissing_TellsTheSameZeroInEveryCapture(double fromTurns)
    {
        var finding = Measure(TurnedCam.Of(fromTurns, 36, missing: true), Disc);

        Assert.True(finding.IsMeasured, finding.Missing);
        var figures = (LiftFigures)finding.Figures;
        Assert.True(figures.ZeroTold);
        Assert.Equal("index", figures.AngleReference);
        Assert.Equal(0, Math.IEEERemainder(figures.CentrelineCrankDegrees!.Value - 2 * TurnedCam.CentreDegrees, 360), figures.CentrelineCrankU95Degrees!.Value + 0.3);
        Assert.Equal(9, figures.LobeLiftMillimetres!.Value, figures.LobeLiftU95Millimetres!.Value);
        Assert.DoesNotContain(finding.Warnings, warning => warning.Code is "zero-not-told" or "no-rocker-ratio");
    }

    // A sensor that misses a tooth now and then, or sees one twice, moves all the pulses after it by one.
    [Theory]
    [InlineData(12, new[] { 20 }, new int[0])]
    [InlineData(12, new[] { 5, 6, 31 }, new[] { 17 })]
    [InlineData(36, new[] { 40, 90 }, new[] { 60 })]
    [InlineData(12, new int[0], new[] { 0, 12, 25 })]
    public void Disc_WhosePulsesWereLostOrCameTwice_StillTellsZero(int teeth, int[] lost, int[] twice)
    {
        var whole = TurnedCam.Of(0.4, teeth, missing: true);
        var told = whole.IndexSeconds.ToArray();
        List<double> heard = [.. told.Where((_, i) => !lost.Contains(i)), .. twice.Select(i => told[i] + 0.004)];
        heard.Sort();

        var finding = Measure(whole with { IndexSeconds = heard.ToArray() }, Disc with { PulsesPerTurn = teeth });

        var figures = (LiftFigures)finding.Figures;
        Assert.True(figures.ZeroTold, finding.Missing);
        Assert.Equal(0, Math.IEEERemainder(figures.CentrelineCrankDegrees!.Value - 2 * TurnedCam.CentreDegrees, 360), figures.CentrelineCrankU95Degrees!.Value + 0.3);
    }

    // Eight teeth are the fewest that a setup takes.
    [Fact]
    public void Disc_OfFewTeeth_TellsZero()
    {
        var figures = (LiftFigures)Measure(TurnedCam.Of(0.4, 8, missing: true), Disc with { PulsesPerTurn = 8 }).Figures;

        Assert.True(figures.ZeroTold);
        Assert.Equal(0, Math.IEEERemainder(figures.CentrelineCrankDegrees!.Value - 2 * TurnedCam.CentreDegrees, 360), figures.CentrelineCrankU95Degrees!.Value + 0.5);
    }

    [Fact]
    public void Disc_WithAllItsTeeth_SaysThatNothingTellsZero()
    {
        var finding = Measure(TurnedCam.Of(0.4, 36), Disc with { MissingTooth = false });

        Assert.False(((LiftFigures)finding.Figures).ZeroTold);
        Assert.Contains(finding.Warnings, warning => warning.Code == "zero-not-told");
    }

    [Fact]
    public void Disc_SaidToMissATooth_ThatHasAllOfThem_SaysThatNothingTellsZero() => Assert.False(((LiftFigures)Measure(TurnedCam.Of(0.4, 36), Disc).Figures).ZeroTold);

    [Fact]
    public void Disc_WithAllItsTeethAndCalls_CountsFromTheCalls()
    {
        var finding = Measure(TurnedCam.Of(0.4, 36, marks: true), Disc with { MissingTooth = false });

        var figures = (LiftFigures)finding.Figures;
        Assert.True(figures.ZeroTold);
        Assert.Equal("mark", figures.AngleReference);
        Assert.Equal(0, Math.IEEERemainder(figures.CentrelineCrankDegrees!.Value - 2 * TurnedCam.CentreDegrees, 360), 0.2);   // these calls are exact
        Assert.True(figures.CentrelineCrankU95Degrees > 2, "a call is a twentieth of a second off, and the crank moves seven degrees in it");
    }

    [Fact]
    public void ValveLift_IsTheLobesTimesTheRatio_WithBothDoubts()
    {
        var figures = (LiftFigures)Measure(TurnedCam.Of(0.05, 36, missing: true), Disc).Figures;

        var (lobe, doubt) = (figures.LobeLiftMillimetres!.Value, figures.LobeLiftU95Millimetres!.Value);
        Assert.Equal(1.6 * lobe, figures.ValveLiftMillimetres!.Value, 1e-9);
        Assert.Equal(Math.Sqrt(Math.Pow(1.6 * doubt, 2) + Math.Pow(0.02 * lobe, 2)), figures.ValveLiftU95Millimetres!.Value, 1e-9);   // JCGM 100:2008, 5.1.2
    }

    [Fact]
    public void Lift_WithoutARockerRatio_IsTheLobesAndSaysSo()
    {
        var finding = Measure(TurnedCam.Of(0.05, 36, missing: true), Disc with { RockerRatio = null });

        Assert.Null(((LiftFigures)finding.Figures).ValveLiftMillimetres);
        Assert.Contains(finding.Warnings, warning => warning.Code == "no-rocker-ratio");
    }

    [Fact]
    public void Lift_WithoutAnyAngle_SaysWhatToFit()
    {
        var finding = Measure(TurnedCam.Of(0, 0), null);

        Assert.False(finding.IsMeasured);
        Assert.False(finding.IsOnlyTouch);
        Assert.Contains("call the mark", finding.Missing, StringComparison.Ordinal);
        Assert.Null(finding.Figures.Value);
    }

    [Fact]
    public void Look_AtACaptureThatGoesOn_SaysTheSameAsTheWholeWhenItEnds()
    {
        var capture = TurnedCam.Of(0.05, 36, missing: true);
        var look = Method.Follow(TurnedCam.Gauge, new MethodWish(2, Disc));

        var early = look(First(capture, 60));
        var late = look(capture);

        Assert.False(early.IsMeasured);
        Assert.Contains("of 2 turns of the cam", early.Advice(new CaptureSoFar(2)), StringComparison.Ordinal);
        Assert.True(late.IsEnough(2));
        Assert.Equal(Measure(capture, Disc).Headline, late.Headline);
    }

    [Fact]
    public void Look_WhereNothingTellsTheAngle_AsksForTheMark() => Assert.Contains(
        "press for the mark",
        Method.Follow(TurnedCam.Gauge, new MethodWish(2))(First(TurnedCam.Of(0, 0), 100)).Advice(new CaptureSoFar(2)),
        StringComparison.Ordinal);

    [Fact]
    public void Pairs_OfLobesWhoseZeroNothingTells_AreRefused()
    {
        var result = ((LiftFigures)Measure(TurnedCam.Of(0.4, 36), Disc with { MissingTooth = false }).Figures).ToResult();

        Assert.Contains("missing tooth", LobePair.Fault(result, result), StringComparison.Ordinal);
    }

    private static CaptureFinding Measure(RotationCapture capture, LiftSetup? setup) => Method.Measure(capture, TurnedCam.Gauge, new MethodWish(2, setup));

    private static RotationCapture First(RotationCapture capture, int readings) => capture with
    {
        Seconds = capture.Seconds[..readings],
        Millimetres = capture.Millimetres[..readings],
        IndexSeconds = capture.IndexSeconds.ToArray().Where(at => at <= capture.Seconds.Span[readings - 1]).ToArray(),
    };
}

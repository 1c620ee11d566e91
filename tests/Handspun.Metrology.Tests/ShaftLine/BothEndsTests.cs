using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Metrology.ShaftLine;
using Handspun.Simulation;

namespace Handspun.Metrology.Tests.ShaftLine;

public class BothEndsTests
{
    private static readonly CrankGeometry Geometry = new(Read(60), Read(40), Read(120), Angle.FromDegrees(30), 5);

    // Both shafts lean toward 30 degrees, which is where the crankpin is, by 0.03/60 and 0.02/40: the lines stand at 0.001 to each other.
    [Fact]
    public void Lines_OfTwoMeasuredEnds_StandAtTheAngleThatTheCrankWasMadeWith()
    {
        var (drive, pinion) = (Measure(0.03, 30, 1, AngleAid.IndexEachTurn), Measure(0.02, 30, 2, AngleAid.IndexEachTurn));

        var result = BothEnds.Of(drive, pinion, Geometry);

        Assert.Null(BothEnds.Doubt(drive, pinion));
        Assert.InRange(0.001, result.Apart!.Kink.Ratio - result.Apart.KinkU95.Ratio, result.Apart.Kink.Ratio + result.Apart.KinkU95.Ratio);
        Assert.Equal((HighSpots.SameSide, CrankpinSide.AtCrankpin), (result.HighSpots, result.Against));
        Assert.EndsWith(ShaftLineMethod.Caution, result.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_OfEndsWithoutAMark_HaveSizesAndNoDirections_AndSayWhatToDo()
    {
        var (drive, pinion) = (Measure(0.03, 30, 1, AngleAid.None), Measure(0.02, 30, 2, AngleAid.IndexEachTurn));

        var result = BothEnds.Of(drive, pinion, Geometry);

        Assert.Equal("The drive side was measured without a mark or an index: measure both ends again from one mark.", BothEnds.Doubt(drive, pinion));
        Assert.Equal(ShaftLineStatus.Measured, result.Status);
        Assert.Equal(0.0005, result.DriveSide!.Tilt.Ratio, 0.00005);
        Assert.Null(result.Apart);
        Assert.Equal((null, null, null), (result.DriveSide.Toward, result.PinionSide!.Toward, result.Against));
    }

    [Fact]
    public void Lines_OfEndsThatCountFromDifferentPlaces_AreNotCompared()
    {
        var (drive, pinion) = (Measure(0.03, 30, 1, AngleAid.IndexEachTurn), Measure(0.02, 30, 2, new AngleAid { EncoderSteps = 720 }));

        Assert.Equal("The drive side's angle counts from the index and the pinion side's from the encoder's zero: measure both ends again from one and the same.", BothEnds.Doubt(drive, pinion));
        Assert.Null(BothEnds.Of(drive, pinion, Geometry).Apart);
    }

    [Fact]
    public void Lines_OfAnIndexOnTheRearWheel_AreNotCompared()
    {
        var pinion = Measure(0.02, 30, 2, AngleAid.IndexEachTurn);
        var drive = pinion with { TowardU95Degrees = null };

        Assert.Contains("does not come once a turn", BothEnds.Doubt(drive, pinion), StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_OfAVagueDirection_SayHowVagueAndWhatToDo()
    {
        var pinion = Measure(0.02, 30, 2, AngleAid.IndexEachTurn);
        var drive = pinion with { TowardU95Degrees = 41.2 };

        Assert.Contains("drive side's runout is known only within 42 degrees, and 30 are needed", BothEnds.Doubt(drive, pinion), StringComparison.Ordinal);
        Assert.Null(BothEnds.Of(drive, pinion, Geometry).Apart);
    }

    [Fact]
    public void Length_ReadOffATool_IsKnownToItsDivision() => Assert.Equal(Length.FromMillimetres(1), Read(60).U95);

    [Fact]
    public void End_OfACaptureWithoutARunout_IsNone() =>
        Assert.Null(MeasuredEnd.Of(new RunoutResult { Status = RunoutStatus.TooShort, Readings = 3 }));

    private static ReadLength Read(double millimetres) => new(Length.FromMillimetres(millimetres), Length.FromMillimetres(1));

    private static MeasuredEnd Measure(double eccentricity, double toward, int seed, AngleAid aid)
    {
        var shape = new ShaftShape([new ShaftWave(1, eccentricity, toward), new ShaftWave(2, 0.003, 10)]);
        var simulated = CaptureSimulation.Run(shape, HandTurn.Create(seed, 4, 0.5), new Indicator(), seed, 1, 1, aid);
        var capture = new RotationCapture
        {
            Seconds = simulated.Seconds,
            Millimetres = simulated.Millimetres,
            IndexSeconds = simulated.IndexSeconds,
            EncoderSeconds = simulated.EncoderSeconds,
            EncoderDegrees = simulated.EncoderDegrees,
        };
        return MeasuredEnd.Of(RunoutMethod.Measure(capture, new GaugeTraits { Resolution = Length.FromMillimetres(0.001) }, new RunoutSettings()))!;
    }
}

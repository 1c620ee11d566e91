using Handspun.Accuracy;
using Handspun.Metrology.Runout;
using Handspun.Simulation;

namespace Handspun.Metrology.Tests.Runout;

/// <summary>The first wave of simulated shafts, whose truth is on record.</summary>
public class EccentricityTests
{
    private const int Shafts = 40;

    [Theory]
    [InlineData("index")]
    [InlineData("encoder")]
    [InlineData("marks")]
    public void Eccentricity_OfManyShafts_IsCoveredInSizeAndDirection_AndNotByWidthAlone(string name)
    {
        var aid = name switch { "index" => AngleAid.IndexEachTurn, "encoder" => new AngleAid { EncoderSteps = 720 }, _ => new AngleAid { Marks = true } };
        List<double> off = [], size = [], turned = [], toward = [];
        for (var seed = 1; seed <= Shafts; seed++)
        {
            var shape = ShaftShape.WithTir(0.03 + 0.005 * seed, seed, 1 + seed % 3);
            var result = Captures.Measure(CaptureSimulation.Run(shape, HandTurn.Create(seed, 3.5, 0.5), new Indicator(), seed, 1, 1, aid).ToCapture());
            off.Add(Math.Abs(result.Eccentricity!.Value.Millimetres - shape.Waves[0].Millimetres));
            size.Add(result.EccentricityU95!.Value.Millimetres);
            turned.Add(Math.Abs(Math.IEEERemainder(result.EccentricityToward!.Value.Degrees - shape.Waves[0].PhaseDegrees, 360)));
            toward.Add(result.EccentricityTowardU95Degrees!.Value);
        }

        Assert.InRange(Covered(off, size), 0.85, 1);
        Assert.InRange(Covered(turned, toward), 0.9, 1);
        Assert.InRange(Median(size) / Median(off), 1, 20);   // most of it is for the few captures whose hand kept step with the turn
        Assert.InRange(Median(toward) / Median(turned), 1, 20);
    }

    [Fact]
    public void Eccentricity_OfAPureCosine_IsItsAmplitudeAndPhase()
    {
        var capture = Captures.Of(600, 6, t => 0.05 * Math.Cos(2 * Math.PI * 0.5 * t - 1)) with
        {
            EncoderSeconds = new double[] { 0, 6 },
            EncoderDegrees = new double[] { 0, 1080 },
        };

        var result = Captures.Measure(capture, new GaugeTraits { PlungerLeanDegrees = 0 });

        Assert.Equal(0.05, result.Eccentricity!.Value.Millimetres, 1e-5);
        Assert.Equal(180 / Math.PI, result.EccentricityToward!.Value.Degrees, 0.01);
    }

    // Half the movement of a round shaft: the gauge's own part halves with it (JCGM 100:2008, 5.1.2).
    [Fact]
    public void EccentricityU95_OfARoundShaft_IsHalfThatOfItsRunout()
    {
        var shape = new ShaftShape([new ShaftWave(1, 0.04, 70)]);
        var capture = CaptureSimulation.Run(shape, HandTurn.Create(3, 3.5, 0.5), new Indicator(), 3, 1, 1, new AngleAid { EncoderSteps = 720 }).ToCapture();

        var result = Captures.Measure(capture, Captures.Fine with { ErrorLimit = Quantities.Length.FromMillimetres(0.004) });

        Assert.Equal(0.5, result.EccentricityU95!.Value.Millimetres / result.TirU95!.Value.Millimetres, 0.05);
    }

    [Theory]
    [InlineData("nothing")]
    [InlineData("a pulse of the rear wheel")]
    public void Direction_FromAZeroThatDoesNotLast_HasNoUncertainty(string zero)
    {
        var aid = zero == "nothing" ? AngleAid.None : new AngleAid { TurnsPerIndex = 2.81 };
        var result = Captures.Measure(Captures.Usual(5, aid, turns: 7).ToCapture(aid.TurnsPerIndex > 0 ? aid.TurnsPerIndex : 1));

        Assert.Equal(RunoutStatus.Measured, result.Status);
        Assert.NotNull(result.EccentricityToward);
        Assert.Null(result.EccentricityTowardU95Degrees);
    }

    [Fact]
    public void Direction_FromOneCallOfTheMark_IsAsDoubtfulAsTheCall()
    {
        var capture = Captures.Usual(4, new AngleAid { Marks = true }).ToCapture();
        var once = Captures.Measure(capture with { MarkSeconds = capture.MarkSeconds[1..2] });
        var often = Captures.Measure(capture);

        // A twentieth of a second at half a turn a second is 9 degrees; the hand of this capture turns at a quarter to a whole turn a second.
        Assert.InRange(once.EccentricityTowardU95Degrees!.Value, 2 * 0.05 * 0.25 * 360, 2 * 0.05 * 1 * 360 + 20);
        Assert.Equal(AngleReference.Mark, often.Reference);
        Assert.True(once.HighSpotU95Degrees > 2 * 0.05 * 0.25 * 360);
    }

    private static double Covered(List<double> errors, List<double> uncertainties) =>
        errors.Zip(uncertainties).Count(pair => pair.First <= pair.Second) / (double)errors.Count;

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);
}

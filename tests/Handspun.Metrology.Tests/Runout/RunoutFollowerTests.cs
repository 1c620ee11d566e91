using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Simulation;

namespace Handspun.Metrology.Tests.Runout;

public class RunoutFollowerTests
{
    private static readonly GaugeTraits Gauge = new() { Resolution = Length.FromMillimetres(0.001) };
    private static readonly RunoutSettings Settings = new();

    public static TheoryData<int, bool, int> Hands { get; } = new()
    {
        { 1, false, 0 }, { 2, false, 0 }, { 3, true, 0 }, { 4, true, 0 }, { 5, false, 2 }, { 6, true, 2 },
    };

    [Theory]
    [MemberData(nameof(Hands))]
    public void Look_WhileTheCaptureGrows_AgreesWithAMeasurementFromScratch(int seed, bool index, int stops)
    {
        var drawn = Draw(seed, index, stops);
        var follower = new RunoutFollower(Gauge, Settings);
        var compared = 0;
        List<double> looksOff = [];
        List<double> freshOff = [];
        for (var readings = 10; readings <= drawn.Seconds.Length; readings += 10)
        {
            var soFar = SoFar(drawn, readings);
            var look = follower.Look(soFar);
            if (readings % 200 != 0)
            {
                continue;
            }

            var fresh = RunoutMethod.Measure(soFar, Gauge, Settings);
            Assert.Equal(fresh.Status, look.Status);
            Assert.Equal(fresh.Readings, look.Readings);
            Assert.Equal(fresh.Reference, look.Reference);
            if (fresh is { Tir: { } tir, TirU95: { } expanded })
            {
                Assert.Equal(tir.Millimetres, look.Tir!.Value.Millimetres, 1.5 * expanded.Millimetres);
                Assert.Equal(readings, look.AngleDegrees.Count);
                var turns = (drawn.TrueDegrees[readings - 1] - drawn.TrueDegrees[0]) / 360;
                looksOff.Add(Math.Abs(look.Turns - turns));
                freshOff.Add(Math.Abs(fresh.Turns - turns));
                compared++;
            }
        }

        Assert.InRange(compared, 3, 100);
        Assert.InRange(Middle(looksOff), 0, Middle(freshOff) + 0.05);
    }

    [Fact]
    public void Look_AfterAMarkWasCalled_CountsAnglesFromIt()
    {
        var drawn = Draw(7, index: false, stops: 0);
        var follower = new RunoutFollower(Gauge, Settings);
        var half = drawn.Seconds.Length / 2;
        Assert.Equal(AngleReference.FirstReading, follower.Look(SoFar(drawn, half)).Reference);

        var marked = SoFar(drawn, half + 10) with { MarkSeconds = new[] { drawn.Seconds[half / 2] } };
        var look = follower.Look(marked);

        Assert.Equal(AngleReference.Mark, look.Reference);
        Assert.Equal(0, look.AngleDegrees[half / 2] % 360, 1.0);
    }

    [Fact]
    public void Look_AtACaptureThatCannotBeUsed_SaysSoAndGoesOnAfterwards()
    {
        var drawn = Draw(8, index: false, stops: 0);
        var follower = new RunoutFollower(Gauge, Settings);
        follower.Look(SoFar(drawn, 500));
        var spoilt = drawn.Millimetres.ToArray();
        spoilt[505] = double.NaN;

        Assert.Equal(RunoutStatus.Rejected, follower.Look(SoFar(drawn with { Millimetres = spoilt }, 510)).Status);
        Assert.Equal(RunoutStatus.Measured, follower.Look(SoFar(drawn, 520)).Status);
    }

    private static double Middle(List<double> values) => values.Order().ElementAt(values.Count / 2);

    private static SimulatedCapture Draw(int seed, bool index, int stops) => CaptureSimulation.Run(
        ShaftShape.WithTir(0.08, seed, harmonics: 3),
        HandTurn.Create(seed, turns: 6, turnsPerSecond: 0.5, new HandHabits { Unevenness = 0.4, Stops = stops }),
        new Indicator { RateHz = 90, NoiseMicrometres = 1, ResolutionMillimetres = 0.001 },
        seed,
        leadInSeconds: 0.5,
        leadOutSeconds: 0.5,
        index ? AngleAid.IndexEachTurn : AngleAid.None);

    private static RotationCapture SoFar(SimulatedCapture drawn, int readings) => new()
    {
        Seconds = drawn.Seconds.AsMemory(0, readings),
        Millimetres = drawn.Millimetres.AsMemory(0, readings),
        IndexSeconds = drawn.IndexSeconds.Where(at => at <= drawn.Seconds[readings - 1]).ToArray(),
    };
}

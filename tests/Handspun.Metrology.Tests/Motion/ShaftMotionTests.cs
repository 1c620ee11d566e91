using Handspun.Metrology.Motion;
using Handspun.Metrology.Quantities;
using Handspun.Simulation;

namespace Handspun.Metrology.Tests.Motion;

public class ShaftMotionTests
{
    private static readonly Indicator Gauge = new() { RateHz = 30, NoiseMicrometres = 1 };

    [Fact]
    public void Shaft_ThatAHandTurns_IsTurning()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var capture = CaptureSimulation.Run(ShaftShape.WithTir(0.06, seed, 2), HandTurn.Create(seed, 3, 0.5), Gauge, seed, 0, 0);
            Assert.True(IsTurning(capture, from: 1, seconds: 1.5), $"seed {seed}");
        }
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0)]
    [InlineData(0, 6)]
    public void Shaft_ThatStands_IsNotTurning_WithKnocksOrDrift(int knocks, double driftMicrometresAMinute)
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var gauge = Gauge with { Knocks = knocks * 20, DriftMicrometres = driftMicrometresAMinute };
            var capture = CaptureSimulation.Run(ShaftShape.WithTir(0.06, seed, 2), HandTurn.Create(seed, 0.001, 0.5), gauge, seed, 60, 0);
            Assert.False(IsTurning(capture, from: 10, seconds: 2), $"seed {seed}");
        }
    }

    [Fact]
    public void Display_ThatFlickersBetweenTwoDigits_IsNotTurning()
    {
        double[] seconds = [.. Enumerable.Range(0, 40).Select(i => i * 0.05)];
        double[] readings = [.. Enumerable.Range(0, 40).Select(i => i * 7 % 5 < 2 ? 0.01 : 0.02)];

        Assert.False(ShaftMotion.IsTurning(seconds, readings, Length.FromMillimetres(0.01)));
        Assert.False(ShaftMotion.IsTurning(seconds, readings, Length.Zero));
    }

    [Fact]
    public void Readings_TooFewToTell_AreNotTurning() =>
        Assert.False(ShaftMotion.IsTurning([0, 0.1, 0.2], [0, 0.1, 0.2], Length.Zero));

    private static bool IsTurning(SimulatedCapture capture, double from, double seconds)
    {
        var first = Array.FindIndex(capture.Seconds, at => at >= from);
        var count = Array.FindIndex(capture.Seconds, at => at >= from + seconds) - first;
        return ShaftMotion.IsTurning(
            capture.Seconds.AsSpan(first, count), capture.Millimetres.AsSpan(first, count), Length.FromMillimetres(Gauge.ResolutionMillimetres));
    }

    [Theory]
    [InlineData(50)]
    [InlineData(10)]
    public void Shaft_PushedToAndFroInStepWithTheLook_Moves(double hertz)
    {
        // A stop every half second over four seconds: every quarter of the stretch has the same mean.
        double[] seconds = [.. Enumerable.Range(0, (int)(4 * hertz)).Select(i => i / hertz)];
        double[] millimetres = [.. seconds.Select(t => t % 1 < 0.5 ? 0 : 0.1)];

        Assert.True(ShaftMotion.MovesAnywhere(seconds, millimetres, Length.FromMillimetres(0.001)));
    }

    [Fact]
    public void Shaft_HeldWithADigitThatFlickers_MovesNowhere()
    {
        double[] seconds = [.. Enumerable.Range(0, 200).Select(i => i / 50.0)];
        double[] millimetres = [.. Enumerable.Range(0, 200).Select(i => i % 7 == 0 ? 0.001 : 0)];

        Assert.False(ShaftMotion.MovesAnywhere(seconds, millimetres, Length.FromMillimetres(0.001)));
        Assert.False(ShaftMotion.MovesAnywhere([], [], Length.FromMillimetres(0.001)));
    }
}

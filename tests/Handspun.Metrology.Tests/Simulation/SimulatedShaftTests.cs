using Handspun.Simulation;

namespace Handspun.Metrology.Tests.Simulation;

public class SimulatedShaftTests
{
    [Theory]
    [InlineData(1, 0.05)]
    [InlineData(3, 0.012)]
    public void Shape_OfOneWave_HasTwiceTheAmplitudeAsRunout(int lobes, double amplitude)
    {
        var shape = new ShaftShape([new(lobes, amplitude, 40)]);

        Assert.Equal(2 * amplitude, shape.TirMillimetres, 1e-12);
        Assert.Equal(amplitude, shape.HeightAt(40.0 / lobes), 1e-12);
    }

    [Fact]
    public void Shape_MadeForARunout_HasThatRunout() => Assert.All(
        Enumerable.Range(1, 40),
        seed => Assert.Equal(0.127, ShaftShape.WithTir(0.127, seed, 1 + seed % 4).TirMillimetres, 1e-9));

    [Fact]
    public void Hand_WithoutStops_NeverTurnsBack()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var turn = HandTurn.Create(seed, turns: 3.3, turnsPerSecond: 0.5);
            var before = 0.0;
            for (var time = 0.0; time < turn.Seconds + 1; time += 0.01)
            {
                Assert.True(turn.TurnsAt(time) >= before - 1e-12);
                before = turn.TurnsAt(time);
            }

            Assert.Equal(3.3, before, 1e-9);
            Assert.InRange(turn.Seconds, 3.3 / 0.5 * 0.4, 3.3 / 0.5 * 3);
        }
    }

    [Fact]
    public void Hand_ThatSlips_TurnsBackForAWhile()
    {
        var turn = HandTurn.Create(4, 3, 0.5, new HandHabits { Stops = 1, SlipBackDegrees = 5 });

        Assert.Contains(
            Enumerable.Range(0, (int)(turn.Seconds * 100)),
            i => turn.TurnsAt((i + 1) / 100.0) < turn.TurnsAt(i / 100.0));
    }

    [Fact]
    public void Capture_OfTheSameSeed_IsTheSame()
    {
        var shape = ShaftShape.WithTir(0.1, 1, 3);
        SimulatedCapture Run(int seed) =>
            CaptureSimulation.Run(shape, HandTurn.Create(2, 3, 0.5), new Indicator { Knocks = 2 }, seed, 1, 1, AngleAid.IndexEachTurn);

        Assert.Equal(Run(3).Millimetres, Run(3).Millimetres);
        Assert.NotEqual(Run(3).Millimetres, Run(4).Millimetres);
        Assert.Equal(3, Run(3).IndexSeconds.Length);
    }
}

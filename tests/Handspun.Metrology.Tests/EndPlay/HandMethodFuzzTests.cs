using Handspun.Metrology.Bore;
using Handspun.Metrology.EndPlay;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.EndPlay;

/// <summary>Captures of nothing in particular: every one gets an answer, and one that counts as measured holds numbers.</summary>
public class HandMethodFuzzTests
{
    [Fact]
    public void Readings_OfAnySort_GetAnAnswer()
    {
        var measured = 0;
        for (var seed = 0; seed < 150; seed++)
        {
            var (seconds, millimetres, step) = Capture(new Random(seed));
            var gauge = new GaugeTraits { Resolution = Length.FromMillimetres(step) };
            var play = EndPlayMethod.Measure(seconds, millimetres, gauge, new EndPlaySettings());
            var bore = BoreMethod.Measure(seconds, millimetres, gauge, new BoreSettings());

            Assert.True(play.Missing is not null || play is { EndPlay.Millimetres: > 0, EndPlayU95.Millimetres: > 0 }, $"end play, seed {seed}");
            Assert.True(bore.Missing is not null || bore is { Deviation: not null, DeviationU95.Millimetres: > 0 }, $"bore, seed {seed}");
            Assert.All(play.Holds, hold => Assert.InRange(hold.LastReading, hold.FirstReading, seconds.Length - 1));
            Assert.All(bore.ByPass, pass => Assert.InRange(pass.Reading, 0, seconds.Length - 1));
            measured += play.Missing is null || bore.Missing is null ? 1 : 0;
        }

        Assert.InRange(measured, 1, 149);   // both kinds of answers were seen
    }

    private static (double[] Seconds, double[] Millimetres, double Step) Capture(Random chance)
    {
        var count = chance.Next(0, 160);
        var still = chance.Next(6) == 0;
        var size = Math.Pow(10, chance.Next(-4, 7));
        var step = chance.Next(3) == 0 ? 0 : 0.01;
        var (seconds, millimetres) = (new double[count], new double[count]);
        var (time, at) = (0.0, 0.0);
        for (var i = 0; i < count; i++)
        {
            time += still || chance.Next(5) == 0 ? 0 : chance.NextDouble() / 20;
            at = chance.Next(8) == 0 ? size * (chance.NextDouble() - 0.5) : at;
            var value = chance.Next(4) == 0 ? size * chance.NextDouble() : at;
            (seconds[i], millimetres[i]) = (time, step > 0 ? Math.Round(value / step) * step : value);
        }

        return (seconds, millimetres, step);
    }
}

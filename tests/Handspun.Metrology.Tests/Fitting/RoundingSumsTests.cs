using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Tests.Fitting;

public class RoundingSumsTests
{
    private const double Step = 0.01;

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.15)]
    [InlineData(0.3)]
    public void Covariance_OfTheMeanOfARestingShaft_IsThatOfRoundingItOverAndOver(double noiseInSteps)
    {
        // Rounded noise, averaged without end, at heights all over a step: what the closed form has to come to.
        var chance = new Random(5);
        var (squares, heights) = (0.0, 400);
        for (var i = 0; i < heights; i++)
        {
            var (height, sum, draws) = (Step * (i + 0.5) / heights, 0.0, 4000);
            for (var j = 0; j < draws; j++)
            {
                var noise = noiseInSteps * Step * Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
                sum += Step * Math.Round((height + noise) / Step) - height;
            }

            squares += sum / draws * (sum / draws) / heights;
        }

        var sums = new RoundingSums(1, Step, Step * Step * (noiseInSteps * noiseInSteps + 1.0 / 12));
        sums.Add([1], 0.0034);

        Assert.InRange(sums.Covariance()[0] / squares, 0.8, 1.05);   // three terms of the sawtooth hold 83 % of its power
    }

    [Fact]
    public void Covariance_OfAMeanOverAWholeStep_IsNothing()
    {
        var sums = new RoundingSums(1, Step, Step * Step / 12);
        for (var i = 0; i < 100; i++)
        {
            sums.Add([0.01], Step * i / 100);
        }

        Assert.InRange(sums.Covariance()[0], 0, 1e-15);
    }

    [Fact]
    public void Any_WhereNoiseIsWiderThanAStep_IsFalse()
    {
        var sums = new RoundingSums(3, Step, Step * Step);

        Assert.False(sums.Any);
        Assert.Equal(1, sums.ShareOfNoise);
        Assert.All(sums.Covariance(), value => Assert.Equal(0, value));
    }
}

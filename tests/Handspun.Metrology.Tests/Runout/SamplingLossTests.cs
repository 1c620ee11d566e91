using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.Runout;

public class SamplingLossTests
{
    // 1 − cos(π/N), worked out again by scanning the phase of a sampled sine.
    [Theory]
    [InlineData(12, 0.03407)]
    [InlineData(72, 0.000952)]
    [InlineData(360, 0.0000381)]
    public void Loss_OfEvenReadings_IsTheLargestOverAllPhases(int readings, double share)
    {
        var least = Enumerable.Range(0, 200).Min(phase =>
        {
            var heights = Enumerable.Range(0, readings).Select(i => Math.Cos(2 * Math.PI * (i + phase / 200.0) / readings)).ToList();
            return (heights.Max() - heights.Min()) / 2;
        });

        Assert.Equal(share, SamplingLoss.Of(readings), share * 1e-3);
        Assert.Equal(1 - least, SamplingLoss.Of(readings), share * 1e-3);
    }

    [Fact]
    public void Loss_OfThreeLobes_IsThatOfAThirdOfTheReadings() => Assert.Equal(SamplingLoss.Of(12), SamplingLoss.Of(36, lobes: 3));

    [Fact]
    public void Loss_WithTwoReadingsALobe_IsAllOfIt() => Assert.Equal(1, SamplingLoss.Of(4, lobes: 2));
}

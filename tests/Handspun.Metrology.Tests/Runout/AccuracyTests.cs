using Handspun.Accuracy;

namespace Handspun.Metrology.Tests.Runout;

/// <summary>A small fixed part of the accuracy table.</summary>
public class AccuracyTests
{
    private const int Captures = 24;
    private const int Seed = 11;

    [Theory]
    [InlineData("index")]
    [InlineData("no index")]
    [InlineData("encoder")]
    [InlineData("no index, drift")]
    [InlineData("index, knocks")]
    [InlineData("no index, bursts")]
    [InlineData("index, coarse 0.01")]
    [InlineData("no index, stops")]
    [InlineData("index, 8-12 Hz")]
    public void Runout_OfAClassOfCaptures_IsCloserThanTheRangeAndCovered(string name)
    {
        var score = ClassScore.Of(CaptureKinds.All.Single(kind => kind.Name == name), Captures, Seed);

        Assert.InRange(score.Answered, Captures - 1, Captures);
        Assert.True(Median(score.Ours) < Median(score.Range), score.Line);
        Assert.True(Median(score.Ours) < 5 * Median(score.Informed), score.Line);
        Assert.True(score.Covered >= 0.89, score.Line);
        Assert.True(Median(score.Uncertainty) < 6 * Median(score.Ours), score.Line);
        Assert.True(score.MissedOver <= 0.1, score.Line);
    }

    private static double Median(double[] sorted) => sorted[sorted.Length / 2];
}

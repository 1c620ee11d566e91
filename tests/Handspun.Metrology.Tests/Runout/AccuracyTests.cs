using Handspun.Accuracy;

namespace Handspun.Metrology.Tests.Runout;

/// <summary>A small fixed part of the accuracy table.</summary>
public class AccuracyTests
{
    private const int Captures = 24;
    private const int Seed = 11;

    [Theory]
    [InlineData("index", 2.5, 15)]
    [InlineData("no index", 2.5)]
    [InlineData("encoder", 1.5, 3)]
    [InlineData("no index, drift", 2.5)]
    [InlineData("index, knocks", 3.5, 15)]
    [InlineData("no index, bursts", 2.5)]
    [InlineData("index, coarse 0.01", 2, 30)]
    [InlineData("no index, stops", 5)]
    [InlineData("index, 8-12 Hz", 1.8, 16)]
    public void Runout_OfAClassOfCaptures_IsCloserThanTheRangeAndCovered(string name, double mostOfInformed, double mostDegrees = 0)
    {
        var score = ClassScore.Of(CaptureKinds.All.Single(kind => kind.Name == name), Captures, Seed);

        Assert.InRange(score.Answered, Captures - 1, Captures);
        Assert.True(Median(score.Ours) < Median(score.Range), score.Line);
        Assert.True(Median(score.Ours) < mostOfInformed * Median(score.Informed), score.Line);
        Assert.True(score.Covered >= 0.91, score.Line);   // 22 of 24
        Assert.True(Median(score.Uncertainty) < 5 * Median(score.Ours), score.Line);
        Assert.True(score.MissedOver <= 0.05, score.Line);   // 1 of 24
        if (mostDegrees > 0)
        {
            Assert.True(score.HighSpot[(int)(0.9 * score.HighSpot.Length)] < mostDegrees, score.Line);
        }
    }

    private static double Median(double[] sorted) => sorted[sorted.Length / 2];
}

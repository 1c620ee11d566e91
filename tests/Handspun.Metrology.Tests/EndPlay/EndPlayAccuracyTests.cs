using Handspun.Accuracy;
using Handspun.Accuracy.ByHand;

namespace Handspun.Metrology.Tests.EndPlay;

/// <summary>A small fixed part of the accuracy table, against the simulator's truth.</summary>
public class EndPlayAccuracyTests
{
    private const int Captures = 40;
    private const int Seed = 12;

    [Theory]
    [InlineData("end play, mixed steps", 1, 3)]
    [InlineData("end play, 0.01", 1.5, 4)]
    [InlineData("end play, 8-12 Hz", 1, 3)]
    [InlineData("end play, knocks", 1, 3)]
    public void EndPlay_OfAClassOfCaptures_IsCloseAndCovered(string name, double median, double ninety)
    {
        var score = PlainScore.Of(EndPlayKinds.All.Single(kind => kind.Name == name), Captures, Seed);

        Assert.Equal(Captures, score.Errors.Length);
        Assert.True(Sorted.At(score.Errors, 0.5) <= median, score.Line);
        Assert.True(Sorted.At(score.Errors, 0.9) <= ninety, score.Line);
        Assert.True(score.Covered >= 0.87, score.Line);   // 0.95 less two standard deviations of a share of forty
        Assert.True(Sorted.At(score.Uncertainty, 0.5) <= 6 * Sorted.At(score.Errors, 0.5), score.Line);
    }
}

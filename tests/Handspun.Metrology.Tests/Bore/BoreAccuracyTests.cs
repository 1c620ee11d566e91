using Handspun.Accuracy;
using Handspun.Accuracy.ByHand;

namespace Handspun.Metrology.Tests.Bore;

/// <summary>A small fixed part of the accuracy table, against the simulator's truth.</summary>
public class BoreAccuracyTests
{
    private const int Captures = 30;
    private const int Seed = 12;

    [Theory]
    [InlineData("bore, mixed steps")]
    [InlineData("bore, 0.01")]
    [InlineData("bore, 8-12 Hz")]
    [InlineData("bore, knocks")]
    public void Deviation_OfAClassOfCaptures_IsCloseAndCovered(string name)
    {
        var score = PlainScore.Of(BoreKinds.All.Single(kind => kind.Name == name), Captures, Seed);

        Assert.Equal(Captures, score.Errors.Length);
        Assert.True(Sorted.At(score.Errors, 0.5) <= 1, score.Line);
        Assert.True(Sorted.At(score.Errors, 0.9) <= 3, score.Line);
        Assert.True(score.Covered >= 0.86, score.Line);   // 0.95 less two standard deviations of a share of thirty
        Assert.True(Sorted.At(score.Uncertainty, 0.5) <= 6 * Sorted.At(score.Errors, 0.5), score.Line);
    }
}

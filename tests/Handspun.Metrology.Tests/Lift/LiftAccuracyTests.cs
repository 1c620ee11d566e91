using Handspun.Accuracy.Lift;

namespace Handspun.Metrology.Tests.Lift;

/// <summary>A small fixed part of the accuracy table of lift curves.</summary>
public class LiftAccuracyTests
{
    private const int Captures = 8;

    [Theory]
    [InlineData("lift, 36 pulses")]
    [InlineData("lift, 12 pulses")]
    [InlineData("lift, encoder")]
    [InlineData("lift, 36, knocks")]
    [InlineData("lift, 36, coarse 0.01")]
    public void Lift_OfAClassOfCaptures_IsRightWithinAHundredthMillimetreAndADegree(string name)
    {
        var score = LiftScore.Of(LiftKinds.All.Single(kind => kind.Name == name), Captures, seed: 11);

        Assert.Equal(Captures, score.Lift.Count);
        Assert.True(score.LiftRight >= 0.85, score.Line);
        Assert.True(score.CentrelineRight >= 0.85, score.Line);
        Assert.True(LiftScore.Covered(score.Lift) >= 0.75, score.Line);
        Assert.True(LiftScore.Covered(score.Centreline) >= 0.75, score.Line);
    }
}

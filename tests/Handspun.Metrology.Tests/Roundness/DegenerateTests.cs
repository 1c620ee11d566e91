using Handspun.Metrology.Roundness;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.Roundness;

/// <summary>Profiles that hold no circle, or hold it more than once.</summary>
public class DegenerateTests
{
    [Theory]
    [InlineData(new double[] { }, new double[] { }, "three points")]
    [InlineData(new[] { 0.0, 1 }, new[] { 0.0, 1 }, "three points")]
    [InlineData(new[] { 0.0, 1, 2 }, new[] { 0.0, 1 }, "as many values")]
    [InlineData(new[] { 0.0, 1, double.NaN }, new[] { 0.0, 1, 0 }, "not a number")]
    [InlineData(new[] { 0.0, 1, 0 }, new[] { 0.0, double.PositiveInfinity, 1 }, "not a number")]
    [InlineData(new[] { 5.0, 5, 5, 5 }, new[] { 5.0, 5, 5, 5 }, "one line")]
    [InlineData(new[] { 0.0, 1, 2, 3 }, new[] { 1.0, 2, 3, 4 }, "one line")]
    [InlineData(new[] { 0.1, 0.2, 0.3, 0.7 }, new[] { 0.3, 0.6, 0.9, 2.1 }, "one line")]
    [InlineData(new[] { 1e300, -1e300, 0 }, new[] { 0.0, 1e300, -1e300 }, "far too large")]
    [InlineData(new[] { 1e-200, -1e-200, 0 }, new[] { 0.0, 1e-200, -1e-200 }, "one line")]
    public void Points_WithoutACircle_AreRejectedWithASentence(double[] x, double[] y, string because)
    {
        var result = RoundnessMethod.OfPoints(x, y);
        Assert.Equal(RoundnessStatus.Rejected, result.Status);
        Assert.Contains(because, result.Missing, StringComparison.Ordinal);
        Assert.Null(result.MinimumZone);
    }

    [Theory]
    [InlineData(new[] { 0.0, 10 }, new[] { 0.0, 1 }, "three points")]
    [InlineData(new[] { 0.0, 120, 240 }, new[] { 0.0, double.NaN, 1 }, "not a number")]
    [InlineData(new[] { 0.0, 120, 240 }, new[] { 1e300, -1e300, 0 }, "far too large")]
    [InlineData(new[] { 0.0, 90, 180 }, new[] { 0.0, 1, 0 }, "half a turn")]
    [InlineData(new[] { 10.0, 10, 10 }, new[] { 0.0, 1, 0 }, "half a turn")]
    public void Turn_ThatCannotBeJudged_IsRejectedWithASentence(double[] degrees, double[] heights, string because)
    {
        var result = RoundnessMethod.OfTurn(degrees, heights);
        Assert.Equal(RoundnessStatus.Rejected, result.Status);
        Assert.Contains(because, result.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void Profile_WithANumberMissing_IsRejected() =>
        Assert.Equal(RoundnessStatus.Rejected, RoundnessMethod.OfProfile(new(0, [new(double.NaN, 0)])).Status);

    [Fact]
    public void Profile_WithoutWaves_IsRound() =>
        Assert.All(RoundnessMethod.OfProfile(new ShaftProfile(0.2, [])).All(), circle => Assert.Equal(0, circle.PeakToValley.Millimetres, 1e-15));

    [Fact]
    public void Points_AllGivenThreeTimes_GiveTheSameCircles()
    {
        var (x, y) = Profiles.Points(Profiles.Degrees(40), Profiles.Deviations(3, 40));
        Assert.All(Profiles.Round(x, y).All().Zip(Profiles.Round([.. x, .. x, .. x], [.. y, .. y, .. y]).All()), pair =>
            Assert.Equal(pair.First.PeakToValley.Millimetres, pair.Second.PeakToValley.Millimetres, 1e-11));
    }

    // Corners of a square, and heights in steps as a coarse gauge gives them: many points level with each other.
    [Fact]
    public void Points_LevelWithEachOther_GiveAZone()
    {
        Assert.Equal(0, Profiles.Round([0, 1, 1, 0], [0, 0, 1, 1]).MinimumZone!.PeakToValley.Millimetres, 1e-13);
        var (degrees, heights) = (Profiles.Degrees(720), Profiles.Deviations(8, 720).Select(h => Math.Round(h / 0.005) * 0.005).ToArray());
        var (x, y) = Profiles.Points(degrees, heights);
        var (plane, turn) = (Profiles.Round(x, y).MinimumZone!, RoundnessMethod.OfTurn(degrees, heights).MinimumZone!);
        Assert.Equal(plane.PeakToValley.Millimetres, turn.PeakToValley.Millimetres, 2e-6);
        Assert.InRange(plane.PeakToValley.Millimetres, 0.005, heights.Max() - heights.Min());
    }

    // Three quarters of a turn still close round the centre; 170 degrees do not.
    [Fact]
    public void MaximumInscribed_OfAnArc_IsGivenOnlyWhereThePointsGoRound()
    {
        double[] most = [.. Enumerable.Range(0, 271).Select(a => (double)a)];
        double[] few = [.. Enumerable.Range(0, 171).Select(a => (double)a)];
        var (x, y) = Profiles.Points(most, new double[271]);
        Assert.Equal(Profiles.Radius, Profiles.Round(x, y).MaximumInscribed!.Radius.Millimetres, 1e-10);
        (x, y) = Profiles.Points(few, Profiles.Deviations(5, 171));
        Assert.Null(Profiles.Round(x, y).MaximumInscribed);
    }
}

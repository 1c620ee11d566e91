using Handspun.Pictures.Page;
using ScottPlot;

namespace Handspun.Pictures.Tests.Runout;

public sealed class ThinnedTests
{
    [Fact]
    public void Line_WithFewPoints_StaysAsItIs()
    {
        var line = Enumerable.Range(0, 40).Select(i => new Coordinates(i, i % 7)).ToArray();
        Assert.Equal(line, Thinned.To(line, 10));
    }

    [Fact]
    public void Line_WithManyPoints_KeepsItsEndsAndEveryPeak()
    {
        var line = Enumerable.Range(0, 10_000).Select(i => new Coordinates(i, i == 4321 ? 50 : i == 8765 ? -50 : i % 7)).ToArray();
        var thinned = Thinned.To(line, 100);
        Assert.InRange(thinned.Length, 100, 404);
        Assert.Equal((line[0], line[^1]), (thinned[0], thinned[^1]));
        Assert.Contains(line[4321], thinned);
        Assert.Contains(line[8765], thinned);
        Assert.Equal(thinned.OrderBy(at => at.X), thinned);
    }
}

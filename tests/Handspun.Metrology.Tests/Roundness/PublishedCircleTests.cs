using System.Text.Json;
using Handspun.Metrology.Roundness;

namespace Handspun.Metrology.Tests.Roundness;

/// <summary>
/// Against circle-sets.json: Gander, Golub, Strebel (BIT 34, 1994); Coope (JOTA 76, 1993); SciPy Cookbook; Apache Commons
/// Math; points published with a paper on the roundness of train axles (2023). Results worked out again elsewhere.
/// </summary>
public class PublishedCircleTests
{
    public static TheoryData<string> All => [.. CircleSets.Names];

    public static TheoryData<string> Closed => [.. CircleSets.Names.Where(name => !CircleSets.Of(name).GetProperty("open_arc").GetBoolean())];

    public static TheoryData<string> Open => [.. CircleSets.Names.Where(name => CircleSets.Of(name).GetProperty("open_arc").GetBoolean())];

    [Theory]
    [MemberData(nameof(All))]
    public void LeastSquares_OfAPublishedSet_IsTheKnownCircle(string name)
    {
        var (circle, expected) = (Measure(name).LeastSquares!, Expected(name, "least_squares"));
        var tolerance = 1e-9 * expected.GetProperty("r").GetDouble();
        Near(expected, circle, tolerance);
        Assert.Equal(expected.GetProperty("r").GetDouble(), circle.Radius.Millimetres, tolerance);
        Assert.Equal(expected.GetProperty("peak").GetDouble(), circle.Peak.Millimetres, tolerance);
        Assert.Equal(expected.GetProperty("valley").GetDouble(), circle.Valley.Millimetres, tolerance);
        Assert.Equal(expected.GetProperty("roundness").GetDouble(), circle.PeakToValley.Millimetres, tolerance);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void MinimumZone_OfAPublishedSet_IsTheKnownOneOnItsControlPoints(string name)
    {
        var (circle, expected) = (Measure(name).MinimumZone!, Expected(name, "min_zone"));
        var (inner, outer) = (expected.GetProperty("r_inner").GetDouble(), expected.GetProperty("r_outer").GetDouble());
        Near(expected, circle, 1e-9 * outer);
        Assert.Equal(expected.GetProperty("zone").GetDouble(), circle.PeakToValley.Millimetres, 1e-9 * outer);
        Assert.Equal(outer, (circle.Radius + circle.Peak).Millimetres, 1e-9 * outer);
        Assert.Equal(inner, (circle.Radius - circle.Valley).Millimetres, 1e-9 * outer);
        Assert.Equal(Indices(expected, "outer"), circle.Outer.Select(point => point.Index!.Value));
        Assert.Equal(Indices(expected, "inner"), circle.Inner.Select(point => point.Index!.Value));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void MinimumCircumscribed_OfAPublishedSet_IsTheKnownCircle(string name) =>
        Single(Measure(name).MinimumCircumscribed!, Expected(name, "min_circumscribed"));

    [Theory]
    [MemberData(nameof(Closed))]
    public void MaximumInscribed_OfAPublishedSet_IsTheKnownCircle(string name) =>
        Single(Measure(name).MaximumInscribed!, Expected(name, "max_inscribed"));

    [Theory]
    [MemberData(nameof(Open))]
    public void MaximumInscribed_OfAnOpenArc_IsNotGiven(string name) => Assert.Null(Measure(name).MaximumInscribed);

    // As printed: Gander, Golub, Strebel (from memory), Coope (from memory), SciPy Cookbook, Commons Math (its own test asks 1e-6).
    [Theory]
    [InlineData("gander-golub-strebel-1994", 4.7398, 2.9835, 4.7142, 5e-5)]
    [InlineData("coope-1993", 3.04324, 0.74568, 4.10586, 5e-6)]
    [InlineData("scipy-cookbook-6", 10.50009, 9.65995, 23.33353, 5e-6)]
    [InlineData("commons-math-5", 96.07590211815305, 48.13516790438953, 69.96016176931406, 1e-6)]
    [InlineData("commons-math-87", -0.1517383071957963, 0.2074999736353867, 0.292235, 1e-6)]
    public void LeastSquares_OfAPublishedSet_IsAsPrinted(string name, double x, double y, double radius, double tolerance)
    {
        var circle = Measure(name).LeastSquares!;
        Assert.Equal(x, circle.CentreX.Millimetres, tolerance);
        Assert.Equal(y, circle.CentreY.Millimetres, tolerance);
        Assert.Equal(radius, circle.Radius.Millimetres, tolerance);
    }

    private static RoundnessResult Measure(string name)
    {
        var (x, y) = CircleSets.Points(name);
        return RoundnessMethod.OfPoints(x, y);
    }

    private static JsonElement Expected(string name, string circle) => CircleSets.Of(name).GetProperty("recomputed").GetProperty(circle);

    private static int[] Indices(JsonElement expected, string side) =>
        [.. expected.GetProperty("control_points").GetProperty(side).EnumerateArray().Select(index => index.GetInt32())];

    private static void Near(JsonElement expected, ReferenceCircle circle, double tolerance)
    {
        Assert.Equal(expected.GetProperty("xc").GetDouble(), circle.CentreX.Millimetres, tolerance);
        Assert.Equal(expected.GetProperty("yc").GetDouble(), circle.CentreY.Millimetres, tolerance);
    }

    private static void Single(ReferenceCircle circle, JsonElement expected)
    {
        var radius = expected.GetProperty("r").GetDouble();
        Near(expected, circle, 1e-9 * radius);
        Assert.Equal(radius, circle.Radius.Millimetres, 1e-9 * radius);
        Assert.Equal(expected.GetProperty("roundness_from_this_centre").GetDouble(), circle.PeakToValley.Millimetres, 1e-9 * radius);
    }
}

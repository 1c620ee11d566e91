using CsCheck;
using Handspun.Pictures.Runout;

namespace Handspun.Pictures.Tests.Runout;

public sealed class SmoothRiseTests
{
    [Fact]
    public void Curve_ThroughValuesThatDoNotFall_DoesNotFallEither() => Gen.Double[0, 50].Array[2, 30].Sample(steps =>
    {
        var seconds = Enumerable.Range(0, steps.Length).Select(i => i * 0.1).ToArray();
        var values = steps.Select((_, i) => steps.Take(i + 1).Sum(step => Math.Floor(step))).ToArray();   // whole steps, many of them none
        var curve = Enumerable.Range(0, steps.Length - 1)
            .SelectMany(i => Enumerable.Range(0, 10).Select(tenth => SmoothRise.At(seconds, values, i, tenth / 10.0)))
            .ToArray();
        Assert.All(curve.Zip(curve.Skip(1)), pair => Assert.True(pair.Second >= pair.First - 1e-9));
        Assert.Equal(values[0], curve[0]);
    });

    [Fact]
    public void Curve_ThroughAStraightLine_IsTheLine()
    {
        double[] seconds = [0, 1, 3, 4];
        double[] values = [10, 20, 40, 50];
        Assert.Equal(25, SmoothRise.At(seconds, values, 1, 0.25), 1e-12);
    }

    [Fact]
    public void Curve_BesideAValueThatIsNotKnown_IsNotKnown() =>
        Assert.True(double.IsNaN(SmoothRise.At([0, 1, 2], [0, double.NaN, 20], 0, 0.5)));
}

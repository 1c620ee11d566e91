using CsCheck;
using Handspun.Jobs.Comparing;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;

namespace Handspun.Jobs.Tests.Comparing;

public sealed class RecordDifferenceTests
{
    [Fact]
    public void Difference_OfTwoRunouts_HasBothUncertaintiesInQuadrature()
    {
        // 3 and 4 make 5 (Pythagoras); quadrature by JCGM 100:2008, 5.1.2, from memory.
        var difference = RecordDifference.Of(Runout(0.050, 0.003), Runout(0.062, 0.004))!;

        Assert.Equal(0.012, difference.Value.Millimetres, 1e-12);
        Assert.Equal(0.005, difference.U95.Millimetres, 1e-12);
        Assert.True(difference.IsTold);
        Assert.Equal("B is 0.012 mm ± 0.005 mm larger than A: more than both can be wrong by.", difference.InWords(LengthUnit.Millimetre, "A", "B"));
    }

    [Theory]
    [InlineData(0.054, "0.004 mm")]
    [InlineData(0.046, "0.004 mm")]
    [InlineData(0.050, "0.000 mm")]
    public void Difference_WithinTheUncertainty_IsSaidToShowNothing(double second, string apart)
    {
        var difference = RecordDifference.Of(Runout(0.050, 0.003), Runout(second, 0.004))!;

        Assert.False(difference.IsTold);
        Assert.Equal(
            $"A and B differ by {apart}. That is no more than the ± 0.005 mm to which both together can tell: it shows no difference, and does not prove that there is none.",
            difference.InWords(LengthUnit.Millimetre, "A", "B"));
    }

    // Against random numbers rather than our own formula: two results of one true value come out further apart than U95 about once in twenty-two times (2 sigma of a normal, 4.6 %).
    [Fact]
    public void Difference_OfResultsOfOneTruth_IsToldAboutAsOftenAsTwoSigmaSays()
    {
        var random = new Random(7);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var told = Enumerable.Range(0, 20_000).Count(_ => RecordDifference.Of(Runout(1 + 0.0015 * Normal(), 0.003), Runout(1 + 0.002 * Normal(), 0.004))!.IsTold);

        Assert.InRange(told / 20_000.0, 0.041, 0.050);
    }

    [Fact]
    public void Difference_OfTwoDifferentThings_IsRefusedWithTheReason()
    {
        var (runout, play) = (Runout(0.05, 0.003), new MeasuredAt("cam-end-play", "Cam end play", PointKind.EndPlay, new EndPlayFigures { EndPlayMillimetres = 0.2, EndPlayU95Millimetres = 0.01 }));

        Assert.Null(RecordDifference.Of(runout, play));
        Assert.Equal("'Pinion shaft runout' and 'Cam end play' are two different things: look at both, but do not subtract them.", RecordDifference.Reason(runout, play));
    }

    [Fact]
    public void Difference_WithASpinThatGaveNothing_IsRefusedWithTheReason()
    {
        var nothing = Runout(0.05, 0.003) with { Figures = new RunoutFigures() };

        Assert.Null(RecordDifference.Of(Runout(0.05, 0.003), nothing));
        Assert.Contains("no single length", RecordDifference.Reason(Runout(0.05, 0.003), nothing), StringComparison.Ordinal);
    }

    // Two deviations from zeros that nobody knows are no sizes.
    [Fact]
    public void Difference_OfBoresWithoutASetting_IsRefusedWithTheReason()
    {
        var bore = new MeasuredAt("lifter-bore-front-intake", "Lifter bore", PointKind.Bore, new BoreFigures { DeviationMillimetres = 0.01, DeviationU95Millimetres = 0.002 });

        Assert.Null(RecordDifference.Of(bore, bore));
        Assert.Contains("type the size of the ring", RecordDifference.Reason(bore, bore), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("index", "index", null)]
    [InlineData("index", "mark", "different zeros")]
    [InlineData("first-reading", "first-reading", "elsewhere each time")]
    [InlineData("mark", "first-reading", "elsewhere each time")]
    public void HighSpots_AreHeldAgainstEachOther_OnlyFromOneZero(string zero, string other, string? reason)
    {
        var (first, second) = (new RunoutFigures { AngleReference = zero, HighSpotDegrees = 10 }, new RunoutFigures { AngleReference = other, HighSpotDegrees = 90 });

        Assert.Contains(reason ?? "", RecordDifference.AnglesReason(first, second) ?? "", StringComparison.Ordinal);
        Assert.Equal(reason is null, RecordDifference.AnglesReason(first, second) is null);
    }

    [Fact]
    public void Difference_TheOtherWayRound_IsTheSameWithTheOtherSign() =>
        Gen.Select(Gen.Double[0.001, 1], Gen.Double[0.001, 1], Gen.Double[1e-4, 0.1], Gen.Double[1e-4, 0.1]).Sample((a, b, ua, ub) =>
        {
            var (there, back) = (RecordDifference.Of(Runout(a, ua), Runout(b, ub))!, RecordDifference.Of(Runout(b, ub), Runout(a, ua))!);
            Assert.Equal(there.Value.Millimetres, -back.Value.Millimetres, 1e-15);
            Assert.Equal(there.IsTold, back.IsTold);
        });

    // A needle at the other end shows the same sort of length; another gap read by hand does not.
    [Fact]
    public void Lengths_OfTheSameSort_AreSubtracted_HoweverTheyWereRead()
    {
        var needle = new HandFigures { Named = "Drive-side shaft runout", LengthMillimetres = 0.08, LengthU95Millimetres = 0.01, Way = "needle", Typed = "", ReadBy = "A. Nobody" };

        Assert.Equal(0.03, RecordDifference.Of(Runout(0.05, 0.003), new("drive-side-runout", "Drive-side shaft runout", PointKind.Runout, needle))!.Value.Millimetres, 1e-12);
        Assert.Null(RecordDifference.Of(new("a", "A", PointKind.ByHand, needle), new("b", "B", PointKind.ByHand, needle)));
        Assert.NotNull(RecordDifference.Of(new("a", "A", PointKind.ByHand, needle), new("a", "A", PointKind.ByHand, needle)));
    }

    private static MeasuredAt Runout(double tir, double u95) =>
        new("pinion-runout", "Pinion shaft runout", PointKind.Runout, new RunoutFigures { TirMillimetres = tir, TirU95Millimetres = u95 });
}

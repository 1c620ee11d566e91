using Handspun.Metrology.EndPlay;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Tests.EndPlay;

public class EndPlayMethodTests
{
    private static readonly double[] ThreeCycles = [0.1, 0.35, 0.1, 0.35, 0.1, 0.35];

    // Closed form: two flat plateaus a quarter of a millimetre apart.
    [Fact]
    public void EndPlay_OfFlatPlateaus_IsTheirDistance()
    {
        var result = PushPulls.Measure(PushPulls.Of(ThreeCycles));

        Assert.Equal(EndPlayStatus.Measured, result.Status);
        Assert.Equal(0.25, result.EndPlay!.Value.Millimetres, 1e-4);
        Assert.Equal(3, result.Cycles);
        Assert.True(result.HasEnough);
        Assert.Equal(6, result.Holds.Count);
        Assert.All(result.ByCycleMillimetres, cycle => Assert.Equal(0.25, cycle, 1e-4));
        Assert.InRange(result.Spread!.Value.Millimetres, 0, 1e-4);
        Assert.Null(result.Missing);
        Assert.Empty(result.Warnings);
    }

    [Fact]
    public void EndPlay_UnderALinearDrift_IsUnchanged()
    {
        var result = PushPulls.Measure(PushPulls.Of(ThreeCycles, more: i => 0.00008 * i));   // 20 µm over the capture

        Assert.Equal(0.25, result.EndPlay!.Value.Millimetres, 5e-4);
        Assert.True(Math.Abs(result.EndPlay.Value.Millimetres - 0.25) <= result.EndPlayU95!.Value.Millimetres);
    }

    // A quarter of the way, in steps of ten micrometres, with no noise at all: nothing can tell where in its step a stop lies.
    // Two rectangles one step wide make a triangle of standard deviation step / √6 (JCGM 100:2008, 4.3.9, F.2.2.1).
    [Fact]
    public void Uncertainty_OfACoarseGaugeWithoutNoise_IsThatOfTwoRectangles()
    {
        var result = PushPulls.Measure(PushPulls.Of([0.1, 0.35, 0.1, 0.35, 0.1, 0.35, 0.1, 0.35], step: 0.01), step: 0.01);

        Assert.Equal(0.25, result.EndPlay!.Value.Millimetres, 1e-3);
        Assert.InRange(result.EndPlayU95!.Value.Millimetres, 2 * 0.7 * 0.01 / Math.Sqrt(6), 2 * 1.3 * 0.01 / Math.Sqrt(6));
        Assert.True(result.Budget!.Value.Resolution > result.Budget.Value.Fit);
    }

    [Fact]
    public void EndPlay_WithAKnockAndAShortStroke_LeavesBothOut()
    {
        double[] levels = [0.1, 0.35, 0.1, 0.28, 0.1, 0.35, 0.1, 0.35];
        var capture = PushPulls.Of(levels);
        capture.Millimetres[60] += 0.2;

        var result = PushPulls.Measure(capture);

        Assert.Equal(0.25, result.EndPlay!.Value.Millimetres, 5e-4);
        Assert.Contains(60, result.Knocks);
        Assert.False(result.Holds[3].Counts);
        Assert.Contains(EndPlayWarning.StopMissed, result.Warnings);
    }

    [Fact]
    public void EndPlay_OfAnOngoingCapture_SaysHowManyCyclesItHas()
    {
        var (seconds, millimetres) = PushPulls.Of([0.1, 0.35, 0.1, 0.35, 0.1, 0.35, 0.1, 0.35, 0.1, 0.35]);
        int[] cycles = [.. new[] { 20, 120, 200, seconds.Length }
            .Select(count => EndPlayMethod.Measure(seconds.AsSpan(0, count), millimetres.AsSpan(0, count), new GaugeTraits(), new EndPlaySettings()).Cycles)];

        Assert.Equal([0, 1, 2, 5], cycles);
    }

    [Fact]
    public void EndPlay_WithTheGaugesErrorLimit_CarriesItsRectangle()
    {
        var (seconds, millimetres) = PushPulls.Of(ThreeCycles);
        var bare = PushPulls.Measure((seconds, millimetres));
        var limited = EndPlayMethod.Measure(seconds, millimetres, new GaugeTraits { ErrorLimit = Length.FromMillimetres(0.003), Resolution = Length.FromMillimetres(0.001), PlungerLeanDegrees = 10 }, new EndPlaySettings());

        Assert.Equal(0.003 / Math.Sqrt(3), limited.Budget!.Value.GaugeError, 1e-12);   // JCGM 100:2008, 4.3.7

        // Table of indicator lean, cosine of 10 degrees: 0.984807753.
        Assert.Equal(limited.EndPlay!.Value.Millimetres * (1 - 0.984807753) / Math.Sqrt(3), limited.Budget.Value.Alignment, 1e-9);
        Assert.True(limited.EndPlayU95 > bare.EndPlayU95);
    }

    [Fact]
    public void EndPlay_AfterThePlungerStoodSomewhereElse_IsUnmoved()
    {
        var (seconds, millimetres) = PushPulls.Of(ThreeCycles);
        double[] before = [.. Enumerable.Repeat(1.2, 60)];

        var result = PushPulls.Measure(([.. before.Select((_, i) => i / 50.0), .. seconds.Select(time => time + 1.2)], [.. before, .. millimetres]));

        Assert.Equal(0.25, result.EndPlay!.Value.Millimetres, 5e-4);
        Assert.Equal(3, result.Cycles);
        Assert.True(result.Holds[0].FirstReading >= 60);
        Assert.True(result.Holds[0].Seconds > 1.2);
    }

    [Theory]
    [InlineData(new[] { 0.1 }, "do not move")]
    [InlineData(new[] { 0.1, 0.35 }, "seen once")]
    [InlineData(new[] { 0.1, 0.35, 0.17, 0.35, 0.24, 0.35, 0.05, 0.35 }, "not a stop")]
    public void PushPull_WithoutBothStops_SaysWhatToDo(double[] levels, string words)
    {
        var result = PushPulls.Measure(PushPulls.Of(levels));

        Assert.Equal(EndPlayStatus.TooShort, result.Status);
        Assert.Contains(words, result.Missing, StringComparison.Ordinal);
        Assert.Null(result.EndPlay);
    }

    [Fact]
    public void PushPull_HeldAtOneStopOnly_SaysSo()
    {
        // Pushed to the stop and let slide back slowly, again and again.
        double[] values = [.. Enumerable.Range(0, 600).Select(i => i % 100 < 50 ? 0.4 : 0.4 - 0.2 * Math.Abs(Math.Sin(Math.PI * (i % 100 - 50) / 50.0)))];

        var result = PushPulls.Measure(([.. values.Select((_, i) => i / 50.0)], values));

        Assert.Equal(EndPlayStatus.TooShort, result.Status);
        Assert.NotNull(result.Missing);
    }

    [Fact]
    public void PushPull_ThatOnlyTurnsLikeARunout_HasNoStops()
    {
        double[] values = [.. Enumerable.Range(0, 800).Select(i => Math.Round(0.1 * Math.Sin(i * 0.04), 3))];

        Assert.Equal(EndPlayStatus.TooShort, PushPulls.Measure(([.. values.Select((_, i) => i / 50.0)], values)).Status);
    }

    [Fact]
    public void PushPull_WithBadNumbers_IsRejectedWithASentence()
    {
        var (seconds, millimetres) = PushPulls.Of(ThreeCycles);
        millimetres[7] = double.NaN;
        Assert.Contains("Reading 8", PushPulls.Measure((seconds, millimetres)).Missing, StringComparison.Ordinal);

        var backwards = PushPulls.Of(ThreeCycles);
        backwards.Seconds[5] = 0;
        Assert.Equal(EndPlayStatus.Rejected, PushPulls.Measure(backwards).Status);
        Assert.Equal(EndPlayStatus.Rejected, PushPulls.Measure(([0, 1], [0.5])).Status);
    }
}

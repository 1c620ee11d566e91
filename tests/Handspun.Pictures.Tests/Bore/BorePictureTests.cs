using Handspun.Jobs.Lengths;
using Handspun.Metrology.Bore;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Pictures.Bore;
using Handspun.Pictures.Page;
using Handspun.Pictures.Tests.Runout;
using Handspun.Simulation;
using Handspun.Simulation.Rock;

namespace Handspun.Pictures.Tests.Bore;

public sealed class BorePictureTests
{
    private static readonly BoreSetting Ring = new(Length.FromMillimetres(21.4), Length.FromMillimetres(0.001), Length.Zero, Length.Zero);

    [Fact]
    public void Picture_OfABore_SaysSizeDoubtAndVerdict()
    {
        var content = Content(Ring);

        Assert.StartsWith($"Bore {LengthText.WithUncertainty(content.Result.Size!.Value, content.Result.SizeU95!.Value, LengthUnit.Millimetre)}. Within the limit", BorePicture.Draw(content).Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Picture_OfADeviation_SaysThatNoLimitIsHeldAgainstIt()
    {
        var content = Content(null) with { Limit = null, Verdict = null };

        Assert.StartsWith("Deviation ", BorePicture.Draw(content).Description, StringComparison.Ordinal);
        Assert.Contains("no limit is held against it", BorePicture.Draw(content).Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Picture_OfABore_ShowsReadingsTurningPointsAndTheLimit()
    {
        using var pixels = Pixels.Of(BorePicture.Draw(Content(Ring)).ToPng(960, 760));

        Assert.True(Pixels.Count(pixels, Pixels.All(pixels), Pixels.Near(Ink.Readings)) > 200);
        Assert.True(Pixels.Count(pixels, Pixels.All(pixels), Pixels.Near(Ink.Profile)) > 200, "the turning points and the size are drawn");
        Assert.True(Pixels.Count(pixels, Pixels.All(pixels), Pixels.Near(Ink.Limit)) > 100);
    }

    [Fact]
    public void Limit_FarFromTheBore_IsNamedAndNotDrawn()
    {
        var far = Content(Ring) with { Limit = Tolerance.Between(Length.FromMillimetres(21.9), Length.FromMillimetres(21.95)), Verdict = Verdict.Over };
        using var pixels = Pixels.Of(BorePicture.Draw(far).ToPng(960, 760));

        Assert.InRange(Pixels.Count(pixels, Pixels.All(pixels), Pixels.Near(Ink.Allowed)), 1, 500);   // the sample in the legend, and no band
        Assert.True(Pixels.Count(pixels, Pixels.All(pixels), Pixels.Near(Ink.Limit)) > 50, "the limit is named");
    }

    [Fact]
    public void Picture_WithoutABore_SaysWhatIsMissing()
    {
        var content = Content(Ring);
        var result = new BoreResult { Status = BoreStatus.TooShort, Readings = content.Seconds.Length, Missing = "No turning point was seen." };

        Assert.Equal("No turning point was seen.", BorePicture.Draw(content with { Result = result, Verdict = null }).Description);
    }

    [Fact]
    public void Picture_OfABody_SaysItsSizeAndPointsToWhereTheReadingTurnsBackFrom()
    {
        var bore = Content(Ring);
        double[] turned = [.. bore.Millimetres.Span.ToArray().Select(value => 0.02 - value)];
        var content = bore with
        {
            Title = "Lifter body, front intake",
            Place = null,
            Millimetres = turned,
            Result = BoreMethod.Measure(bore.Seconds.Span, turned, new GaugeTraits { Resolution = Length.FromMillimetres(0.001) }, new BoreSettings { Setting = Ring, Outside = true }),
        };

        Assert.Equal(21.408, content.Result.Size!.Value.Millimetres, 1e-3);   // 0.02 less 0.012 above the pin
        Assert.StartsWith("Size across 21.4", BorePicture.Draw(content).Description, StringComparison.Ordinal);
        Assert.True(content.TurnsAtTheTop);
        Assert.False((content with { LargerReadsLower = true }).TurnsAtTheTop);
        using var pixels = Pixels.Of(BorePicture.Draw(content).ToPng(960, 760));
        Assert.True(Pixels.Count(pixels, Pixels.All(pixels), Pixels.Near(Ink.Profile)) > 200, "the turning points and the size are drawn");
    }

    internal static BorePictureContent Content(BoreSetting? ring)
    {
        var capture = RockSimulation.Run(21.4, new RockHabits { Cycles = 3 }, new Indicator { RateHz = 50 }, bumps: 0, seed: 3);
        double[] readings = [.. capture.Millimetres.Select(value => value - capture.TrueMillimetres + 0.012)];   // the bore is 0.012 mm larger than the ring
        return new()
        {
            Title = "Lifter bore, front intake",
            Subtitle = "Job 1042",
            Seconds = capture.Seconds,
            Millimetres = readings,
            Result = BoreMethod.Measure(capture.Seconds, readings, new GaugeTraits { Resolution = Length.FromMillimetres(0.001), ErrorLimit = Length.FromMillimetres(0.002) }, new BoreSettings { Setting = ring }),
            Place = "12.0 mm deep, across 3 o'clock",
            Limit = Tolerance.Between(Length.FromMillimetres(21.4), Length.FromMillimetres(21.425)),
            Verdict = Verdict.Within,
            Unit = LengthUnit.Millimetre,
        };
    }
}

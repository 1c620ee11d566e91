using System.Text;
using System.Xml.Linq;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;
using Handspun.Metrology.EndPlay;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Pictures.EndPlay;
using Handspun.Pictures.Page;
using Handspun.Pictures.Tests.Runout;
using Handspun.Simulation;
using Handspun.Simulation.PushPull;

namespace Handspun.Pictures.Tests.EndPlay;

public sealed class EndPlayPictureTests
{
    [Fact]
    public void Picture_OfAnEndPlay_SaysValueDoubtAndVerdict()
    {
        var content = Content();
        var picture = EndPlayPicture.Draw(content);

        Assert.StartsWith($"End play {LengthText.WithUncertainty(content.Result.EndPlay!.Value, content.Result.EndPlayU95!.Value, LengthUnit.Inch)}. Within the limit", picture.Description, StringComparison.Ordinal);
        Assert.Equal("Cam end play. Job 1042", picture.Title);
    }

    [Fact]
    public void Picture_OfAnEndPlay_ShowsReadingsHoldsAndTheLimit()
    {
        using var pixels = Pixels.Of(EndPlayPicture.Draw(Content()).ToPng(960, 760));

        Assert.True(Pixels.Count(pixels, Pixels.All(pixels), Pixels.Near(Ink.Readings)) > 200);
        Assert.True(Pixels.Count(pixels, Pixels.All(pixels), Pixels.Near(Ink.Profile)) > 200, "the holds and the end play are drawn");
        Assert.True(Pixels.Count(pixels, Pixels.All(pixels), Pixels.Near(Ink.Limit)) > 100);
        using var without = Pixels.Of(EndPlayPicture.Draw(Content() with { Limit = null, Verdict = null }).ToPng(960, 760));
        Assert.Equal(0, Pixels.Count(without, Pixels.All(without), Pixels.Near(Ink.Limit)));
    }

    [Fact]
    public void Picture_WithoutAnEndPlay_SaysWhatIsMissingAndShowsTheReadings()
    {
        var content = Content();
        var result = new EndPlayResult { Status = EndPlayStatus.TooShort, Readings = content.Seconds.Length, Missing = "Only one stop was held." };
        var picture = EndPlayPicture.Draw(content with { Result = result, Verdict = null });

        Assert.Equal("Only one stop was held.", picture.Description);
        using var pixels = Pixels.Of(picture.ToPng(960, 520));
        Assert.True(Pixels.Count(pixels, Pixels.All(pixels), Pixels.Near(Ink.Readings)) > 200);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Picture_OfHardlyAnyReadings_IsDrawn(int readings)
    {
        var (seconds, millimetres) = (new double[readings], new double[readings]);
        var content = Content() with { Seconds = seconds, Millimetres = millimetres, Result = new EndPlayResult { Status = EndPlayStatus.TooShort, Readings = readings } };

        Assert.NotEmpty(EndPlayPicture.Draw(content).ToSvg());
    }

    [Fact]
    public void Svg_OfAnEndPlay_IsWellFormedAndNeedsNoFont()
    {
        var root = XDocument.Parse(Encoding.UTF8.GetString(EndPlayPicture.Draw(Content() with { Title = "Cam <end> play & \"more\"" }).ToSvg())).Root!;

        Assert.Empty(root.Descendants(root.Name.Namespace + "text"));
    }

    [Fact]
    public void Content_WhoseResultSpeaksOfOtherReadings_IsRefused() =>
        Assert.Throws<ArgumentException>(() => EndPlayPicture.Draw(Content() with { Seconds = new double[3], Millimetres = new double[3] }));

    internal static EndPlayPictureContent Content()
    {
        var capture = PushPullSimulation.Run(0.12, new PushPullHabits { Cycles = 4, ShortStrokes = 1 }, new Indicator { RateHz = 40, DriftMicrometres = 8 }, bumps: 0, seed: 7);
        var result = EndPlayMethod.Measure(capture.Seconds, capture.Millimetres, new GaugeTraits { Resolution = Length.FromMillimetres(0.001), ErrorLimit = Length.FromMillimetres(0.002) }, new EndPlaySettings());
        return new()
        {
            Title = "Cam end play",
            Subtitle = "Job 1042",
            Seconds = capture.Seconds,
            Millimetres = capture.Millimetres,
            Result = result,
            Limit = Tolerance.Between(Length.FromMillimetres(0.05), Length.FromMillimetres(0.2)),
            Verdict = Verdict.Within,
        };
    }
}

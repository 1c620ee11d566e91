using System.Text;
using System.Xml.Linq;
using Handspun.Jobs.History;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.Standing;
using Handspun.Metrology.Quantities;
using Handspun.Pictures.History;
using Handspun.Pictures.Page;
using Handspun.Pictures.Tests.Runout;

namespace Handspun.Pictures.Tests.History;

public sealed class HistoryPictureTests
{
    private static readonly Limit AtMost = new() { UpperMillimetres = 0.127, Source = "invented" };

    [Fact]
    public void Picture_OfAPointOverTheYears_SaysEachResultAndTheLimitOfToday()
    {
        var picture = HistoryPicture.Draw(Years(0.0254, 0.0508, 0.0762), "2004 Aldermoor Corvid 1200", LengthUnit.Inch);

        Assert.Equal("Pinion shaft runout, 2004 Aldermoor Corvid 1200", picture.Title);
        Assert.Matches("2024 0.0010 in ± .*; .*2025 0.0020 in ± .*; .*2026 0.0030 in ± .*\\. The limit is at most 0.0050 in\\.$", picture.Description);
    }

    // Each result is further right than the one before, and higher where it is larger.
    [Fact]
    public void Picture_OfRisingResults_RisesFromLeftToRight()
    {
        using var rising = Pixels.Of(HistoryPicture.Draw(Years(0.02, 0.11), "bike", LengthUnit.Millimetre).ToPng(960, 330));
        using var falling = Pixels.Of(HistoryPicture.Draw(Years(0.11, 0.02), "bike", LengthUnit.Millimetre).ToPng(960, 330));

        static bool Line(SkiaSharp.SKColor pixel) => Pixels.Near(Ink.Readings)(pixel);
        static double Slope(SkiaSharp.SKBitmap picture)
        {
            var places = Enumerable.Range(0, picture.Width * picture.Height).Select(i => (X: i % picture.Width, Y: i / picture.Width)).Where(at => Line(picture.GetPixel(at.X, at.Y))).ToList();
            var middle = places.Average(at => at.X);
            return places.Where(at => at.X > middle).Average(at => at.Y) - places.Where(at => at.X <= middle).Average(at => at.Y);
        }

        Assert.True(Slope(rising) < -20, "up is less");
        Assert.True(Slope(falling) > 20);
    }

    [Fact]
    public void Picture_WithALimit_HasItsBand_AndWithoutOneHasNone()
    {
        using var with = Pixels.Of(HistoryPicture.Draw(Years(0.05, 0.06), "bike", LengthUnit.Inch).ToPng(960, 330));
        using var without = Pixels.Of(HistoryPicture.Draw(Years(null, 0.05, 0.06), "bike", LengthUnit.Inch).ToPng(960, 330));

        Assert.True(Pixels.Count(with, Pixels.All(with), Pixels.Near(Ink.Allowed)) > 2000);
        Assert.Equal(0, Pixels.Count(without, Pixels.All(without), Pixels.Near(Ink.Allowed)));
    }

    [Fact]
    public void Picture_OfASingleResult_IsDrawn_AndOfNoneIsRefused()
    {
        var root = XDocument.Parse(Encoding.UTF8.GetString(HistoryPicture.Draw(Years(0.05), "bike <&> \"more\"", LengthUnit.Inch).ToSvg())).Root!;

        Assert.Empty(root.Descendants(root.Name.Namespace + "text"));   // letters are shapes, so that no font is needed
        Assert.Throws<ArgumentException>(() => HistoryPicture.Draw(Years(), "bike", LengthUnit.Inch));
    }

    [Fact]
    public void Spread_OfAKind_SaysWhereThisBikeLies_AndMarksItThere()
    {
        double[] others = [0.02, 0.03, 0.04, 0.05, 0.06];
        var low = SpreadPicture.Draw(KindSpread.Of(Length.FromMillimetres(0.021), others)!, "Pinion shaft runout, Aldermoor Corvid 1200", LengthUnit.Millimetre);
        var high = SpreadPicture.Draw(KindSpread.Of(Length.FromMillimetres(0.059), others)!, "Pinion shaft runout, Aldermoor Corvid 1200", LengthUnit.Millimetre);

        Assert.StartsWith("5 other bikes: half of them at most 0.040 mm, the middle half 0.030 mm to 0.050 mm. 1 lie below this one, 4 above.", low.Description, StringComparison.Ordinal);
        using var left = Pixels.Of(low.ToPng(960, 300));
        using var right = Pixels.Of(high.ToPng(960, 300));
        Assert.True(Pixels.Middle(left, Pixels.Near(Ink.Profile)).X + 300 < Pixels.Middle(right, Pixels.Near(Ink.Profile)).X, "this bike is not marked where it lies");
        Assert.True(Pixels.Count(left, Pixels.All(left), Pixels.Near(Ink.Ring)) > 2000, "the other bikes are not drawn");
    }

    [Fact]
    public void Spread_OfBikesThatAreAllAlike_IsDrawn() =>
        Assert.NotEmpty(SpreadPicture.Draw(KindSpread.Of(Length.FromMillimetres(0.05), Enumerable.Repeat(0.05, 400))!, "alike", LengthUnit.Inch).ToSvg());

    private static PointHistory Years(params double[] millimetres) => Years(AtMost, millimetres);

    // A result a year, the last in 2026.
    private static PointHistory Years(Limit? limit, params double[] millimetres) => new(
        "pinion-runout",
        "Pinion shaft runout",
        [.. millimetres.Select((value, i) => new PastResult($"2026-000{i + 1}", StandingVerdict.Of(Measured(limit, value, new DateTimeOffset(2026 - millimetres.Length + 1 + i, 6, 14, 9, 0, 0, TimeSpan.Zero)))))]);

    private static JobPoint Measured(Limit? limit, double millimetres, DateTimeOffset at)
    {
        var point = new JobPoint { Code = "pinion-runout", Title = "Pinion shaft runout", Limit = limit };
        point.Records.Add(new()
        {
            Id = "a",
            At = at,
            Seconds = 12,
            Ending = CaptureEnding.Enough,
            Status = RecordStatus.Complete,
            Gauge = new() { Name = "pinion", Profile = "bench", Port = "" },
            Figures = new RunoutFigures { Readings = 380, Turns = 3.2, TirMillimetres = millimetres, TirU95Millimetres = 0.005 },
        });
        return point;
    }
}

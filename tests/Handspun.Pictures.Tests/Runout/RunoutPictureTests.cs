using System.Text;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Metrology.Runout.Faults;
using Handspun.Pictures.Page;
using Handspun.Pictures.Runout;
using SkiaSharp;

namespace Handspun.Pictures.Tests.Runout;

public sealed class RunoutPictureTests
{
    [Theory]
    [InlineData(960, 760)]
    [InlineData(1920, 1080)]
    [InlineData(700, 1200)]
    [InlineData(240, 200)]
    public void Png_OfAnySize_HasThatSize(int width, int height)
    {
        using var picture = Pixels.Of(RunoutPicture.Draw(new InventedRecord().Content()).ToPng(width, height));
        Assert.Equal((width, height), (picture.Width, picture.Height));
        Assert.True(Pixels.Inked(picture, Pixels.All(picture)) > 50);
    }

    [Theory]
    [InlineData(99, 500)]
    [InlineData(500, 10_001)]
    public void Png_OfAnUnreasonableSize_IsRefused(int width, int height) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RunoutPicture.Draw(new InventedRecord().Content()).ToPng(width, height));

    [Fact]
    public void Title_OfARecord_IsDrawnInLetters()
    {
        var picture = RunoutPicture.Draw(new InventedRecord { Title = "Pinion shaft runout" }.Content());
        using var titled = Pixels.Of(picture.ToPng(picture.Width, picture.Height));
        using var untitled = Pixels.Of(RunoutPicture.Draw(new InventedRecord { Title = "" }.Content()).ToPng(picture.Width, picture.Height));
        var heading = new SKRectI(16, 16, 300, 48);
        Assert.True(Pixels.Inked(titled, heading) > 600);
        Assert.Equal(0, Pixels.Inked(untitled, heading));
    }

    [Fact]
    public void Limit_OfARecord_IsDrawnAsABand()
    {
        using var limited = Drawn(new InventedRecord());
        using var free = Drawn(new InventedRecord { Limit = null, Verdict = null });
        Assert.True(Pixels.Count(limited, Pixels.All(limited), Pixels.Near(Ink.Allowed)) > 40_000);
        Assert.True(Pixels.Count(free, Pixels.All(free), Pixels.Near(Ink.Allowed)) < 200);   // a few edges of letters blend to it
    }

    [Fact]
    public void Knock_ThatWasLeftOut_HasItsOwnMarker()
    {
        using var knocked = Drawn(new InventedRecord { Knocks = [(0.5, 0.03)] });
        using var far = Drawn(new InventedRecord { Knocks = [(0.5, 3.0)] });
        using var calm = Drawn(new InventedRecord());
        Assert.True(Pixels.Count(knocked, Pixels.All(knocked), Pixels.Near(Ink.LeftOut)) > 20);
        Assert.True(Pixels.Count(far, Pixels.All(far), Pixels.Near(Ink.LeftOut)) > 20);
        Assert.Equal(0, Pixels.Count(calm, Pixels.All(calm), Pixels.Near(Ink.LeftOut)));
    }

    [Theory]
    [InlineData(30)]
    [InlineData(250)]
    public void LocalFault_OfARecord_IsAHeavyArcOnTheRimWhereItStands(double degrees)
    {
        using var marked = Drawn(new InventedRecord { Faults = [Fault(degrees, 0.02)] });
        using var opposite = Drawn(new InventedRecord { Faults = [Fault(70, 0.02), Fault(250, 0.02)] });   // the circle's middle is between these
        using var free = Drawn(new InventedRecord());

        Assert.Equal(0, Pixels.Count(free, Pixels.All(free), Pixels.Near(Ink.LeftOut)));
        Assert.InRange(Pixels.Count(marked, Pixels.All(marked), Pixels.Near(Ink.LeftOut)), 40, 400);
        var (arc, middle) = (Pixels.Middle(marked, Pixels.Near(Ink.LeftOut)), Pixels.Middle(opposite, Pixels.Near(Ink.LeftOut)));
        Assert.Equal(degrees, (Math.Atan2(arc.X - middle.X, middle.Y - arc.Y) * 180 / Math.PI + 360) % 360, tolerance: 3);
    }

    [Fact]
    public void LocalFaults_InWords_SayHowHighWhereAndWhatToDo_TheFirstFewOfThem()
    {
        var words = FaultMarks.InWords([Fault(202, 0.0214), Fault(10, -0.005), Fault(20, 0.01), Fault(30, 0.01), Fault(40, 0.01), Fault(50, 0.01)], LengthUnit.Millimetre).ToList();

        Assert.Equal(5, words.Count);
        Assert.StartsWith("Heavy arc at 202°: 0.021 mm high, 6° wide, on 2 of 3 turns. A narrow raised place", words[0], StringComparison.Ordinal);
        Assert.StartsWith("Heavy arc at 10°: 0.005 mm deep", words[1], StringComparison.Ordinal);
        Assert.Equal("2 more heavy arcs: the record lists them.", words[4]);
    }

    [Fact]
    public void Verdicts_ThatDiffer_AreTwoDifferentPictures()
    {
        var pictures = Enum.GetValues<Verdict>().Select(verdict => Convert.ToHexString(
            RunoutPicture.Draw(new InventedRecord { Verdict = verdict }.Content()).ToPng(960, 760)));
        Assert.Equal(3, pictures.Distinct().Count());
    }

    [Theory]
    [InlineData(LengthUnit.Inch, "TIR 0.0022 in ± 0.0002 in. Within the limit of 0.0030 in. The high spot 148° ± 3° from the index.")]   // 0.003 mm is 0.00012 in: rounded up
    [InlineData(LengthUnit.Millimetre, "TIR 0.055 mm ± 0.003 mm. Within the limit of 0.076 mm. The high spot 148° ± 3° from the index.")]
    public void Description_OfARecord_SaysTheResultInTheUnitShown(LengthUnit unit, string description) =>
        Assert.Equal(description, RunoutPicture.Draw(new InventedRecord { Unit = unit }.Content()).Description);

    [Theory]
    [InlineData(RunoutStatus.TooShort)]
    [InlineData(RunoutStatus.Rejected)]
    public void Record_WithoutARunout_ShowsItsReadingsAndSaysWhatIsMissing(RunoutStatus status)
    {
        var picture = RunoutPicture.Draw(new InventedRecord { Readings = 80, Turns = 0.6 }.WithoutRunout(status, "Turn the shaft once more."));
        using var drawn = Pixels.Of(picture.ToPng(picture.Width, picture.Height));
        Assert.Equal("Turn the shaft once more.", picture.Description);
        Assert.True(Pixels.Inked(drawn, new(16, 84, 300, 106)) > 300);
        Assert.True(Pixels.Count(drawn, Pixels.All(drawn), Pixels.Near(Ink.Readings)) > 200);
        Assert.Equal(0, Pixels.Count(drawn, Pixels.All(drawn), Pixels.Near(Ink.Profile)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Record_WithHardlyAReading_IsStillAPicture(int readings)
    {
        var picture = RunoutPicture.Draw(new InventedRecord { Readings = readings }.WithoutRunout(RunoutStatus.Rejected, "There is nothing to measure."));
        using var drawn = Pixels.Of(picture.ToPng(picture.Width, picture.Height));
        Assert.True(Pixels.Inked(drawn, Pixels.All(drawn)) > 300);
    }

    [Fact]
    public void Shaft_WithNoRunoutAtAll_IsStillAPicture()
    {
        var picture = RunoutPicture.Draw(new InventedRecord { Harmonics = [], NoiseMillimetres = 0, DriftMillimetres = 0 }.Content());
        Assert.DoesNotContain("NaN", Encoding.UTF8.GetString(picture.ToSvg()), StringComparison.Ordinal);
        using var drawn = Pixels.Of(picture.ToPng(picture.Width, picture.Height));
        Assert.True(Pixels.Count(drawn, Pixels.All(drawn), Pixels.Near(Ink.Profile)) > 500);
    }

    [Fact]
    public void Readings_ThatAreNotNumbers_AreLeftAway()
    {
        var content = new InventedRecord().Content();
        var millimetres = content.Millimetres.ToArray();
        (millimetres[100], millimetres[101], millimetres[102]) = (double.NaN, double.PositiveInfinity, double.NegativeInfinity);
        using var drawn = Pixels.Of(RunoutPicture.Draw(content with { Millimetres = millimetres }).ToPng(960, 760));
        Assert.True(Pixels.Count(drawn, Pixels.All(drawn), Pixels.Near(Ink.Profile)) > 500);
    }

    [Fact]
    public void Content_WhosePartsDoNotBelongTogether_IsRefused()
    {
        var content = new InventedRecord().Content();
        Assert.Throws<ArgumentException>(() => RunoutPicture.Draw(content with { Seconds = content.Seconds[1..] }));
        Assert.Throws<ArgumentException>(() => RunoutPicture.Draw(content with { Result = content.Result with { AngleDegrees = [1, 2] } }));
        Assert.Throws<ArgumentException>(() => RunoutPicture.Draw(content with { Result = content.Result with { DriftMillimetres = [0] } }));
        Assert.Throws<ArgumentException>(() => RunoutPicture.Draw(content with { Result = content.Result with { Profile = null } }));
        Assert.Throws<ArgumentException>(() => RunoutPicture.Draw(
            content with { Result = content.Result with { Rejected = [new(content.Seconds.Length, RejectionReason.Knock)] } }));
    }

    [Fact]
    public async Task Pictures_DrawnAtOnce_AreTheSameAsDrawnAlone()
    {
        InventedRecord[] records =
        [
            new(),
            new() { Unit = LengthUnit.Millimetre, Limit = Tolerance.AtMost(Length.FromMillimetres(0.03)), Verdict = Verdict.Over },
            new() { Readings = 1500, Turns = 9.7 },
        ];
        var alone = records.Select(Both).ToArray();
        var together = await Task.WhenAll(Enumerable.Range(0, 24).Select(i => Task.Run(() => Both(records[i % records.Length]))));
        Assert.All(together.Select((picture, i) => (picture, i)), drawn => Assert.Equal(alone[drawn.i % records.Length], drawn.picture));
    }

    private static LocalFault Fault(double degrees, double height) => new(
        height > 0 ? LocalFaultKind.Raised : LocalFaultKind.Scratch, Angle.FromDegrees(degrees), 6.4, Length.FromMillimetres(height), Length.FromMillimetres(0.001), 2, 3);

    private static string Both(InventedRecord record)
    {
        var picture = RunoutPicture.Draw(record.Content());
        return Convert.ToHexString(picture.ToPng(480, 400)) + Convert.ToHexString(picture.ToSvg());
    }

    private static SKBitmap Drawn(InventedRecord record)
    {
        var picture = RunoutPicture.Draw(record.Content());
        return Pixels.Of(picture.ToPng(picture.Width, picture.Height));
    }
}

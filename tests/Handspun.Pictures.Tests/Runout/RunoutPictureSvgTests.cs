using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Handspun.Pictures.Page;
using Handspun.Pictures.Runout;

namespace Handspun.Pictures.Tests.Runout;

public sealed class RunoutPictureSvgTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Svg_OfARecord_SaysItsSizeAndWhatItShows()
    {
        var picture = RunoutPicture.Draw(new InventedRecord().Content());
        var root = Parsed(picture);
        Assert.Equal(Svg + "svg", root.Name);
        Assert.Equal($"0 0 {picture.Width} {picture.Height}", root.Attribute("viewBox")!.Value);
        Assert.Equal(picture.Title, root.Element(Svg + "title")!.Value);
        Assert.Equal(picture.Description, root.Element(Svg + "desc")!.Value);
    }

    [Fact]
    public void Letters_OfAnSvg_AreOutlinesThatNeedNoFont()
    {
        var root = Parsed(RunoutPicture.Draw(new InventedRecord { Title = "Zz" }.Content()));
        Assert.Empty(root.Descendants(Svg + "text"));
        Assert.DoesNotContain(root.Descendants().Attributes(), attribute => attribute.Name.LocalName.StartsWith("font", StringComparison.Ordinal));
        var outlines = root.Element(Svg + "defs")!.Elements(Svg + "path").ToDictionary(path => path.Attribute("id")!.Value, path => path.Attribute("d")!.Value);
        Assert.All(outlines.Values, outline => Assert.StartsWith("M", outline, StringComparison.Ordinal));
        var used = root.Descendants(Svg + "use").Select(use => use.Attribute("href")!.Value[1..]).ToHashSet();
        Assert.Equal(outlines.Keys.Order(), used.Order());

        var title = root.Descendants(Svg + "g").First(group => group.Elements(Svg + "use").Count() == 2 && group.Attribute("transform")!.Value.Contains("scale(0.023)", StringComparison.Ordinal));
        Assert.Equal(2, title.Elements(Svg + "use").Select(use => use.Attribute("href")!.Value).Distinct().Count());
    }

    [Fact]
    public void Letters_OfAnSvg_StandWithinThePage()
    {
        var picture = RunoutPicture.Draw(new InventedRecord { Title = new string('W', 200), Subtitle = new string('m', 200) }.Content());
        foreach (var line in Parsed(picture).Descendants(Svg + "g").Where(group => group.Elements(Svg + "use").Any()))
        {
            var transform = line.Attribute("transform")!.Value;
            if (transform.StartsWith("translate(0 ", StringComparison.Ordinal))
            {
                var parts = transform.Split(' ', ')', '(').Where(part => part.Length > 0).ToArray();
                var (y, scale) = (double.Parse(parts[2], CultureInfo.InvariantCulture), double.Parse(parts[4], CultureInfo.InvariantCulture));
                var right = line.Elements(Svg + "use").Max(use => double.Parse(use.Attribute("x")!.Value, CultureInfo.InvariantCulture)) * scale;
                Assert.InRange(y, 10, picture.Height);
                Assert.InRange(right, 0, picture.Width - 4);
            }
        }
    }

    [Fact]
    public void Names_InTwoSvgs_DoNotMeetOnOnePage()
    {
        var first = Names(Parsed(RunoutPicture.Draw(new InventedRecord().Content())));
        var second = Names(Parsed(RunoutPicture.Draw(new InventedRecord { Subtitle = "Job 1043" }.Content())));
        Assert.NotEmpty(first);
        Assert.Empty(first.Intersect(second));
    }

    [Theory]
    [InlineData("<b>\"&'")]
    [InlineData("a\u0001b\r\nc\uFFFF")]
    [InlineData("half \uD83D of a pair")]
    [InlineData("  two  spaces\tand a tab ")]
    [InlineData("日本 \uD83D\uDD27")]
    [InlineData("")]
    public void Svg_WithAnyTitle_IsWellFormed(string title)
    {
        var picture = RunoutPicture.Draw(new InventedRecord { Title = title, Subtitle = title }.Content());
        Assert.Equal(picture.Title, Parsed(picture).Element(Svg + "title")!.Value);
    }

    private static XElement Parsed(Picture picture) => XDocument.Parse(Encoding.UTF8.GetString(picture.ToSvg())).Root!;

    private static HashSet<string> Names(XElement root) => [.. root.Descendants().Attributes("id").Select(id => id.Value)];
}

using System.Text;
using Handspun.Pictures.Bore;
using Handspun.Pictures.EndPlay;
using Handspun.Pictures.Lift;
using Handspun.Pictures.Page;
using Handspun.Pictures.Report;
using Handspun.Pictures.Runout;
using Handspun.Pictures.Tests.Bore;
using Handspun.Pictures.Tests.EndPlay;
using Handspun.Pictures.Tests.Lift;
using Handspun.Pictures.Tests.Runout;
using SkiaSharp;

namespace Handspun.Pictures.Tests.Report;

public sealed class StoredPictureTests
{
    private const int AlmostThere = 90;   // of 255: more than the difference that thinning and rounding make at an edge

    public static TheoryData<string> Kinds => ["runout", "no-runout", "end-play", "bore", "lift"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Picture_OfEachKind_DrawnFromItsFile_LooksAsItWasDrawn(string kind)
    {
        var picture = Draw(kind);
        using var first = Pixels.Of(picture.ToPng(picture.Width, picture.Height));

        var stored = StoredPicture.Read(picture.ToSvg());

        Assert.NotNull(stored);
        using var again = new SKBitmap(first.Width, first.Height);
        using (var canvas = new SKCanvas(again))
        {
            canvas.Clear(SKColors.White);
            stored.Draw(canvas);
        }

        var other = Enumerable.Range(0, first.Width * first.Height).Count(i => Apart(first.GetPixel(i % first.Width, i / first.Width), again.GetPixel(i % first.Width, i / first.Width)) > AlmostThere);
        Assert.InRange(other, 0, first.Width * first.Height / 400);
        Assert.Equal(1, Darkness(again) / Darkness(first), tolerance: 0.1);   // small letters are set darker than their outlines are drawn
    }

    [Theory]
    [InlineData("no picture at all")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10\" height=\"10\"><script/></svg>")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10\" height=\"10\"><g clip-path=\"url(#gone)\"/></svg>")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"0\" height=\"10\"/>")]
    public void File_ThatIsNoPictureOfThisProgram_IsNone(string text) => Assert.Null(StoredPicture.Read(Encoding.UTF8.GetBytes(text)));

    private static Picture Draw(string kind) => kind switch
    {
        "runout" => RunoutPicture.Draw(new InventedRecord().Content()),
        "no-runout" => RunoutPicture.Draw(new InventedRecord().WithoutRunout(Metrology.Runout.RunoutStatus.TooShort, "Too short.")),
        "end-play" => EndPlayPicture.Draw(EndPlayPictureTests.Content()),
        "bore" => BorePicture.Draw(BorePictureTests.Content(null)),
        _ => LiftPicture.Draw(LiftPictureTests.Content(LiftPictureTests.Measured)),
    };

    private static int Apart(SKColor one, SKColor other) => Math.Max(Math.Abs(one.Red - other.Red), Math.Max(Math.Abs(one.Green - other.Green), Math.Abs(one.Blue - other.Blue)));

    private static double Darkness(SKBitmap picture) => Enumerable.Range(0, picture.Width * picture.Height)
        .Select(i => picture.GetPixel(i % picture.Width, i / picture.Width)).Sum(pixel => 765.0 - pixel.Red - pixel.Green - pixel.Blue);
}

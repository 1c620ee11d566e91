using System.Xml.Linq;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Pictures.Lift;

namespace Handspun.Pictures.Tests.Lift;

public sealed class LiftPictureTests
{
    // A raised cosine of 8 mm, open for 140 degrees of the cam, its middle at 144 degrees.
    private static readonly double[] Curve = [.. Enumerable.Range(0, 360).Select(Height)];

    [Fact]
    public void Picture_OfALift_SaysItAndIsDrawn()
    {
        var picture = LiftPicture.Draw(Content(Measured));

        Assert.Equal("Lobe lift 8.000 mm ± 0.004 mm.", picture.Description);
        Assert.Equal("Cam lift, front intake, 2004 Ardent Twin 900. Job 2026-0001", picture.Title);
        Assert.True(Paths(picture.ToSvg()) > 20, "the curve, its marks and its letters are paths");
        Assert.NotEqual(picture.ToPng(960, 700), LiftPicture.Draw(Content(Measured) with { Top = null }).ToPng(960, 700));
    }

    [Fact]
    public void Picture_WithoutALift_SaysWhatIsMissing()
    {
        var picture = LiftPicture.Draw(Content(new LiftResult { Status = LiftStatus.NoAngle, Missing = "Nothing told the angle.", Readings = 200 }));

        Assert.Equal("Nothing told the angle.", picture.Description);
        Assert.NotEmpty(picture.ToPng(960, 480));
    }

    [Fact]
    public void Picture_OfACurveThatIsNoWholeTurn_IsRefused() =>
        Assert.Throws<ArgumentException>(() => LiftPicture.Draw(Content(Measured with { CurveMillimetres = [1, 2, 3] })));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Timing_OfBothLobes_IsDrawnWithAndWithoutTheTop(bool fromTop)
    {
        var intake = new Lobe("intake", Curve, CamAngle.FromDegrees(144), 108, -4, 220) { Card = new(-6, 218, 108) };

        var picture = TimingPicture.Draw(new TimingPictureContent
        {
            Title = "Cam timing, front cylinder",
            Separation = "Lobes 110.0° ± 0.3° apart",
            Sentence = "The lobes are 110.0° ± 0.3° of the cam apart.",
            Intake = intake,
            Exhaust = intake with { Name = "exhaust", CentreAt = -112, Opens = -224, Closes = 0, Card = default },
            FromTop = fromTop,
            CheckingLift = LiftSettings.UsualCheckingLift,
            Verdict = Verdict.Within,
            Unit = LengthUnit.Inch,
        });

        Assert.Equal("The lobes are 110.0° ± 0.3° of the cam apart.", picture.Description);
        Assert.True(Paths(picture.ToSvg()) > 20);
    }

    internal static LiftResult Measured { get; } = new()
    {
        Status = LiftStatus.Measured,
        Readings = 200,
        CamTurns = 2,
        AngleOf = AngleShaft.Crank,
        Reference = AngleReference.Index,
        CheckingLift = LiftSettings.UsualCheckingLift,
        LobeLift = new(Length.FromMillimetres(8), Length.FromMillimetres(0.004)),
        Centreline = At(144),
        Opening = At(90),
        Closing = At(198),
        Duration = At(108),
        CurveMillimetres = Curve,
        AngleDegrees = [.. Enumerable.Range(0, 200).Select(i => 3.6 * i)],
    };

    internal static LiftPictureContent Content(LiftResult result) => new()
    {
        Title = "Cam lift, front intake, 2004 Ardent Twin 900",
        Subtitle = "Job 2026-0001",
        Seconds = Enumerable.Range(0, 200).Select(i => i / 20.0).ToArray(),
        Millimetres = Enumerable.Range(0, 200).Select(i => 0.4 + Height((int)(3.6 * i) % 360)).ToArray(),
        Result = result,
        Top = new(CrankAngle.FromDegrees(180), CrankAngle.FromDegrees(1)),
        Unit = LengthUnit.Millimetre,
    };

    private static double Height(int degrees) => Math.Abs(degrees - 144) < 70 ? 4 * (1 + Math.Cos(Math.PI * (degrees - 144) / 70.0)) : 0;

    private static Measured<CamAngle> At(double degrees) => new(CamAngle.FromDegrees(degrees), CamAngle.FromDegrees(0.2));

    private static int Paths(byte[] svg) => XDocument.Load(new MemoryStream(svg)).Descendants().Count(element => element.Name.LocalName == "path");
}

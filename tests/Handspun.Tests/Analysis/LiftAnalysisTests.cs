using System.Globalization;
using System.Text;
using Handspun.Analysis;
using Handspun.Jobs.Lengths;

namespace Handspun.Tests.Analysis;

public sealed class LiftAnalysisTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("lift-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("lift-curve-front-intake", "LiftCurve")]
    [InlineData("cam-lift", "LiftCurve")]
    [InlineData("lifter-bore-front-intake", "Bore")]
    public void Kind_OfACodeWithLift_IsThatOfItsWords(string code, string kind) => Assert.Equal(kind, KindOfPoint.Of(code).ToString());

    // A raised cosine of 9 mm, half as wide as 110 degrees of the crank: at 1.27 mm it is open 166.065 degrees, by closed form.
    [Theory]
    [InlineData("", 2, "crank", 106)]
    [InlineData("# angle_of = crank\n", 2, "crank", 106)]
    [InlineData("# angle_of = cam\n", 1, "cam", 53)]
    [InlineData("", 1, "cam", 53)]
    public void Answer_ForALobe_IsInDegreesOfTheShaftThatTheFileTells(string head, double turnsPerLobe, string shaft, double centreline)
    {
        var answer = Answer(head, turnsPerLobe);

        var scale = turnsPerLobe / 2;
        Assert.Equal("ok", answer.Status);
        Assert.Equal(shaft, answer.DegreesOf);
        Assert.Equal(9, answer.MaxLiftMm!.Value, 0.003);
        Assert.Equal(centreline, answer.CentrelineDeg!.Value, 0.2);
        Assert.Equal(166.06493825606162 * scale, answer.DurationDeg!.Value, 0.5);
        Assert.True(answer.MaxLiftU95Mm > 0 && answer.CentrelineU95Deg > 0 && answer.DurationU95Deg > 0);
        Assert.Equal("encoder", answer.AngleReference);
        Assert.Equal(3 * turnsPerLobe, answer.Turns!.Value, 0.05);
        Assert.Null(answer.TirMm);
        Assert.Contains($"degrees of the {shaft}", AnalysisText.Of(answer, LengthUnit.Millimetre), StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_ForALobeWithoutAnyAngle_SaysWhatToFit()
    {
        var answer = Answer("", 2, angles: false);

        Assert.Equal("rejected", answer.Status);
        Assert.Contains("index", answer.Reason, StringComparison.Ordinal);
        Assert.Null(answer.CentrelineDeg);
    }

    [Fact]
    public void Answer_AtTheCardsOwnCheckingLift_CountsFromIt()
    {
        var answer = Answer("# checking_lift_mm = 4.5\n", 2);

        Assert.Equal(4.5, answer.CheckingLiftMm);
        Assert.Equal(110, answer.DurationDeg!.Value, 0.3);   // half the lift is passed half way, by closed form
    }

    [Theory]
    [InlineData("# angle_of = wheel\n", "crank or cam")]
    [InlineData("# checking_lift_mm = 0\n", "no number that fits")]
    public void File_ThatAsksWhatCannotBe_IsRefusedWithItsLine(string head, string words)
    {
        var fault = Assert.Throws<CaptureFileException>(() => Answer(head, 2));

        Assert.StartsWith("Line 2", fault.Message, StringComparison.Ordinal);
        Assert.Contains(words, fault.Message, StringComparison.Ordinal);
    }

    private AnalysisAnswer Answer(string head, double turnsPerLobe, bool angles = true)
    {
        const int readings = 1200;
        const double seconds = 24;
        var text = new StringBuilder("# point = lift-curve-front-intake\n" + head + "# resolution_mm = 0.001\ntime_s,channel,value\n");
        for (var i = 0; i < readings; i++)
        {
            var time = seconds * i / readings;
            var cam = 3 * 360 * time / seconds;
            var from = Math.Abs(Math.IEEERemainder(cam - 53, 360));
            var lift = from < 55 ? 4.5 * (1 + Math.Cos(Math.PI * from / 55)) : 0;
            text.Append(CultureInfo.InvariantCulture, $"{time:0.0000},reading,{lift:0.000}\n");
            if (angles)
            {
                text.Append(CultureInfo.InvariantCulture, $"{time:0.0000},angle_deg,{cam * turnsPerLobe:0.000}\n");
            }
        }

        var file = Path.Combine(_folder, "capture.csv");
        File.WriteAllText(file, text.ToString());
        return AnalysisAnswer.Of("capture.csv", CaptureFile.Read(file), null);
    }
}

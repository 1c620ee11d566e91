using System.Globalization;
using System.Text;
using Handspun.Analysis;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;

namespace Handspun.Tests.Analysis;

public sealed class KindOfPointTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("points-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData(null, "Runout")]
    [InlineData("pinion-runout", "Runout")]
    [InlineData("cam-end-play", "EndPlay")]
    [InlineData("gearbox-shaft-end-play", "EndPlay")]
    [InlineData("lifter-bore-front-intake", "Bore")]
    [InlineData("cam-bearing-bore-case", "Bore")]
    [InlineData("cam-journal-cover", "OutsideSize")]
    [InlineData("pump-body-outer", "OutsideSize")]
    [InlineData("cam-journal-runout", "Runout")]
    public void Kind_OfAPointsCode_IsThatOfTheCatalogueOrOfItsName(string? code, string kind) => Assert.Equal(kind, KindOfPoint.Of(code).ToString());

    // Two flat plateaus 0.25 mm apart, three times each: closed form.
    [Fact]
    public void Answer_ForPushesAndPulls_IsTheWayBetweenTheStops()
    {
        var answer = Answer("# point = cam-end-play\n# resolution_mm = 0.001\n", Enumerable.Range(0, 300).Select(i => i / 50 % 2 == 0 ? 0.1 : 0.35), new Limit { UpperMillimetres = 0.4, Source = "an example" });

        Assert.Equal("ok", answer.Status);
        Assert.Equal(0.25, answer.EndPlayMm!.Value, 1e-4);
        Assert.True(answer.EndPlayU95Mm > 0);
        Assert.Equal(3, answer.Cycles);
        Assert.Equal("within", answer.Verdict);
        Assert.Null(answer.TirMm);
        Assert.Null(answer.Turns);
        Assert.Contains("end play 0.25", AnalysisText.Of(answer, LengthUnit.Millimetre), StringComparison.Ordinal);
    }

    // A gauge that leans by an angle spans the bore over its cosine: closed form.
    [Fact]
    public void Answer_ForARockedGauge_IsTheLeastItSpans()
    {
        var rocked = Enumerable.Range(0, 401).Select(i => 0.012 + 21.4 * (1 / Math.Cos(0.1 * Math.Cos(Math.PI * i / 50)) - 1)).ToArray();
        var bare = Answer("# point = lifter-bore-front-intake\n# resolution_mm = 0.001\n", rocked);
        var sized = Answer("# point = lifter-bore-front-intake\n# resolution_mm = 0.001\n# setting_mm = 21.4\n# setting_u95_mm = 0.001\n", rocked);

        Assert.Equal("ok", bare.Status);
        Assert.Equal(0.012, bare.DeviationMm!.Value, 3e-4);
        Assert.Equal(8, bare.Passes);
        Assert.Contains("setting-unknown", bare.Warnings);
        Assert.Null(bare.SizeMm);
        Assert.Equal(21.412, sized.SizeMm!.Value, 3e-4);
        Assert.True(sized.SizeU95Mm > sized.DeviationU95Mm);
    }

    // A round body under a round tip lifts it by √((r + t)² − x²) − (r + t): closed form, most at x = 0.
    [Fact]
    public void Answer_ForABodyThatIsRolledThrough_IsTheMostTheGaugeSpans()
    {
        var rolled = Enumerable.Range(0, 401).Select(i => 0.008 + Math.Sqrt(12.2 * 12.2 - Math.Pow(1.2 * Math.Cos(Math.PI * i / 50), 2)) - 12.2).ToArray();

        var answer = Answer(
            "# point = lifter-body-front-intake\n# resolution_mm = 0.001\n# setting_mm = 21.382\n# setting_u95_mm = 0.001\n", rolled, new Limit { LowerMillimetres = 21.38, UpperMillimetres = 21.4, Source = "an example" });

        Assert.Equal(("ok", "within", 8), (answer.Status, answer.Verdict, answer.Passes));
        Assert.Equal(0.008, answer.DeviationMm!.Value, 3e-4);
        Assert.Equal(21.39, answer.SizeMm!.Value, 3e-4);
        Assert.Contains("size across 21.39", AnalysisText.Of(answer, LengthUnit.Millimetre), StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_ForOneStopOnly_SaysWhatToDo()
    {
        var answer = Answer("# point = cam-end-play\n", Enumerable.Repeat(0.1, 200));

        Assert.Equal("rejected", answer.Status);
        Assert.Contains("push the shaft", answer.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_ForASettingInInches_AsksForItAgain()
    {
        var answer = Answer("# point = lifter-bore-rear-intake\n# setting_mm = 0.9\n", Enumerable.Repeat(0.1, 200));

        Assert.Equal("rejected", answer.Status);
        Assert.Contains("22.86 mm", answer.Reason, StringComparison.Ordinal);   // 0.9 × 25.4
    }

    private AnalysisAnswer Answer(string head, IEnumerable<double> millimetres, Limit? limit = null)
    {
        var text = new StringBuilder(head + "time_s,channel,value\n");
        foreach (var (value, i) in millimetres.Select((value, i) => (value, i)))
        {
            text.Append(CultureInfo.InvariantCulture, $"{i / 50.0:0.00},reading,{value:0.000}\n");
        }

        var file = Path.Combine(_folder, "capture.csv");
        File.WriteAllText(file, text.ToString());
        return AnalysisAnswer.Of("capture.csv", CaptureFile.Read(file), limit);
    }
}

using System.Globalization;
using System.Text;
using Handspun.Analysis;
using Handspun.Jobs.Lengths;

namespace Handspun.Tests.Analysis;

public sealed class CaptureFileTests : IDisposable
{
    private const string Columns = "time_s,channel,value\n";

    private readonly string _folder = Directory.CreateTempSubdirectory("analysis-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Csv_WithEveryChannel_IsReadInMillimetres()
    {
        var file = Write("""
            # point = pinion-runout
            # unit = in
            # resolution_mm = 0.00127
            # error_limit_mm = 0.003
            # index_turns = 2.81
            # measured on a rainy day
            time_s,channel,value
            0.000000,reading,-0.00100
            0.431200,index,1
            0.100000,reading,0.00200
            0.2,mark,1
            0.3,angle_deg,12.5
            """);

        var read = CaptureFile.Read(file);

        Assert.Equal("pinion-runout", read.Point);
        Assert.Equal([0, 0.1], read.Capture.Seconds.ToArray());
        Assert.Equal([-0.0254, 0.0508], read.Capture.Millimetres.ToArray().Select(mm => Math.Round(mm, 10)));   // 1 in = 25.4 mm
        Assert.Equal([0.4312], read.Capture.IndexSeconds.ToArray());
        Assert.Equal(2.81, read.Capture.TurnsPerIndex);
        Assert.Equal([0.2], read.Capture.MarkSeconds.ToArray());
        Assert.Equal([12.5], read.Capture.EncoderDegrees.ToArray());
        Assert.Equal(0.00127, read.Gauge.Resolution.Millimetres);
        Assert.Equal(0.003, read.Gauge.ErrorLimit.Millimetres);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("# unit = mm\n", "empty")]
    [InlineData(Columns, "holds no reading")]
    [InlineData("# pont = pinion-runout\n" + Columns, "Line 1: there is no key 'pont'")]
    [InlineData("# unit = mm\n# unit = in\n" + Columns, "Line 2: the key 'unit' stands twice")]
    [InlineData("# unit = cm\n" + Columns, "Line 1: the unit 'cm'")]
    [InlineData("# resolution_mm = fine\n" + Columns, "Line 1: 'resolution_mm = fine'")]
    [InlineData("# index_turns = 0\n" + Columns, "Line 1: 'index_turns = 0'")]
    [InlineData("time,channel,value\n0,reading,0\n", "Line 1: the columns must be time_s,channel,value")]
    [InlineData(Columns + "0,reading,0\n0.1,temperature,20\n", "Line 3: there is no channel 'temperature'")]
    [InlineData("# unit = mm\n\n" + Columns + "0,reading,NaN\n", "Line 4: the value 'NaN' is not finite")]
    [InlineData(Columns + "0,reading,-Infinity\n", "Line 2: the value '-Infinity' is not finite")]
    [InlineData("# larger_reads = up\n" + Columns, "Line 1: a larger size reads higher or lower, not 'up'")]
    [InlineData("# temperature_c = 80\n" + Columns, "Line 1: 'temperature_c = 80' is no number that fits")]
    [InlineData("# lever_deg = 90\n" + Columns, "Line 1: 'lever_deg = 90' is no number that fits")]
    [InlineData("# unit: in\n" + Columns, "Line 1: 'unit' needs an equals sign: write '# unit = in'")]
    [InlineData("# Resolution_mm: 0.01\n" + Columns, "Line 1: 'Resolution_mm' needs an equals sign: write '# resolution_mm = 0.01'")]
    [InlineData("# Unit = in\n" + Columns, "Line 1: there is no key 'Unit'")]
    [InlineData("# unit = mm\n" + Columns + "0,reading,0\n# unit = in\n0.1,reading,0.01\n", "Line 4: the key 'unit' stands among the rows")]
    [InlineData(Columns + "0,reading,0\n# unit: in\n0.1,reading,0.01\n", "Line 3: the key 'unit' stands among the rows")]
    [InlineData(Columns + "0,reading,0\n" + Columns + "0,reading,0\n", "Line 3: the columns stand here again")]
    [InlineData(Columns + "0,reading,0.01\n0.1,reading,0.0004 in\n", "Line 3: the value '0.0004 in' is no number: the unit stands once, at the head")]
    [InlineData(Columns + "0,reading,0\nNaN,reading,0\n", "Line 3: the time 'NaN' is not finite")]
    [InlineData(Columns + "0,reading,1e999\n", "Line 2: the value '1e999' is not finite")]
    [InlineData(Columns + "0,reading,\n", "Line 2: the value '' is no number")]
    [InlineData(Columns + "0,reading,\"0\n1,reading,0\n", "is not CSV: look at its quotes")]
    [InlineData(Columns + "0.2,index,1\n0.3,reading,0\n0.1,index,1\n", "Line 4: the time of 'index' runs backwards, from 0.2 to 0.1 s")]
    [InlineData(Columns + "0,reading,0,01\n", "Line 2: a row has 3 values, and this one has 4: the decimal sign is a point")]
    [InlineData(Columns + "0,reading,zero\n", "Line 2: the value 'zero' is no number")]
    [InlineData(Columns + "0.2,reading,0\n0.1,reading,0\n", "Line 3: the time of 'reading' runs backwards, from 0.2 to 0.1 s")]
    public void Csv_ThatDoesNotHold_SaysWhatIsWrongAndWhere(string text, string words) =>
        Assert.Contains(words, Assert.Throws<CaptureFileException>(() => CaptureFile.Read(Write(text))).Message, StringComparison.Ordinal);

    // A lever at 60 degrees to the surface: the part moves half of what it shows (cosine).
    [Fact]
    public void Csv_OfALever_IsReadAsThePartMoves()
    {
        var read = CaptureFile.Read(Write("# lever_deg = 60\n# temperature_c = 24\n# resolution_mm = 0.002\n" + Columns + "0,reading,0.1\n"));

        Assert.Equal(0.05, read.Capture.Millimetres.Span[0], 1e-15);
        Assert.Equal(0.001, read.Gauge.Resolution.Millimetres, 1e-15);
        Assert.Equal((60, 24), (read.Gauge.LeverDegrees, read.Gauge.Celsius));
    }

    [Fact]
    public void Csv_WithRemarksAmongItsRows_IsRead()
    {
        var read = CaptureFile.Read(Write(Columns + "0,reading,0\n# a gust of wind, then quiet\n0.1,reading,0.01\n\n0.2,reading,0.02\n"));

        Assert.Equal([0, 0.01, 0.02], read.Capture.Millimetres.ToArray());
    }

    [Fact]
    public void Csv_OfAValueWithoutEnd_IsRefused()
    {
        var text = Columns + "0,reading,0." + new string('0', 5000) + "\n";

        Assert.Contains("Line 2: the row is not CSV", Assert.Throws<CaptureFileException>(() => CaptureFile.Read(Write(text))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Csv_OfFarTooManyRows_IsRefusedAtTheLineWhereItBecomesTooMuch()
    {
        var file = Path.Combine(_folder, "long.csv");
        using (var text = new StreamWriter(file))
        {
            text.Write(Columns);
            for (var i = 0; i <= CsvCaptureFile.MostRows; i++)
            {
                text.Write("0,reading,0\n");
            }
        }

        var refused = Assert.Throws<CaptureFileException>(() => CaptureFile.Read(file));

        Assert.StartsWith("Line 4000002: there are more than 4000000 rows", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_InPlaceOfAFile_IsSaidSo() =>
        Assert.Contains("is a folder: name the files in it", Assert.Throws<CaptureFileException>(() => CaptureFile.Read(_folder)).Message, StringComparison.Ordinal);

    [Fact]
    public void Csv_OfBytesThatAreNoText_IsRefused()
    {
        var file = Path.Combine(_folder, "bytes.csv");
        File.WriteAllBytes(file, [.. Encoding.ASCII.GetBytes(Columns), 0xFF, 0xFE, 0x80]);

        Assert.Contains("UTF-8", Assert.Throws<CaptureFileException>(() => CaptureFile.Read(file)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void File_ThatIsNotThere_IsSaidSo() =>
        Assert.Contains("There is no file", Assert.Throws<CaptureFileException>(() => CaptureFile.Read(Path.Combine(_folder, "no-such.csv"))).Message, StringComparison.Ordinal);

    [Fact]
    public void Journal_ThatIsBroken_IsRefusedWithItsLine() =>
        Assert.Contains("line 1", Assert.Throws<CaptureFileException>(() => CaptureFile.Read(Write("{\"journal\":\"other\"}\n"))).Message, StringComparison.Ordinal);

    // A pure sine of 25 µm amplitude has a runout of 50 µm (closed form); the burr of 30 µm stands at 100.8 degrees of it.
    [Fact]
    public void Answer_ForASineWithABurr_TellsTheBurrApart()
    {
        var chance = new Random(2);
        var text = new StringBuilder("# resolution_mm = 0.0001\n" + Columns);
        for (var i = 0; i < 500; i++)
        {
            var burr = Math.Max(0, 0.03 - 0.01 * Math.Abs(i % 100 - 28));
            var value = 0.025 * Math.Cos(2 * Math.PI * (i / 100.0 - 0.2)) + burr + 0.0005 * (chance.NextDouble() - 0.5);
            text.Append(CultureInfo.InvariantCulture, $"{i / 50.0:0.000},reading,{value:0.0000}\n");
            text.Append(i % 100 == 0 ? string.Create(CultureInfo.InvariantCulture, $"{i / 50.0:0.000},index,1\n") : "");
        }

        var answer = AnalysisAnswer.Of("burr.csv", CaptureFile.Read(Write(text.ToString())), limit: null);

        Assert.Equal(0.05, answer.TirMm!.Value, 0.001);
        var fault = Assert.Single(answer.Faults!);
        Assert.Equal("raised", fault.Kind);
        Assert.Equal(100.8, fault.AtDeg, 4.0);
        Assert.Equal(0.03, fault.HeightMm, 0.003);
        Assert.Equal(0.025 + 0.025 * Math.Cos(2 * Math.PI * 0.08) + 0.03, answer.TirWithFaultsMm!.Value, 0.002);
        Assert.Contains("local-fault", answer.Warnings);
        Assert.InRange(answer.TirByTurnMm!.Count, 4, 5);
        Assert.InRange(answer.ZoneRoundnessMm!.Value, 0, 0.001);
        Assert.Equal(0.025, answer.EccentricityMm!.Value, 0.001);
        Assert.Equal(72, answer.EccentricityTowardDeg!.Value, 3.0);   // a fifth of a turn after the index
        var shown = AnalysisText.Of(answer, LengthUnit.Millimetre).ReplaceLineEndings("\n");
        Assert.Matches(@"\n  off centre by 0\.02\d mm ± 0\.0\d\d mm toward 7\d°\n  out of round 0\.00\d mm \(least squares\), 0\.00\d mm \(minimum zone\), 0\.00\d mm \(smallest circle around\), 0\.00\d mm \(largest circle inside\)\n", shown);
        Assert.Matches(@"\n  runout turn by turn 0\.0\d\d mm, 0\.0\d\d mm, ", shown);
        Assert.Matches(@"\n  at \d+°: 0\.03\d mm, \d+° wide, on \d of \d turns\. A narrow raised place .*\n  runout with that in it 0\.0\d\d mm\n", shown);
    }

    // A pure sine of 25 µm amplitude has a runout of 50 µm: closed form.
    [Fact]
    public void Answer_ForAPureSineWithAnIndex_CoversTheClosedForm()
    {
        var text = new StringBuilder("# point = pinion-runout\n# resolution_mm = 0.0001\n" + Columns);
        for (var i = 0; i < 400; i++)
        {
            var turns = i / 100.0;
            var value = 0.025 * Math.Cos(2 * Math.PI * (turns - 0.25));
            text.Append(CultureInfo.InvariantCulture, $"{turns * 2:0.000},reading,{value:0.0000}\n");
            if (i % 100 == 0)
            {
                text.Append(CultureInfo.InvariantCulture, $"{turns * 2:0.000},index,1\n");
            }
        }

        var answer = AnalysisAnswer.Of("sine.csv", CaptureFile.Read(Write(text.ToString())), limit: null);

        Assert.Equal("ok", answer.Status);
        Assert.InRange(0.05, (answer.TirMm - answer.TirU95Mm)!.Value, (answer.TirMm + answer.TirU95Mm)!.Value);
        Assert.InRange(answer.HighSpotDeg!.Value, 87, 93);   // the wave is highest a quarter turn after the index
        Assert.Equal("index", answer.AngleReference);
        Assert.Equal("within", answer.Verdict);
        Assert.Contains("limit-unconfirmed", answer.Warnings);
    }

    private string Write(string text)
    {
        var file = Path.Combine(_folder, "capture.csv");
        File.WriteAllText(file, text);
        return file;
    }
}

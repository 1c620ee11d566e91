using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Handspun.Analysis;
using Handspun.Export;
using Handspun.Gauges.Journal;
using Handspun.Jobs.Points;
using Handspun.Wire;

namespace Handspun.Tests.Export;

public sealed class CaptureExportTests : IDisposable
{
    private const string Profile = "[value]\nresolution_mm = 0.001\nerror_limit_mm = 0.003\n[index]\nsource = \"key\"\ndebounce_ms = 50\nturns = 2.5\n";

    private readonly string _folder = Directory.CreateTempSubdirectory("export-").FullName;

    private string Journal => Path.Combine(_folder, "journal.jsonl");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Csv_OfAJournal_IsReadAgain_AsTheJournalItselfIs()
    {
        Write();
        var csv = Path.Combine(_folder, "capture.csv");
        using (var into = new StreamWriter(csv))
        {
            CsvExport.Write(CaptureExport.Read(Journal), into);
        }

        var (fromCsv, fromJournal) = (CaptureFile.Read(csv), CaptureFile.Read(Journal));

        Assert.Equal((fromJournal.Point, fromJournal.Gauge), (fromCsv.Point, fromCsv.Gauge));
        Assert.Equal(fromJournal.Capture.Millimetres.ToArray(), fromCsv.Capture.Millimetres.ToArray());
        Assert.Equal(fromJournal.Capture.TurnsPerIndex, fromCsv.Capture.TurnsPerIndex);
        Assert.Equal(fromJournal.Capture.Seconds.ToArray().Select(t => Math.Round(t, 6)), fromCsv.Capture.Seconds.ToArray());   // both from the capture's start
        Assert.Equal([0.5, 1.25], fromCsv.Capture.IndexSeconds.ToArray());
        Assert.Equal([0.75], fromCsv.Capture.MarkSeconds.ToArray());
    }

    [Fact]
    public void Csv_HasItsRowsInTheOrderOfTime_AndSaysWhatItIsOf()
    {
        Write();
        using var into = new StringWriter(CultureInfo.InvariantCulture);
        CsvExport.Write(CaptureExport.Read(Journal), into);

        var lines = into.ToString().Split('\n');
        Assert.Equal("# gauge pinion, profile bench, started 2026-03-14T09:00:10.000000Z", lines[0]);
        Assert.Equal(["# point = pinion-runout", "# unit = mm", "# resolution_mm = 0.001", "# error_limit_mm = 0.003", "# index_turns = 2.5", "time_s,channel,value"], lines[1..7]);
        Assert.Equal(["0.000000,reading,0.01", "0.500000,reading,-0.02", "0.500000,index,1", "0.750000,mark,1", "1.000000,reading,0.03", "1.250000,index,1", "1.500000,reading,0.04", ""], lines[7..]);
    }

    [Fact]
    public void Json_OfAJournal_HoldsTheSame()
    {
        Write();
        var root = JsonDocument.Parse(JsonSerializer.Serialize(CaptureExport.Read(Journal), WireJson.Options)).RootElement;

        Assert.Equal(("pinion", "bench", "c-1", "2026-0001", "pinion-runout", "enough"), (Text(root, "gauge"), Text(root, "profile"), Text(root, "capture"), Text(root, "job"), Text(root, "point"), Text(root, "ended")));
        Assert.Equal([0, 0.5, 1, 1.5], Numbers(root.GetProperty("readings").GetProperty("time_s")));
        Assert.Equal([0.01, -0.02, 0.03, 0.04], Numbers(root.GetProperty("readings").GetProperty("mm")));
        Assert.Equal([0.5, 1.25], Numbers(root.GetProperty("index")));
        Assert.Equal([0.75], Numbers(root.GetProperty("marks")));
        Assert.Equal(2.5, root.GetProperty("index_turns").GetDouble());
        Assert.Equal(1, root.GetProperty("unreadable").GetInt64());
    }

    private static string? Text(JsonElement root, string key) => root.GetProperty(key).GetString();

    private static IEnumerable<double> Numbers(JsonElement list) => list.EnumerateArray().Select(item => item.GetDouble());

    [Fact]
    public void Csv_OfABore_NamesTheRing_AndSaysTheSameWhenItIsReadAgain()
    {
        Write("lifter-bore-front-intake", """{"kind":"bore","wanted":6,"setup":{"kind":"bore","setting_mm":21.4,"setting_u95_mm":0.002,"shown_mm":-0.012,"larger_reads_lower":true,"depth_mm":12,"clock_hours":3}}""");
        var csv = Path.Combine(_folder, "capture.csv");
        using (var into = new StreamWriter(csv))
        {
            CsvExport.Write(CaptureExport.Read(Journal), into);
        }

        var setting = new BoreSetup { SettingMillimetres = 21.4, SettingU95Millimetres = 0.002, ShownMillimetres = -0.012, LargerReadsLower = true };
        Assert.Equal((PointKind.Bore, setting), (CaptureFile.Read(csv).Kind, CaptureFile.Read(csv).Setup));
        Assert.Equal(setting with { DepthMillimetres = 12, ClockHours = 3 }, CaptureFile.Read(Journal).Setup);
        var json = JsonSerializer.SerializeToElement(CaptureExport.Read(Journal), WireJson.Options).GetProperty("setup");
        Assert.Equal((21.4, 12), (json.GetProperty("setting_mm").GetDouble(), json.GetProperty("depth_mm").GetDouble()));
    }

    [Fact]
    public void Csv_OfALever_SaysTheSameWhenItIsReadAgain()
    {
        Write(task: """{"kind":"runout","wanted":3,"setup":{"kind":"runout","lever_deg":60,"celsius":24}}""");
        var csv = Path.Combine(_folder, "capture.csv");
        using (var into = new StreamWriter(csv))
        {
            CsvExport.Write(CaptureExport.Read(Journal), into);
        }

        var (journal, again) = (CaptureFile.Read(Journal), CaptureFile.Read(csv));
        Assert.Equal((60, 24), (again.Gauge.LeverDegrees, again.Gauge.Celsius));
        Assert.Equal(journal.Gauge, again.Gauge);
        Assert.Equal([0.005, -0.01, 0.015, 0.02], again.Capture.Millimetres.ToArray().Select(reading => Math.Round(reading, 12)));
        Assert.Equal(journal.Capture.Millimetres.ToArray(), again.Capture.Millimetres.ToArray());
    }

    [Fact]
    public void Csv_OfABody_NamesTheReference_AndSaysTheSameWhenItIsReadAgain()
    {
        Write("lifter-body-front-intake", """{"kind":"outside-size","wanted":6,"setup":{"kind":"outside-size","setting_mm":21.382,"setting_u95_mm":0.001,"shown_mm":0.002}}""");
        var csv = Path.Combine(_folder, "capture.csv");
        using (var into = new StreamWriter(csv))
        {
            CsvExport.Write(CaptureExport.Read(Journal), into);
        }

        var setting = new BodySetup { SettingMillimetres = 21.382, SettingU95Millimetres = 0.001, ShownMillimetres = 0.002 };
        Assert.Equal((PointKind.OutsideSize, setting), (CaptureFile.Read(csv).Kind, CaptureFile.Read(csv).Setup));
        Assert.Equal(setting, CaptureFile.Read(Journal).Setup);
    }

    [Fact]
    public void Journal_OfAMeasurementThatIsNotKnown_IsRefusedInASentence()
    {
        Write(task: """{"kind":"tomorrow","wanted":6}""");

        Assert.Contains("replay it with the version that wrote it", Assert.Throws<CaptureFileException>(() => CaptureFile.Read(Journal)).Message, StringComparison.Ordinal);
    }

    private void Write(string point = "pinion-runout", string? task = null)
    {
        using var journal = JournalWriter.Create(Journal, new JournalHeader
        {
            Gauge = "pinion",
            Port = "/dev/ttyUSB0",
            Profile = "bench",
            ProfileText = Profile,
            Zero = new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero),
            From = TimeSpan.FromSeconds(10),
            Capture = "c-1",
            Job = "2026-0001",
            Point = point,
            Task = task,
        });
        journal.AppendEvent(TimeSpan.FromSeconds(9), JournalEntry.LinkOpened);
        Say(journal, 9.5, "+0.5\n");
        Say(journal, 10, "+0.01\n");
        journal.AppendEvent(TimeSpan.FromSeconds(10.5), JournalEntry.Index, "key");
        Say(journal, 10.5, "-0.02\n");
        journal.AppendEvent(TimeSpan.FromSeconds(10.52), JournalEntry.Index, "key");   // the key bounced
        journal.AppendEvent(TimeSpan.FromSeconds(10.75), JournalEntry.Mark);
        Say(journal, 11, "+0.03\nlow battery\n");
        journal.AppendEvent(TimeSpan.FromSeconds(11.25), JournalEntry.Index, "key");
        Say(journal, 11.5, "+0.04\n");
        journal.AppendEvent(TimeSpan.FromSeconds(11.5), JournalEntry.CaptureEnded, "enough");
    }

    private static void Say(JournalWriter journal, double at, string text) =>
        journal.Append(TimeSpan.FromSeconds(at), new ReadOnlySequence<byte>(Encoding.ASCII.GetBytes(text)));
}

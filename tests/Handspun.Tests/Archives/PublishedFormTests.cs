using System.Globalization;
using System.Text.Json.Nodes;
using Handspun.Archives;
using Handspun.Jobs.Archives;
using Handspun.Jobs.Lengths;
using Handspun.Pictures.Tests.Report;
using Json.Schema;
using Sylvan.Data.Csv;

namespace Handspun.Tests.Archives;

public sealed class PublishedFormTests
{
    private static readonly JsonSchema Schema = ReadSchema();

    [Fact]
    public void JobFile_HoldsToItsPublishedSchema()
    {
        var result = Schema.Evaluate(JsonNode.Parse(JobFile.Write(ReportedJob.Of(5))), new EvaluationOptions { OutputFormat = OutputFormat.List });

        Assert.True(result.IsValid, string.Join('\n', result.Details.Where(detail => detail.HasErrors).Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}")));
    }

    [Theory]
    [InlineData("version", "9")]
    [InlineData("job.number", "\"42\"")]
    [InlineData("job.points.0.records.0.verdict", "\"fine\"")]
    [InlineData("job.points.0.limit", "{}")]
    [InlineData("job.entries.0.by", "null")]
    public void Schema_TellsAJobThatDoesNotHold(string path, string json)
    {
        var file = JsonNode.Parse(JobFile.Write(ReportedJob.Of(5)))!;
        var parts = path.Split('.');
        var parent = parts[..^1].Aggregate(file, (node, part) => int.TryParse(part, CultureInfo.InvariantCulture, out var index) ? node[index]! : node[part]!);
        parent[parts[^1]] = JsonNode.Parse(json);

        Assert.False(Schema.Evaluate(file).IsValid);
    }

    [Fact]
    public void Csv_ReadByAnotherLibrary_HasTheSameRecords()
    {
        var job = ReportedJob.Of(5);
        using var text = new StringWriter();
        RecordsCsv.Write(RecordRow.Of(job, LengthUnit.Inch), text);

        using var csv = CsvDataReader.Create(new StringReader(text.ToString()));
        Assert.Equal(RecordRow.Columns, Enumerable.Range(0, csv.FieldCount).Select(csv.GetName));
        foreach (var (point, record) in job.InOrder.SelectMany(point => point.Records.Select(record => (point, record))))
        {
            Assert.True(csv.Read());
            string Cell(string column) => csv.GetString(csv.GetOrdinal(column));
            Assert.Equal((job.Number, point.Code, point.Title, record.Id), (Cell("job"), Cell("point"), Cell("point_title"), Cell("record")));
            Assert.Equal(record.Figures.Value!.Value.Millimetres, csv.GetDouble(csv.GetOrdinal("value_mm")), tolerance: 1e-9);
            Assert.Equal(record.Limit?.Source ?? "", Cell("limit_source"));
            Assert.Equal(record.At, DateTimeOffset.Parse(Cell("at"), CultureInfo.InvariantCulture));
        }

        Assert.False(csv.Read());
    }

    [Theory]
    [InlineData("quotes \"and\" commas, and\r\na second line")]
    [InlineData(" spaces at the ends ")]
    [InlineData("")]
    public void Csv_TextOfAnyKind_ComesBackAsItWas(string words)
    {
        var job = ReportedJob.Of(5);
        job.Points[0].Limit = null;
        var point = job.Points[0];
        point.Records[0] = new()
        {
            Id = "r",
            At = ReportedJob.Start,
            Seconds = 1,
            Ending = point.Records[0].Ending,
            Status = point.Records[0].Status,
            Figures = point.Records[0].Figures,
            Gauge = point.Records[0].Gauge with { Name = words },
        };
        using var text = new StringWriter();
        RecordsCsv.Write(RecordRow.Of(job, LengthUnit.Millimetre), text);

        using var csv = CsvDataReader.Create(new StringReader(text.ToString()));
        Assert.True(csv.Read());
        Assert.Equal(words, csv.GetString(csv.GetOrdinal("gauge")));
    }

    private static JsonSchema ReadSchema()
    {
        using var stream = typeof(JobArchive).Assembly.GetManifestResourceStream("job-1.json")!;
        using var text = new StreamReader(stream);
        return JsonSchema.FromText(text.ReadToEnd());
    }
}

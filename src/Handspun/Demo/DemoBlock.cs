using System.Globalization;
using Handspun.Filing;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;

namespace Handspun.Demo;

/// <summary>One record as a block of text.</summary>
internal static class DemoBlock
{
    private const int Width = 78;
    private const int Indent = 10;

    /// <summary>The block.</summary>
    public static string Of(Job job, JobPoint point, CaptureRecord record, RecordFolder folder, LengthUnit unit)
    {
        var lines = new List<string>
        {
            Line("Job", $"{job.Number}  {job.Title}"),
            Line("Bike", job.Bike.Odometer is { } shown ? string.Create(CultureInfo.InvariantCulture, $"{job.Bike.Title}, odometer {shown}") : job.Bike.Title),
            Line("Point", $"{point.Title}, gauge '{record.Gauge.Name}' ({record.Gauge.Profile} at {record.Gauge.Port})"),
            Line("Turns", string.Create(CultureInfo.InvariantCulture, $"{(record.Figures as RunoutFigures)?.Turns ?? 0:0.0} turns, {record.Figures.Readings} readings, {record.Figures.Rejected} left out")),
            Line("Runout", RecordSentence.Value(record, unit) is { } tir ? $"{tir}  (total indicated, k = 2)" : "none"),
            Line("Limit", record.Limit is { } limit ? $"{LimitSentence.Bounds(limit, unit)}; {LimitSentence.Source(limit)}" : "none"),
            Line("Verdict", RecordSentence.VerdictOf(record).ToUpperInvariant()),
        };
        lines.AddRange(record.Missing is { } missing ? [Line("Missing", missing)] : []);
        lines.AddRange(record.Warnings.Select(warning => Line("Mind", warning.Sentence)));
        lines.Add($"{"Record",-Indent}{folder.JournalOf(record.Id)}");
        lines.Add($"{"Picture",-Indent}{folder.PngOf(record.Id)}");
        return string.Join(Environment.NewLine, lines);
    }

    // Words wrap under one another; paths do not, so that they can be copied.
    private static string Line(string label, string text)
    {
        var rows = new List<string> { "" };
        foreach (var word in text.Split(' '))
        {
            if (rows[^1].Length + word.Length > Width - Indent)
            {
                rows.Add("");
            }

            rows[^1] += (rows[^1].Length == 0 ? "" : " ") + word;
        }

        return $"{label,-Indent}" + string.Join(Environment.NewLine + new string(' ', Indent), rows);
    }
}

using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using Handspun.Jobs.Archives;

namespace Handspun.Archives;

/// <summary>Writes records as CSV (RFC 4180, UTF-8): a row a record.</summary>
internal static class RecordsCsv
{
    /// <summary>Writes them with their titles.</summary>
    public static void Write(IEnumerable<RecordRow> rows, TextWriter into)
    {
        using var csv = new CsvWriter(into, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" }, leaveOpen: true);
        WriteRow(csv, RecordRow.Columns);
        foreach (var row in rows)
        {
            WriteRow(csv, row.Cells);
        }
    }

    private static void WriteRow(CsvWriter csv, IReadOnlyList<object?> cells)
    {
        foreach (var cell in cells)
        {
            csv.WriteField(cell switch
            {
                null => "",
                bool truth => truth ? "yes" : "no",
                DateTimeOffset at => at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture),
                double number => Math.Round(number, 9).ToString("0.#########", CultureInfo.InvariantCulture),
                var text => text.ToString(),
            });
        }

        csv.NextRecord();
    }
}

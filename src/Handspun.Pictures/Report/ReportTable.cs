using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>A table in a report. Its head comes again on each page; a row stays together.</summary>
internal static class ReportTable
{
    private const float Between = 10;
    private const float Above = 4;

    /// <summary>Puts a table.</summary>
    /// <param name="sheets">Where.</param>
    /// <param name="columns">Each column's title and its share of the width.</param>
    /// <param name="rows">The cells of each row, as many as there are columns; the first is set strong.</param>
    public static void Put(Sheets sheets, IReadOnlyList<(string Title, float Share)> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var all = columns.Sum(column => column.Share);
        var widths = columns.Select(column => (sheets.Width - Between * (columns.Count - 1)) * column.Share / all).ToList();
        List<List<Passage>> laid = [.. rows.Select(row => row.Select((cell, i) => Passage.Of(cell, widths[i], i == 0 ? Type.SmallStrong : Type.Small)).ToList())];
        List<Passage> head = [.. columns.Select((column, i) => Passage.Of(column.Title, widths[i], Type.Label))];
        var headHeight = Height(head);
        sheets.Need(headHeight + (laid.Count > 0 ? Height(laid[0]) : 0));
        PutRow(sheets, head, widths, Ink.Frame);
        foreach (var row in laid)
        {
            if (Height(row) > sheets.Room && Height(row) + headHeight <= sheets.WholeHeight)
            {
                sheets.Break();
                PutRow(sheets, head, widths, Ink.Frame);
            }

            PutRow(sheets, row, widths, Ink.Ring);
        }
    }

    private static float Height(List<Passage> row) => row.Max(cell => cell.Height) + 2 * Above;

    private static void PutRow(Sheets sheets, List<Passage> row, List<float> widths, SKColor rule)
    {
        var height = Height(row);
        sheets.Put(height, (canvas, top) =>
        {
            var left = sheets.Left;
            for (var i = 0; i < row.Count; i++)
            {
                row[i].Draw(canvas, left, top + Above);
                left += widths[i] + Between;
            }

            using var paint = new SKPaint { Color = rule, IsStroke = true, StrokeWidth = 0.6f, IsAntialias = true };
            canvas.DrawLine(sheets.Left, top + height, sheets.Left + sheets.Width, top + height, paint);
        });
    }
}

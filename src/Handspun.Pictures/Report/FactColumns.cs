using Handspun.Jobs.Records;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>Labels with their texts, in columns side by side.</summary>
internal static class FactColumns
{
    private const float Between = 22;
    private const float LabelShare = 0.32f;

    /// <summary>Puts the columns; each label stands left of its text.</summary>
    public static void Put(Sheets sheets, params IReadOnlyList<IReadOnlyList<Figure>> columns)
    {
        var filled = columns.Where(column => column.Count > 0).ToList();
        if (filled.Count == 0)
        {
            return;
        }

        var width = (sheets.Width - Between * (filled.Count - 1)) / filled.Count;
        var label = Math.Max(50, width * LabelShare);
        var laid = filled.ConvertAll(column => column.Select(figure => (
            Label: Passage.Of(figure.Label, label - 6, Type.Label),
            Text: Passage.Of(figure.Text, width - label, Type.Small))).ToList());
        sheets.Put(laid.Max(column => column.Sum(RowHeight)), (canvas, top) =>
        {
            for (var i = 0; i < laid.Count; i++)
            {
                Draw(canvas, laid[i], sheets.Left + i * (width + Between), top, label);
            }
        });
    }

    /// <summary>Puts the figures in one row, each label above its text; what does not fit goes into a further row.</summary>
    public static void PutRow(Sheets sheets, IReadOnlyList<Figure> figures)
    {
        var row = new List<(Passage Label, Passage Text, float Left)>();
        var left = 0f;
        foreach (var figure in figures)
        {
            var (label, text) = (Passage.Of(figure.Label, sheets.Width, Type.Label), Passage.Of(figure.Text, sheets.Width, Type.Strong));
            var wide = Math.Max(label.Width, text.Width);
            if (row.Count > 0 && left + wide > sheets.Width)
            {
                Flush();
            }

            row.Add((label, text, left));
            left += wide + Between;
        }

        Flush();

        void Flush()
        {
            var cells = row.ToArray();
            row.Clear();
            left = 0;
            if (cells.Length > 0)
            {
                sheets.Put(cells.Max(cell => cell.Label.Height + cell.Text.Height) + 6, (canvas, top) =>
                {
                    foreach (var cell in cells)
                    {
                        cell.Label.Draw(canvas, sheets.Left + cell.Left, top);
                        cell.Text.Draw(canvas, sheets.Left + cell.Left, top + cell.Label.Height);
                    }
                });
            }
        }
    }

    private static float RowHeight((Passage Label, Passage Text) row) => Math.Max(row.Label.Height, row.Text.Height) + 2.5f;

    private static void Draw(SKCanvas canvas, List<(Passage Label, Passage Text)> rows, float left, float top, float label)
    {
        foreach (var row in rows)
        {
            row.Label.Draw(canvas, left, top);
            row.Text.Draw(canvas, left + label, top);
            top += RowHeight(row);
        }
    }
}

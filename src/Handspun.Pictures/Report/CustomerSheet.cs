using Handspun.Jobs.Reports;
using Handspun.Pictures.Page;
using SkiaSharp;

namespace Handspun.Pictures.Report;

/// <summary>The first page: for the customer.</summary>
internal static class CustomerSheet
{
    private const float Sign = 13;
    private const float Indent = 21;

    public static void Put(Sheets sheets, JobReport report)
    {
        sheets.Text($"{ReportWords.Report} {report.Number} · {report.Made}", Type.Label);
        sheets.Gap(4);
        sheets.Text(report.Bike, Type.Bike);
        sheets.Text(report.Title, Type.Lead);
        sheets.Gap(8);
        FactColumns.PutRow(sheets, report.Facts);
        sheets.Gap(4);
        PutHeadline(sheets, report.Customer);
        PutSection(sheets, ReportWords.Found);
        foreach (var line in report.Customer.Found)
        {
            PutFound(sheets, line);
        }

        PutSection(sheets, ReportWords.Means);
        foreach (var thought in report.Customer.Means)
        {
            sheets.Text(thought, Type.Body);
            sheets.Gap(4);
        }

        PutSection(sheets, ReportWords.Advised);
        for (var i = 0; i < report.Customer.Advised.Count; i++)
        {
            PutStep(sheets, i + 1, report.Customer.Advised[i]);
        }

        sheets.Gap(10);
        Framed.Put(sheets, ReportWords.ManualFirst, Type.Strong, Ink.Text);
    }

    internal static void PutSection(Sheets sheets, string title)
    {
        sheets.Gap(12);
        sheets.Need(60);
        sheets.Text(title, Type.Section);
        sheets.Gap(3);
    }

    private static void PutHeadline(Sheets sheets, CustomerPage page)
    {
        var text = Passage.Of(page.Headline, sheets.Width - 64, Type.Headline);
        var height = Math.Max(text.Height, 30) + 20;
        sheets.Put(height, (canvas, top) =>
        {
            using var frame = new SKPaint { Color = ReportSign.Colour(page.Code), IsStroke = true, StrokeWidth = 1.6f, IsAntialias = true };
            canvas.DrawRect(sheets.Left, top, sheets.Width, height, frame);
            ReportSign.Draw(canvas, page.Code, sheets.Left + 12, top + (height - 30) / 2, 30);
            text.Draw(canvas, sheets.Left + 54, top + (height - text.Height) / 2);
        });
    }

    private static void PutFound(Sheets sheets, FoundLine line)
    {
        var title = Passage.Of(line.Title, sheets.Width - Indent, Type.Strong);
        var text = Passage.Of(line.Text, sheets.Width - Indent, Type.Body);
        sheets.Put(title.Height + text.Height + 4, (canvas, top) =>
        {
            ReportSign.Draw(canvas, line.Code, sheets.Left, top, Sign);
            title.Draw(canvas, sheets.Left + Indent, top);
            text.Draw(canvas, sheets.Left + Indent, top + title.Height);
        });
    }

    private static void PutStep(Sheets sheets, int number, string step)
    {
        var text = Passage.Of(step, sheets.Width - Indent, Type.Body);
        sheets.Put(text.Height + 4, (canvas, top) =>
        {
            Passage.Of($"{number}.", Indent, Type.Strong).Draw(canvas, sheets.Left, top);
            text.Draw(canvas, sheets.Left + Indent, top);
        });
    }
}

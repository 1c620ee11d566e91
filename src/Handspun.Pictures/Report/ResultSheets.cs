using Handspun.Jobs.Reports;
using Handspun.Pictures.Page;

namespace Handspun.Pictures.Report;

/// <summary>The results, one after another; one with a picture takes a page.</summary>
internal static class ResultSheets
{
    private const float Sign = 18;
    private const float LeastPicture = 240;
    private const float LeastText = 150;

    public static void Put(Sheets sheets, JobReport report, IReportPictures pictures)
    {
        if (report.Results.Count == 0)
        {
            return;
        }

        sheets.Break();
        sheets.Text(ReportWords.Results, Type.Section);
        sheets.Gap(2);
        foreach (var sentence in report.HowToRead)
        {
            sheets.Text(sentence, Type.Small);
        }

        sheets.Gap(10);
        for (var i = 0; i < report.Results.Count; i++)
        {
            var picture = pictures.PictureOf(report.Results[i].Record) is { } svg ? StoredPicture.Read(svg) : null;
            sheets.Need(picture is null ? LeastText : LeastText + LeastPicture);
            if (i > 0)
            {
                sheets.Rule(above: 10, below: 12);
            }

            Put(sheets, report.Results[i], picture);
        }
    }

    private static void Put(Sheets sheets, ReportedResult result, StoredPicture? picture)
    {
        sheets.Text(result.Title, Type.Title);
        PutValue(sheets, result);
        sheets.Text(result.Verdict.Proven is { } proven ? $"{proven}. {result.Verdict.Sentence}" : result.Verdict.Sentence, Type.Body);
        sheets.Gap(4);
        if (result.Verdict.Provisional is { } provisional)
        {
            Framed.Put(sheets, provisional, Type.Strong, Ink.Undecided);
            sheets.Gap(2);
        }

        foreach (var warning in result.Warnings)
        {
            sheets.Text($"Mind: {warning}", Type.Body);
        }

        sheets.Gap(6);
        FactColumns.Put(sheets, [.. result.Limit, .. result.Proof], result.Figures);
        if (picture is not null)
        {
            PutPicture(sheets, picture);
        }
    }

    private static void PutValue(Sheets sheets, ReportedResult result) => sheets.Put(Type.Value.Size * 1.7f, (canvas, top) =>
    {
        ReportSign.Draw(canvas, result.Verdict.Code, sheets.Left, top + 3, Sign);
        var baseline = top + 18;
        Passage.DrawLine(canvas, result.Value, sheets.Left + Sign + 8, baseline, Type.Value);
        var left = sheets.Left + Sign + 8 + Passage.WidthOf(result.Value, Type.Value) + 10;
        Passage.DrawLine(canvas, $"{result.ValueTitle} · {result.Verdict.Plain}", left, baseline, Type.Body with { Colour = ReportSign.Colour(result.Verdict.Code), Strong = true });
    });

    private static void PutPicture(Sheets sheets, StoredPicture picture)
    {
        sheets.Gap(8);
        var natural = sheets.Width / picture.Size.Width;
        var scale = picture.Size.Height * natural <= sheets.Room ? natural : Math.Min(natural, Math.Max(LeastPicture, sheets.Room) / picture.Size.Height);
        sheets.Put(picture.Size.Height * scale, (canvas, top) =>
        {
            canvas.Save();
            canvas.Translate(sheets.Left + (sheets.Width - picture.Size.Width * scale) / 2, top);
            canvas.Scale(scale);
            picture.Draw(canvas);
            canvas.Restore();
        });
    }
}

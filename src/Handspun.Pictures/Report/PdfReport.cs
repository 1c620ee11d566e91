using Handspun.Jobs.Reports;
using Handspun.Pictures.Lettering;

namespace Handspun.Pictures.Report;

/// <summary>A job's report as a PDF: the customer's page first, then the evidence.</summary>
public static class PdfReport
{
    /// <summary>Writes it.</summary>
    /// <param name="report">What it says.</param>
    /// <param name="pictures">Where its pictures are.</param>
    /// <param name="paper">The paper that it is laid out for.</param>
    /// <param name="made">When it is made, for the document's own record.</param>
    /// <param name="into">Where it is written; it need not be able to seek.</param>
    /// <exception cref="MissingFontException">The fonts that the program brings along are not there.</exception>
    public static void Write(JobReport report, IReportPictures pictures, PaperSize paper, DateTimeOffset made, Stream into)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(pictures);
        ArgumentNullException.ThrowIfNull(paper);
        Typefaces.Check();
        var sheets = new Sheets(paper);
        sheets.OnOnePage(first => CustomerSheet.Put(first, report));
        ResultSheets.Put(sheets, report, pictures);
        WorkSheets.Put(sheets, report, pictures);
        var title = $"{ReportWords.Report} {report.Number}: {report.Bike}";
        sheets.Write(into, TextFit.Plain(title), made, $"Job {report.Number} · {report.Bike} · {report.Made}");
    }
}

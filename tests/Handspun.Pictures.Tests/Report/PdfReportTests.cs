using System.Globalization;
using System.Text.RegularExpressions;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Reports;
using Handspun.Pictures.Report;
using SkiaSharp;

namespace Handspun.Pictures.Tests.Report;

public sealed partial class PdfReportTests
{
    [Theory]
    [InlineData("a4", 210, 297)]   // ISO 216
    [InlineData("letter", 215.9, 279.4)]   // 8½ in by 11 in
    public async Task Pdf_OpenedByPoppler_HasItsSizeTitleAndPageNumbers(string paper, double width, double height)
    {
        var pdf = Write(ReportedJob.Of(5), PaperSize.Find(paper)!);

        var info = await Poppler.AskAsync("pdfinfo", pdf, "FILE");
        var text = await Poppler.AskAsync("pdftotext", pdf, "-layout", "FILE", "-");
        var pages = int.Parse(Regex.Match(info, @"Pages:\s+(\d+)").Groups[1].Value, CultureInfo.InvariantCulture);
        var size = PageSize().Match(info);
        Assert.Equal(width, Millimetres(size, "width"), tolerance: 0.1);
        Assert.Equal(height, Millimetres(size, "height"), tolerance: 0.1);
        Assert.Matches(@"Title:\s+Job report 2026-0042: 2004 Aldermoor Corvid 1200", info);
        Assert.Matches(@"Creat(ion)?Date:\s+\S+ Mar 15 09:26:53 2026", info);
        Assert.Equal(Enumerable.Range(1, pages).Select(page => $"Page {page} of {pages}"), PageNumber().Matches(text).Select(match => match.Value));
        Assert.Equal(pages, Regex.Count(text, "Job 2026-0042 · 2004 Aldermoor Corvid 1200"));
    }

    [Fact]
    public async Task Pdf_SaysWhatTheReportSays_WordForWord()
    {
        var report = ReportedJob.ReportOf(ReportedJob.Of(8));
        var pdf = Write(report, PaperSize.A4);

        var text = Flat(await Poppler.AskAsync("pdftotext", pdf, "-raw", "FILE", "-"));
        Assert.Contains(Flat(report.Customer.Headline), text, StringComparison.Ordinal);
        Assert.All(report.Customer.Found, line => Assert.Contains(Flat(line.Text), text, StringComparison.Ordinal));
        Assert.All([.. report.Customer.Means, .. report.Customer.Advised, .. report.HowToRead, .. report.Left, .. report.Cautions, ReportWords.ManualFirst], sentence => Assert.Contains(Flat(sentence), text, StringComparison.Ordinal));
        Assert.All(report.Results, result =>
        {
            Assert.Contains(Flat(result.Value), text, StringComparison.Ordinal);
            Assert.Contains(Flat(result.Verdict.Sentence), text, StringComparison.Ordinal);
            Assert.Contains(Flat(result.Verdict.Provisional ?? ""), text, StringComparison.Ordinal);
        });
        Assert.Contains(Flat("Zoë Ångström-Дубова, Ελένη"), text, StringComparison.Ordinal);   // letters that the fonts of the program lack
    }

    [Fact]
    public async Task CustomersPage_OfThirtyPoints_IsOnePage()
    {
        var report = ReportedJob.ReportOf(ReportedJob.Of(30));
        var pdf = Write(report, PaperSize.Letter);

        var first = Flat(await Poppler.AskAsync("pdftotext", pdf, "-raw", "-l", "1", "FILE", "-"));
        Assert.Contains(Flat(ReportWords.ManualFirst), first, StringComparison.Ordinal);
        Assert.Contains("NOTCONFIRMED", first, StringComparison.Ordinal);
    }

    // The goal for a job of thirty points, whose photos here are worse to pack than any that a phone takes.
    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(200)]
    public async Task Pdf_OfThirtyPointsAndManyPhotos_StaysBelowTwoMegabytes_WithEveryPhotoInIt(int photos)
    {
        var pdf = Write(ReportedJob.Of(30, photos), PaperSize.A4);

        Assert.InRange(pdf.Length, 100_000, 2_000_000);
        Assert.Equal(photos, Regex.Count(await Poppler.AskAsync("pdfimages", pdf, "-list", "FILE"), @"(?m)^\s*\d+\s+\d+\s+image\s+\d+\s+\d+"));
    }

    [Fact]
    public async Task Pages_AreDrawn_AndNothingReachesIntoTheMargin()
    {
        foreach (var page in await Poppler.PagesAsync(Write(ReportedJob.Of(4), PaperSize.A4), dotsPerInch: 50))
        {
            using var image = SKBitmap.Decode(page);
            var inked = Enumerable.Range(0, image.Width * image.Height).Where(i => image.GetPixel(i % image.Width, i / image.Width).Red < 200).ToList();
            Assert.True(inked.Count > 300, "The page is empty.");
            Assert.InRange(inked.Min(i => i % image.Width) * 72.0 / 50, 42, 60);
            Assert.InRange(inked.Max(i => i % image.Width) * 72.0 / 50, 500, 595.3 - 42);
            Assert.InRange(inked.Max(i => i / image.Width) * 72.0 / 50, 740, 841.9 - 40);
            Assert.True(inked.GroupBy(i => i / image.Width).MinBy(row => row.Key)!.Count() < image.Width / 2, "The page begins with a line that nothing is above of.");
        }
    }

    [Fact]
    public async Task Word_ThatIsTooLongForALine_IsCutAndNotLost()
    {
        var endless = string.Concat(Enumerable.Range(0, 60).Select(i => $"x{i:000}"));
        var pdf = Write(ReportedJob.Of(4, customer: endless), PaperSize.A4);

        Assert.Contains(endless, Flat(await Poppler.AskAsync("pdftotext", pdf, "-raw", "FILE", "-")), StringComparison.Ordinal);
    }

    private static byte[] Write(Job job, PaperSize paper) => Write(ReportedJob.ReportOf(job), paper);

    private static byte[] Write(JobReport report, PaperSize paper)
    {
        using var into = new MemoryStream();
        PdfReport.Write(report, new ReportPictures(), paper, ReportedJob.Clock.Now, into);
        var kept = Environment.GetEnvironmentVariable("HANDSPUN_KEEP_PDF");
        if (kept is not null)
        {
            File.WriteAllBytes(Path.Combine(kept, $"report-{report.Results.Count}-{report.Findings.Sum(finding => finding.Photos.Count)}-{paper.Name}.pdf"), into.ToArray());
        }

        return into.ToArray();
    }

    // Where a line is broken is not what is said.
    private static string Flat(string text) => Blank().Replace(text, "");

    private static double Millimetres(Match match, string side) => double.Parse(match.Groups[side].Value, CultureInfo.InvariantCulture) / 72 * 25.4;

    [GeneratedRegex(@"Page size:\s+(?<width>[\d.]+) x (?<height>[\d.]+) pts")]
    private static partial Regex PageSize();

    [GeneratedRegex(@"Page \d+ of \d+")]
    private static partial Regex PageNumber();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();
}

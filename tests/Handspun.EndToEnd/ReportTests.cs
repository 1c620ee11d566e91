using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;
using Handspun.EndToEnd.Parts;

namespace Handspun.EndToEnd;

public sealed partial class ReportTests
{
    [Fact]
    public async Task Report_OfAMeasuredJob_SaysTheSameOnThePageAndInThePdf()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync(tirMillimetres: 0.3302);   // 0.013 in, over the shipped limit by common practice, no source
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.MeasureAsync(job);
        await workshop.TellGaugeAsync("turn");
        await workshop.UntilRecordsAsync(job, 1);

        var page = Flat(WebUtility.HtmlDecode(Tag().Replace(await workshop.Http.GetStringAsync($"jobs/{job}/report"), " ")));
        var text = Flat(await TextOfAsync(await workshop.Http.GetByteArrayAsync($"api/v1/jobs/{job}/report.pdf?paper=a4"), workshop.Folder));

        foreach (var sentence in new[]
        {
            "Pinion shaft runout is outside its limit.",
            "Non-conformity proven. The value with its whole uncertainty lies outside the limit",
            "LIMIT NOT CONFIRMED",
            "The service manual of this machine and the judgement of a licensed mechanic come before this report.",
        })
        {
            Assert.Contains(Flat(sentence), page, StringComparison.Ordinal);
            Assert.Contains(Flat(sentence), text, StringComparison.Ordinal);
        }

        Assert.Contains(Flat("high spot"), text, StringComparison.Ordinal);   // letters of the picture itself
    }

    [Fact]
    public async Task Report_ThatCannotBe_IsASentence()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();

        var noJob = await workshop.Http.GetAsync("api/v1/jobs/1999-0001/report.pdf");
        var noPaper = await workshop.Http.GetAsync($"api/v1/jobs/{job}/report.pdf?paper=a5");

        Assert.Equal(HttpStatusCode.NotFound, noJob.StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, noPaper.StatusCode);
        Assert.Contains("use a4 or letter", await noPaper.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static async Task<string> TextOfAsync(byte[] pdf, string folder)
    {
        var file = Path.Combine(folder, "report.pdf");
        await File.WriteAllBytesAsync(file, pdf);
        using var process = Process.Start(new ProcessStartInfo("pdftotext", ["-raw", file, "-"]) { RedirectStandardOutput = true })!;
        var text = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return text;
    }

    private static string Flat(string text) => Blank().Replace(text, "");

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();
}

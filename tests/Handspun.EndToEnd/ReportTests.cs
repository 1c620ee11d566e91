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

    [Fact]
    public async Task Job_PackedAtOneStation_IsUnpackedAtAnother_FromTheCommandLine()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.MeasureAsync(job);
        await workshop.TellGaugeAsync("turn");
        await workshop.UntilRecordsAsync(job, 1);
        var (archive, there, pdf) = (Path.Combine(workshop.Folder, "job.zip"), Path.Combine(workshop.Folder, "there"), Path.Combine(workshop.Folder, "there.pdf"));

        Assert.Equal(0, (await RunAsync("pack", job, "--data", workshop.Data, "-o", archive)).Exit);
        Assert.Equal(0, (await RunAsync("unpack", archive, "--data", there)).Exit);
        var again = await RunAsync("unpack", archive, "--data", there);
        var records = await RunAsync("records", job, "--data", there, "--json");
        Assert.Equal(0, (await RunAsync("report", job, "--data", there, "-o", pdf)).Exit);

        Assert.Equal(1, again.Exit);
        Assert.Contains($"there is a job {job} here already", again.Errors, StringComparison.Ordinal);
        Assert.Equal((await workshop.RecordsAsync(job))[0].GetProperty("value_mm").GetDouble(), System.Text.Json.JsonDocument.Parse(records.Output).RootElement.GetProperty("value_mm").GetDouble());
        Assert.Contains(Flat("Total indicated runout"), Flat(await TextOfAsync(await File.ReadAllBytesAsync(pdf), workshop.Folder)), StringComparison.Ordinal);
    }

    private static async Task<(int Exit, string Output, string Errors)> RunAsync(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(Programs.Handspun, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, output, await errors);
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

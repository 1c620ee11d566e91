using Handspun.Jobs.Store;
using Handspun.Pages.Reports;
using Handspun.Pictures.Report;
using Handspun.Reports;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http;

/// <summary>A job's report, as a page and as a PDF.</summary>
internal static class ReportCalls
{
    /// <summary>Maps the page.</summary>
    public static void MapReportPage(this IEndpointRouteBuilder routes) => routes.MapGet(
        "/jobs/{job}/report",
        async (string job, JobStore store, ReportDesk desk, CancellationToken cancellation) =>
            new RazorComponentResult<ReportPage>(new { Model = desk.ViewOf(await store.GetAsync(job, cancellation)) }));

    /// <summary>Maps the PDF.</summary>
    public static void MapReports(this IEndpointRouteBuilder calls) => calls.MapGet("/jobs/{job}/report.pdf", PdfAsync);

    private static async Task<FileContentHttpResult> PdfAsync(string job, string? paper, JobStore store, ReportDesk desk, CancellationToken cancellation)
    {
        var size = paper is null ? desk.UsualPaper : PaperSize.Find(paper)
            ?? throw new RequestSentenceException($"There is no paper '{paper}': use {string.Join(" or ", PaperSize.All.Select(known => known.Name))}, or leave it out.");
        var found = await store.GetAsync(job, cancellation);
        return TypedResults.File(desk.Pdf(found, size), "application/pdf", $"job-{found.Number}.pdf");
    }
}

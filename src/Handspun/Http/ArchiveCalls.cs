using Handspun.Archives;
using Handspun.Http.Plans;
using Handspun.Jobs.Archives;
using Handspun.Jobs.Store;
using Handspun.Pages;
using Handspun.Pages.Plans;
using Handspun.Station;
using Handspun.Wire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http;

/// <summary>Everything of a job as files: its records as CSV, the job as JSON, all in one archive.</summary>
internal static class ArchiveCalls
{
    /// <summary>Maps them.</summary>
    public static void MapArchives(this IEndpointRouteBuilder calls)
    {
        calls.MapPost("/archives", async (HttpRequest request, ArchiveDesk desk, StationOptions options, CancellationToken cancellation) =>
        {
            var job = await desk.TakeAsync(await request.ReadFormAsync(cancellation), cancellation);
            return TypedResults.Created($"/api/v1/jobs/{job.Number}", JobMessage.Of(job, options.Unit));
        }).DisableAntiforgery().WithSize(ArchiveDesk.Size).Accepts<IFormFile>("multipart/form-data");
        var job = calls.MapGroup("/jobs/{job}");
        job.MapGet("/job.json", async (string job, JobStore store, CancellationToken cancellation) =>
            TypedResults.File(JobFile.Write(await store.GetAsync(job, cancellation)), "application/json", $"job-{job}.json"));
        job.MapGet("/records.csv", async (string job, JobStore store, StationOptions options, CancellationToken cancellation) =>
        {
            using var text = new StringWriter();
            RecordsCsv.Write(RecordRow.Of(await store.GetAsync(job, cancellation), options.Unit), text);
            return TypedResults.Text(text.ToString(), "text/csv; charset=utf-8");
        });
        job.MapGet("/archive.zip", async (string job, JobStore store, StationOptions options, TimeProvider time, CancellationToken cancellation) =>
        {
            var found = await store.GetAsync(job, cancellation);
            var packed = new FileStream(Path.GetTempFileName(), FileMode.Create, FileAccess.ReadWrite, FileShare.None, 81_920, FileOptions.DeleteOnClose);
            JobArchive.Write(found, options.Data, options.Unit, time.GetUtcNow(), packed);
            packed.Position = 0;
            return TypedResults.File(packed, "application/zip", $"job-{found.Number}.zip");
        });
    }

    /// <summary>Maps the page that takes an archive in.</summary>
    public static void MapIntakePage(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/intake", () => Page(FormState.Empty, StatusCodes.Status200OK)).ExcludeFromDescription();
        // The same-origin guard does for forms what a token would do.
        routes.MapPost("/intake", async (HttpRequest request, ArchiveDesk desk, CancellationToken cancellation) =>
        {
            var sent = await request.ReadFormAsync(cancellation);
            try
            {
                return (IResult)TypedResults.LocalRedirect($"/jobs/{(await desk.TakeAsync(sent, cancellation)).Number}");
            }
            catch (RequestSentenceException)
            {
                return Page(PageDesk.StateOf(sent) with { Sentence = "Choose the archive first: the file that another station packed." }, StatusCodes.Status400BadRequest);
            }
            catch (ArchiveRefusalException e)
            {
                return Page(PageDesk.StateOf(sent) with { Sentence = e.Message }, e.IsThere ? StatusCodes.Status409Conflict : StatusCodes.Status400BadRequest);
            }
        }).DisableAntiforgery().WithSize(ArchiveDesk.Size).ExcludeFromDescription();
    }

    /// <summary>Maps the published schemas.</summary>
    public static void MapSchemas(this IEndpointRouteBuilder routes) => routes.MapGet("/schemas/job-1.json", () => TypedResults.Stream(
        typeof(ArchiveCalls).Assembly.GetManifestResourceStream("job-1.json")!, "application/schema+json")).ExcludeFromDescription();

    private static RazorComponentResult<IntakePage> Page(FormState form, int status) => new(new { Form = form }) { StatusCode = status };
}

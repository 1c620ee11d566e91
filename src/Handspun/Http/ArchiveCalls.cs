using Handspun.Archives;
using Handspun.Jobs.Archives;
using Handspun.Jobs.Store;
using Handspun.Station;

namespace Handspun.Http;

/// <summary>Everything of a job as files: its records as CSV, the job as JSON, all in one archive.</summary>
internal static class ArchiveCalls
{
    /// <summary>Maps them.</summary>
    public static void MapArchives(this IEndpointRouteBuilder calls)
    {
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

    /// <summary>Maps the published schemas.</summary>
    public static void MapSchemas(this IEndpointRouteBuilder routes) => routes.MapGet("/schemas/job-1.json", () => TypedResults.Stream(
        typeof(ArchiveCalls).Assembly.GetManifestResourceStream("job-1.json")!, "application/schema+json")).ExcludeFromDescription();
}

using Handspun.Filing;
using Handspun.Gauges.Journal;
using Handspun.Jobs.Store;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Http;

/// <summary>Calls about single records and their files.</summary>
internal static class RecordCalls
{
    /// <summary>Maps them.</summary>
    public static void MapRecords(this IEndpointRouteBuilder calls)
    {
        var records = calls.MapGroup("/records/{record}");
        records.MapGet("", async (string record, JobStore store, StationOptions options, CancellationToken cancellation) =>
        {
            var (job, point, found) = await FindAsync(store, record, cancellation);
            return ResultMessage.Of(job, point, found, options.Unit);
        });
        records.MapGet("/picture.svg", (string record, RecordFolder folder, JobStore store, CancellationToken cancellation) =>
            FileAsync(record, folder.SvgOf, "image/svg+xml", store, cancellation));
        records.MapGet("/picture.png", (string record, RecordFolder folder, JobStore store, CancellationToken cancellation) =>
            FileAsync(record, folder.PngOf, "image/png", store, cancellation));
        records.MapGet("/journal.jsonl", (string record, RecordFolder folder, JobStore store, CancellationToken cancellation) =>
            JournalAsync(record, folder, store, cancellation));
    }

    private static async Task<IResult> FileAsync(string record, Func<string, string> path, string type, JobStore store, CancellationToken cancellation) =>
        TypedResults.PhysicalFile(await PathAsync(record, path, store, cancellation), type);

    private static async Task<IResult> JournalAsync(string record, RecordFolder folder, JobStore store, CancellationToken cancellation) =>
        TypedResults.Stream(JournalFile.OpenText(await PathAsync(record, folder.JournalOf, store, cancellation)), "application/jsonl");

    // The name is looked up in the store first, so that no path can be asked for.
    private static async Task<string> PathAsync(string record, Func<string, string> path, JobStore store, CancellationToken cancellation)
    {
        var (_, _, found) = await FindAsync(store, record, cancellation);
        return File.Exists(path(found.Id)) ? path(found.Id) : throw new JobNotFoundException(found.HasFiles
            ? $"Record '{record}' has no such file; the station's log says why."
            : $"Record '{record}' comes from no capture: it has no journal and no picture.");
    }

    private static async Task<(string Job, string Point, Jobs.Records.CaptureRecord Record)> FindAsync(JobStore store, string record, CancellationToken cancellation) =>
        await store.FindRecordAsync(record, cancellation) is { } found
            ? (found.Job.Number, found.Point.Code, found.Record)
            : throw new JobNotFoundException($"There is no record '{record}': the job's page lists its records.");
}

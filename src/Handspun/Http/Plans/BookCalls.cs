using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;
using Handspun.Photos;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Http.Plans;

/// <summary>Calls about what people do in a job: steps, gates, findings, parts, photos, closing.</summary>
/// <remarks>Each answers with the job as it is now, and its version as ETag. With <c>If-Match</c>, nothing may have been written since that version.</remarks>
internal static class BookCalls
{
    /// <summary>Maps them.</summary>
    public static void MapBook(this IEndpointRouteBuilder calls)
    {
        var job = calls.MapGroup("/jobs/{job}");
        job.MapGet("/book", async (string job, JobStore store, CancellationToken cancellation) =>
            (await store.GetAsync(job, cancellation)).Book.Select(EntryMessage.Of));
        job.MapPost("/steps/{step}", (string job, string step, StepRequest request, BookDesk desk, HttpContext http) =>
            desk.WriteAsync(http, job, Subject.Step(step), request.By, found => StepDeed(found, step, request, desk.Options)));
        job.MapPost("/findings", (string job, FindingRequest request, BookDesk desk, HttpContext http) =>
            desk.WriteAsync(http, job, request.By, found => FindingActs.Note(found, request.Read())));
        job.MapPost("/parts", (string job, PartRequest request, BookDesk desk, HttpContext http) =>
            desk.WriteAsync(http, job, request.By, found => PartActs.Add(found, request.Title, request.Place) is var (code, deed) ? [new BookLine(Subject.Part(code), deed)] : []));
        job.MapPost("/parts/{part}/faced", (string job, string part, FacedRequest request, BookDesk desk, HttpContext http) =>
            desk.WriteAsync(http, job, Subject.Part(part), request.By, found => PartActs.Face(found, part, request.Faced)));
        job.MapPost("/parts/{part}/decision", (string job, string part, DecisionRequest request, BookDesk desk, HttpContext http) =>
            desk.WriteAsync(http, job, Subject.Part(part), request.By, found => PartActs.Decide(found, part, request.Choice, request.Why)));
        job.MapPost("/close", (string job, CloseRequest request, BookDesk desk, HttpContext http) =>
            desk.WriteAsync(http, job, Subject.Job, request.By, found => JobActs.Close(found, request.Why)));
        job.MapPost("/reopen", (string job, CloseRequest request, BookDesk desk, HttpContext http) =>
            desk.WriteAsync(http, job, Subject.Job, request.By, found => JobActs.Reopen(found, request.Why)));
        job.MapPost("/photos", TakePhotosAsync).DisableAntiforgery().WithSize(PhotoDesk.Size).Accepts<IFormFile>("multipart/form-data");
        job.MapGet("/photos/{photo}", PhotoAsync);
    }

    /// <summary>What a step's act writes.</summary>
    public static Deed StepDeed(Job job, string step, StepRequest request, StationOptions options) => request.Act switch
    {
        "tick" => StepActs.Tick(job, step, request.Words),
        "untick" => StepActs.Untick(job, step, request.Why),
        "skip" => StepActs.Skip(job, step, request.Why),
        "take-up-again" => StepActs.TakeUpAgain(job, step, request.Why),
        "go-on" or "stop" => StepActs.Decide(job, step, request.Act == "go-on", request.Why, request.Record, gate => GateSentence.Result(gate, options.Unit)),
        _ => throw new BookRefusalException("act", $"act '{request.Act}' is not known: give tick, untick, skip, take-up-again, go-on or stop."),
    };

    private static async Task<JobMessage> TakePhotosAsync(string job, HttpRequest request, PhotoDesk desk, StationOptions options, CancellationToken cancellation)
    {
        var form = await request.ReadFormAsync(cancellation);
        if (form.Files.Count == 0)
        {
            throw new RequestSentenceException("There is no photo: send multipart/form-data with about (such as finding/3), by, caption, and the pictures.");
        }

        var (taken, refused) = await desk.TakeAsync(job, form["about"].ToString(), form["by"].ToString(), form["caption"].ToString(), form.Files, cancellation);
        return refused.Count > 0 ? throw new PhotoRefusalException(string.Join(" ", refused)) : JobMessage.Of(taken, options.Unit);
    }

    private static async Task<IResult> PhotoAsync(string job, string photo, bool? small, JobStore store, PhotoFolder folder, HttpContext http, CancellationToken cancellation)
    {
        var found = await store.GetAsync(job, cancellation);
        // The name is looked up in the book first, so that no path can be asked for.
        var kept = found.Entries.Select(entry => entry.Deed).OfType<PhotoAdded>().FirstOrDefault(added => added.Photo == photo);
        var path = kept is null ? null : folder.PathOf(found.Number, kept, small == true);
        http.Response.Headers.CacheControl = "private, max-age=31536000, immutable";   // a photo is never changed
        return File.Exists(path)
            ? TypedResults.PhysicalFile(path, path.EndsWith(".png", StringComparison.Ordinal) ? "image/png" : "image/jpeg")
            : throw new JobNotFoundException($"Job {job} has no photo '{photo}': its page shows those that it has.");
    }
}

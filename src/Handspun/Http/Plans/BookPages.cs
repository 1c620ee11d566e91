using System.Globalization;
using Handspun.Capture.Bays;
using Handspun.Gauges.Listening;
using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;
using Handspun.Pages;
using Handspun.Pages.Plans;
using Handspun.Photos;
using Handspun.Station;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http.Plans;

/// <summary>The pages of steps, findings and parts. What cannot be written comes back with the sentence and with all that was typed.</summary>
internal static class BookPages
{
    /// <summary>Maps them.</summary>
    public static void MapBookPages(this IEndpointRouteBuilder routes)
    {
        var job = routes.MapGroup("/jobs/{job}").ExcludeFromDescription();
        job.MapGet("", (string job, PageDesk desk, CancellationToken cancellation) => desk.ShowAsync(job, JobPage, cancellation));
        job.MapGet("/steps/{step}", (string job, string step, PageDesk desk, CancellationToken cancellation) => desk.ShowAsync(job, StepPage(step), cancellation));
        job.MapGet("/findings/new", (string job, PageDesk desk, CancellationToken cancellation) => desk.ShowAsync(job, FindingPage(""), cancellation));
        job.MapGet("/parts", (string job, PageDesk desk, CancellationToken cancellation) => desk.ShowAsync(job, PartsPage, cancellation));
        job.MapGet("/parts/{part}", (string job, string part, PageDesk desk, CancellationToken cancellation) => desk.ShowAsync(job, PartPage(part), cancellation));

        // The same-origin guard does for forms what a token would do.
        job.MapPost("/steps/{step}", (string job, string step, PageDesk desk, HttpRequest request) => desk.WriteAsync(
            job, request, StepPage(step), Subject.Step(step),
            (found, form) => [new(Subject.Step(step), BookCalls.StepDeed(found, step, new(form.Of("act"), null, form.Of("why"), form.Of("words"), form.Typed.ContainsKey("record") ? form.Of("record") : null), desk.Options))],
            (found, form) => form.Of("act") is "tick" or "skip" && JobStanding.Of(found).Next is { } next ? ViewsOfPlans.AddressOf(found, next.Step.Code) : ViewsOfPlans.AddressOf(found, step))).DisableAntiforgery();
        job.MapPost("/parts", (string job, PageDesk desk, HttpRequest request) => desk.WriteAsync(
            job, request, PartsPage, null,
            (found, form) => PartActs.Add(found, form.Of("title"), form.Of("place")) is var (code, deed) ? [new(Subject.Part(code), deed)] : [],
            (found, _) => $"/jobs/{found.Number}/parts")).DisableAntiforgery();
        job.MapPost("/parts/{part}/faced", (string job, string part, PageDesk desk, HttpRequest request) => desk.WriteAsync(
            job, request, PartPage(part), Subject.Part(part),
            (found, form) => [new(Subject.Part(part), PartActs.Face(found, part, form.Of("faced")))],
            (found, _) => ViewsOfFindings.PartAddress(found, part))).DisableAntiforgery();
        job.MapPost("/parts/{part}/decision", (string job, string part, PageDesk desk, HttpRequest request) => desk.WriteAsync(
            job, request, PartPage(part), Subject.Part(part),
            (found, form) => [new(Subject.Part(part), PartActs.Decide(found, part, form.Of("choice"), form.Of("why")))],
            (found, _) => ViewsOfFindings.PartAddress(found, part))).DisableAntiforgery();
        job.MapPost("/close", (string job, PageDesk desk, HttpRequest request) => desk.WriteAsync(
            job, request, JobPage, Subject.Job, (found, form) => [new(Subject.Job, JobActs.Close(found, form.Of("why")))], (found, _) => $"/jobs/{found.Number}")).DisableAntiforgery();
        job.MapPost("/reopen", (string job, PageDesk desk, HttpRequest request) => desk.WriteAsync(
            job, request, JobPage, Subject.Job, (found, form) => [new(Subject.Job, JobActs.Reopen(found, form.Of("why")))], (found, _) => $"/jobs/{found.Number}")).DisableAntiforgery();
        job.MapPost("/findings", NoteAsync).DisableAntiforgery().WithSize(PhotoDesk.Size);
        job.MapPost("/photos", TakePhotosAsync).DisableAntiforgery().WithSize(PhotoDesk.Size);
    }

    private static PageOfJob JobPage => (job, shown, form) => Page<JobPage>(ViewsOfJobs.Job(job, shown, form));

    private static PageOfJob PartsPage => (job, _, form) =>
        Page<PartsPage>(new PartsView { Job = job.Number, Bike = job.Bike.Title, Parts = ViewsOfFindings.Parts(job), Version = job.Version, Form = form });

    private static PageOfJob StepPage(string step) => (job, shown, form) => Page<StepPage>(ViewsOfSteps.Of(job, step, shown, form));

    private static PageOfJob FindingPage(string step) => (job, shown, form) =>
        step.Length > 0 ? StepPage(step)(job, shown, form) : Page<FindingPage>(ViewsOfFindings.Form(job, "", form));

    private static PageOfJob PartPage(string part) => (job, _, form) => Page<PartPage>(ViewsOfFindings.Part(
        job,
        JobParts.Of(job).FirstOrDefault(p => p.Code == part) ?? throw new JobNotFoundException($"Job {job.Number} has no part '{part}': its page lists its parts."),
        form));

    private static RazorComponentResult Page<TPage>(object model) where TPage : IComponent => new(typeof(TPage), new { Model = model });

    // The finding is written first: a photo that is none takes no words with it.
    private static async Task<IResult> NoteAsync(string job, PageDesk desk, PhotoDesk photos, HttpRequest request)
    {
        var sent = await request.ReadFormAsync(request.HttpContext.RequestAborted);
        var step = sent["step"].ToString();
        Job? noted = null;
        var answer = await desk.WriteAsync(
            job, request, FindingPage(step), null,
            (found, form) => FindingActs.Note(found, new TypedFinding
            {
                Signs = form.Typed.GetValueOrDefault("signs") ?? [],
                Words = form.Of("words"),
                Place = form.Of("place"),
                Step = step,
                Part = form.Of("part"),
                NewPart = form.Of("new_part"),
                Choice = form.Of("choice"),
                Why = form.Of("why"),
            }),
            (found, _) => (noted = found) is not null && step.Length > 0 ? ViewsOfPlans.AddressOf(found, step) : $"/jobs/{found.Number}");
        return noted is null || sent.Files.All(file => file.Length == 0)
            ? answer
            : await AddAsync(desk, photos, noted.Number, JobFindings.Of(noted)[^1].Entry.About, sent, answer, FindingPage(step), "The finding is noted. ", request.HttpContext.RequestAborted);
    }

    private static async Task<IResult> TakePhotosAsync(string job, PageDesk desk, PhotoDesk photos, HttpRequest request)
    {
        var sent = await request.ReadFormAsync(request.HttpContext.RequestAborted);
        var about = sent["about"].ToString();
        var back = sent["back"].ToString();
        var page = about.Split('/') switch
        {
            ["step", var step] => StepPage(step),
            ["part", var part] => PartPage(part),
            _ => JobPage,
        };
        var home = back.StartsWith($"/jobs/{job}", StringComparison.Ordinal) ? back : $"/jobs/{job}";
        return await AddAsync(desk, photos, job, about, sent, TypedResults.LocalRedirect(home), page, "", request.HttpContext.RequestAborted);
    }

    private static async Task<IResult> AddAsync(
        PageDesk desk, PhotoDesk photos, string job, string about, IFormCollection sent, IResult done, PageOfJob page, string before, CancellationToken cancellation)
    {
        try
        {
            var (found, refused) = await photos.TakeAsync(job, about, sent["by"].ToString(), sent["caption"].ToString(), sent.Files, cancellation);
            return refused.Count == 0 ? done : desk.Show(found, page, FormState.Empty with { Sentence = before + string.Join(" ", refused) }, StatusCodes.Status400BadRequest);
        }
        catch (BookRefusalException e)
        {
            return await desk.ShowAsync(job, page, cancellation, PageDesk.StateOf(sent) with { Field = e.Field, Sentence = e.Message }, StatusCodes.Status400BadRequest);
        }
    }
}

/// <summary>Shows a job on one of its pages.</summary>
/// <param name="job">The job.</param>
/// <param name="shown">How it is shown.</param>
/// <param name="form">What was typed and what is wrong.</param>
internal delegate RazorComponentResult PageOfJob(Job job, Showing shown, FormState form);

/// <summary>What a page needs besides the job.</summary>
/// <param name="InBay">What the bay measures.</param>
/// <param name="Gauges">The station's gauges.</param>
/// <param name="Unit">The unit of lengths.</param>
internal sealed record Showing(IReadOnlyList<BayTask> InBay, IReadOnlyList<string> Gauges, LengthUnit Unit);

/// <summary>Shows pages of jobs and writes what was sent from them.</summary>
internal sealed class PageDesk(JobStore store, JobBook book, Bay bay, GaugeRoster gauges, StationOptions options)
{
    /// <summary>What the station was told at its start.</summary>
    public StationOptions Options => options;

    /// <summary>Shows a page.</summary>
    public RazorComponentResult Show(Job job, PageOfJob page, FormState form, int status = StatusCodes.Status200OK)
    {
        var shown = page(job, new(bay.Tasks, [.. gauges.All.Select(gauge => gauge.Setup.Name.ToString())], options.Unit), form);
        shown.StatusCode = status;
        return shown;
    }

    /// <summary>Finds a job and shows a page of it.</summary>
    public async Task<IResult> ShowAsync(string job, PageOfJob page, CancellationToken cancellation, FormState? form = null, int status = StatusCodes.Status200OK) =>
        Show(await store.GetAsync(job, cancellation), page, form ?? FormState.Empty, status);

    /// <summary>Writes what was typed and goes on to another page, or shows the page again with what is wrong.</summary>
    public async Task<IResult> WriteAsync(
        string job, HttpRequest request, PageOfJob page, string? watched, Func<Job, FormState, IReadOnlyList<BookLine>> act, Func<Job, FormState, string> next)
    {
        var form = StateOf(await request.ReadFormAsync(request.HttpContext.RequestAborted));
        try
        {
            var seen = int.TryParse(form.Of("seen"), NumberStyles.None, CultureInfo.InvariantCulture, out var version) ? version : (int?)null;
            var written = await book.WriteAsync(job, _ => watched, new Signature(form.Of("by"), seen), found => act(found, form), request.HttpContext.RequestAborted);
            return TypedResults.LocalRedirect(next(written, form));
        }
        catch (BookRefusalException e)
        {
            return await ShowAsync(job, page, request.HttpContext.RequestAborted, form with { Field = e.Field, Sentence = e.Message }, StatusCodes.Status400BadRequest);
        }
        catch (Exception e) when (e is HeldBackException or WrittenMeanwhileException)
        {
            return await ShowAsync(job, page, request.HttpContext.RequestAborted, form with { Sentence = e.Message }, StatusCodes.Status409Conflict);
        }
    }

    /// <summary>What was typed in a form.</summary>
    public static FormState StateOf(IFormCollection sent) =>
        new(sent.ToDictionary(field => field.Key, field => (IReadOnlyList<string>)[.. field.Value.OfType<string>()]));
}

using Handspun.Bays;
using Handspun.Broker;
using Handspun.Http.Plans;
using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Store;
using Handspun.Jobs.Store.Finding;
using Handspun.Station;
using Handspun.Wire;
using Handspun.WorkedOut;

namespace Handspun.Http;

/// <summary>Calls about jobs, their points and limits.</summary>
internal static class JobCalls
{
    /// <summary>Maps them.</summary>
    public static void MapJobs(this IEndpointRouteBuilder calls)
    {
        var jobs = calls.MapGroup("/jobs");
        jobs.MapGet("", ListAsync);
        jobs.MapPost("", OpenAsync);
        jobs.MapGet("/{job}", async (string job, JobStore store, StationOptions options, HttpContext http, CancellationToken cancellation) =>
        {
            var found = await store.GetAsync(job, cancellation);
            http.Response.Headers.ETag = BookDesk.TagOf(found);
            return JobMessage.Of(found, options.Unit);
        });
        jobs.MapPut("/{job}/points/{point}/limit", SetLimitAsync);
        jobs.MapPost("/{job}/points/{point}/counting", PickAsync);
    }

    // The body stays a plain list; where the next page is stands in the header that RFC 8288 has for it.
    private static async Task<IEnumerable<JobMessage>> ListAsync(
        JobStore store, StationOptions options, HttpContext http, CancellationToken cancellation, string? find = null, int page = 1, int perPage = JobSearch.UsualPerPage)
    {
        var search = new JobSearch(find, page, perPage);
        var found = search.Problem is { } problem ? throw new RequestSentenceException(problem) : await store.SearchAsync(search, cancellation);
        if (page < found.Pages)
        {
            http.Response.Headers.Link = $"<{JobPageAddress.Of("/api/v1/jobs", search with { Page = page + 1 })}>; rel=\"next\"";
        }

        return found.Jobs.Select(job => JobMessage.Of(job, options.Unit));
    }

    private static async Task<IResult> OpenAsync(NewJob order, JobStore store, PlanShelf shelf, StationOptions options, TimeProvider time, CancellationToken cancellation)
    {
        if (JobOpening.Problems(order, shelf, time.GetLocalNow().Year, out var plan) is { Count: > 0 } problems)
        {
            return TypedResults.ValidationProblem(
                problems.ToDictionary(problem => problem.Key, problem => new[] { problem.Value }),
                detail: string.Join(" ", problems.Values),
                title: "Not understood");
        }

        var job = await store.OpenPlannedAsync(order, plan, cancellation);
        return TypedResults.Created($"/api/v1/jobs/{job.Number}", JobMessage.Of(job, options.Unit));
    }

    private static async Task<JobMessage> SetLimitAsync(
        string job, string point, LimitRequest request, BookDesk book, BayDesk desk, WorkedOutDesk workedOut, TimeProvider time, JobStore store, StationOptions options, HttpContext http, CancellationToken cancellation)
    {
        var changed = await book.WriteAsync(http, job, Subject.Limit(point), request.Signed, found => request.Read(found, point, time));
        await desk.RenewAsync(job, point, cancellation);
        await workedOut.RenewAsync(job, point, cancellation);
        return await store.FindAsync(job, cancellation) is { } now ? JobMessage.Of(now, options.Unit) : changed;
    }

    private static async Task<JobMessage> PickAsync(
        string job, string point, PickRequest request, JobStore store, ResultPublisher results, WorkedOutDesk workedOut, StationOptions options, CancellationToken cancellation)
    {
        var changed = await store.PickAsync(job, point, request.Record, cancellation);
        await results.PublishCountingAsync(changed, changed.Points.Find(p => p.Code == point)!, cancellation);
        await workedOut.RenewAsync(job, point, cancellation);
        return JobMessage.Of(await store.FindAsync(job, cancellation) ?? changed, options.Unit);
    }

    internal sealed record PickRequest(string Record);

    /// <summary>A limit as it is typed: each bound with its unit; <c>drive</c> is chain or gear, <c>age</c> new or service.</summary>
    internal sealed record LimitRequest(string? AtLeast, string? AtMost, string? Source, string? ConfirmedBy, string? Drive = null, string? Age = null, string? By = null)
    {
        /// <summary>The name in the job's book.</summary>
        public string Signed => new[] { By, ConfirmedBy }.FirstOrDefault(name => !string.IsNullOrWhiteSpace(name)) ?? "A program, over HTTP";

        public Deed Read(Job job, string point, TimeProvider time)
        {
            var typed = new TypedLimit(AtLeast, AtMost, Source, Drive, Age);
            return string.IsNullOrWhiteSpace(ConfirmedBy) ? LimitActs.Set(job, point, typed) : LimitActs.Confirm(job, point, typed, ConfirmedBy, time.GetUtcNow());
        }
    }
}

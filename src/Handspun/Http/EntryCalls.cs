using Handspun.Entries;
using Handspun.Jobs.Entries;
using Handspun.Jobs.Store;
using Handspun.Pages;
using Handspun.Station;
using Handspun.Wire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http;

/// <summary>Calls and pages for what is read off a tool by eye and typed.</summary>
internal static class EntryCalls
{
    /// <summary>Maps the call.</summary>
    public static void MapEntries(this IEndpointRouteBuilder calls) => calls.MapPost("/jobs/{job}/points/{point}/entries", TakeAsync);

    /// <summary>Maps the page.</summary>
    public static void MapEntryPages(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/jobs/{job}/points/{point}/entry", async (string job, string point, string? way, EntryDesk desk, StationOptions options, CancellationToken cancellation) =>
        {
            var (found, place) = await desk.FindAsync(job, point, cancellation);
            return EntryReading.Ways(place.Code, place.Kind).Count == 0
                ? throw new JobNotFoundException($"{place.Title} is not typed: it is worked out from other points.")
                : Page(ViewOfEntry.Empty(found, place, way, options.Unit), StatusCodes.Status200OK);
        });
        // The same-origin guard does for forms what a token would do.
        routes.MapPost("/jobs/{job}/points/{point}/entry", TakeFormAsync).DisableAntiforgery();
    }

    private static async Task<IResult> TakeAsync(string job, string point, TypedEntry entry, EntryDesk desk, StationOptions options, CancellationToken cancellation)
    {
        var answer = await desk.TakeAsync(job, point, entry, cancellation);
        return answer.Record is { } record
            ? TypedResults.Created($"/api/v1/records/{record.Id}", ResultMessage.Of(job, point, record, options.Unit))
            : TypedResults.ValidationProblem(
                answer.Problems.ToDictionary(problem => problem.Key, problem => new[] { problem.Value }),
                detail: string.Join(" ", answer.Problems.Select(problem => $"{problem.Key}: {problem.Value}")),
                title: "Not understood");
    }

    private static async Task<IResult> TakeFormAsync(string job, string point, string? way, HttpRequest request, EntryDesk desk, StationOptions options, CancellationToken cancellation)
    {
        var form = await request.ReadFormAsync(cancellation);
        var typed = new TypedEntry
        {
            Value = form["value"],
            Goes = form["goes"],
            DoesNotGo = form["does_not_go"],
            Highest = form["highest"],
            Lowest = form["lowest"],
            Unit = form["unit"],
            Tool = form["tool"],
            Division = form["division"],
            ErrorLimit = form["error_limit"],
            By = form["by"],
        };
        var answer = await desk.TakeAsync(job, point, typed, cancellation);
        if (answer.Record is not null)
        {
            return TypedResults.LocalRedirect($"/jobs/{job}#{point}");
        }

        var (found, place) = await desk.FindAsync(job, point, cancellation);
        return Page(ViewOfEntry.Typed(found, place, way, typed, answer.Problems, options.Unit), StatusCodes.Status400BadRequest);
    }

    private static RazorComponentResult<EntryPage> Page(EntryView model, int status) => new(new { Model = model }) { StatusCode = status };
}

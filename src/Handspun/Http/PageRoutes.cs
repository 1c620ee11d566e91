using System.Globalization;
using Handspun.Bays;
using Handspun.Capture.Bays;
using Handspun.Gauges.Listening;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Store;
using Handspun.Pages;
using Handspun.Station;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http;

/// <summary>The pages.</summary>
internal static class PageRoutes
{
    private const int ListedAtMost = 200;

    /// <summary>Maps them.</summary>
    public static void MapPages(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/", async (JobStore store, CancellationToken cancellation) =>
            Page<JobListPage>(ViewsOfJobs.List(await store.NewestAsync(ListedAtMost, cancellation))));
        routes.MapGet("/jobs/new", () => Page<JobFormPage>(JobFormView.Empty));
        routes.MapGet("/jobs/{job}", async (string job, JobStore store, Bay bay, GaugeRoster gauges, StationOptions options, CancellationToken cancellation) =>
            Page<JobPage>(ViewsOfJobs.Job(
                await store.FindAsync(job, cancellation) ?? throw JobNotFoundException.Job(job),
                bay.Tasks,
                [.. gauges.All.Select(gauge => gauge.Setup.Name.ToString())],
                options.Unit)));
        routes.MapGet("/bay", (Bay bay, BayDesk desk, string? gauge = null) =>
        {
            var task = bay.View(desk.Named(gauge)).Task;
            return Page<BayPage>(new BayView(task?.PointTitle, task?.Job));
        });
        // The same-origin guard does for forms what a token would do.
        routes.MapPost("/jobs", OpenAsync).DisableAntiforgery();
    }

    private static async Task<IResult> OpenAsync(HttpRequest request, JobStore store, TimeProvider time, CancellationToken cancellation)
    {
        var form = await request.ReadFormAsync(cancellation);
        var typed = new JobFormValues
        {
            Make = form["make"].ToString(),
            Model = form["model"].ToString(),
            Year = form["year"].ToString(),
            Odometer = form["odometer"].ToString(),
            Vin = form["vin"].ToString(),
            Customer = form["customer"].ToString(),
            Title = form["title"].ToString(),
        };
        var order = new NewJob
        {
            Make = typed.Make,
            Model = typed.Model,
            Year = Whole(typed.Year),
            Odometer = typed.Odometer.Trim().Length == 0 ? null : Whole(typed.Odometer) ?? -1,
            Vin = typed.Vin,
            Customer = typed.Customer,
            Title = typed.Title,
        };
        if (order.Problems(time.GetLocalNow().Year) is { Count: > 0 } problems)
        {
            return new RazorComponentResult<JobFormPage>(new { Model = new JobFormView(typed, problems) }) { StatusCode = StatusCodes.Status400BadRequest };
        }

        var job = await store.OpenAsync(order, PointCatalogue.Usual, cancellation);
        return TypedResults.LocalRedirect($"/jobs/{job.Number}");
    }

    private static int? Whole(string text) =>
        int.TryParse(text.Trim().Replace(" ", "", StringComparison.Ordinal), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static RazorComponentResult<TPage> Page<TPage>(object model) where TPage : Microsoft.AspNetCore.Components.IComponent => new(new { Model = model });
}

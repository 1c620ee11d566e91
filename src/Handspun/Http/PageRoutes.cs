using System.Globalization;
using Handspun.Bays;
using Handspun.Capture.Bays;
using Handspun.Http.Plans;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Store;
using Handspun.Jobs.Store.Finding;
using Handspun.Pages;
using Handspun.Screens;
using Handspun.ShopGauges;
using Handspun.Station;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http;

/// <summary>The pages.</summary>
internal static class PageRoutes
{
    /// <summary>Maps them.</summary>
    public static void MapPages(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/", async (JobStore store, CancellationToken cancellation, string? find = null, int page = 1) =>
        {
            var search = new JobSearch(find, page);
            return search.Problem is { } problem ? throw new RequestSentenceException(problem) : Page<JobListPage>(ViewsOfJobs.List(await store.ListAsync(search, cancellation)));
        });
        routes.MapGet("/jobs/new", (PlanShelf shelf) => Page<JobFormPage>(new JobFormView(new JobFormValues { Plan = PlanShelf.Usual }, ViewsOfPlans.Choice(shelf), new Dictionary<string, string>())));
        routes.MapGet("/gauges", async (GaugeDesk desk, CancellationToken cancellation) =>
            Page<GaugeListPage>(ViewsOfGauges.List(await desk.AllAsync(cancellation), desk.Today)));
        routes.MapGet("/gauges/{gauge}", async (string gauge, GaugeDesk desk, StationOptions options, CancellationToken cancellation) =>
            Page<GaugePage>(ViewsOfGauges.Gauge(await desk.FindAsync(gauge, cancellation), desk.Today, options.Unit)));
        routes.MapGet("/bay", (HttpContext context, Bay bay, BayDesk desk, string? gauge = null) =>
        {
            var task = bay.View(desk.Named(gauge)).Task;
            return Page<BayPage>(new BayView(task?.PointTitle, task?.Job, ShopDoor.Of(context) is null));
        });
        // The same-origin guard does for forms what a token would do.
        routes.MapPost("/jobs", OpenAsync).DisableAntiforgery();
    }

    private static async Task<IResult> OpenAsync(HttpRequest request, JobStore store, PlanShelf shelf, TimeProvider time, CancellationToken cancellation)
    {
        var form = await request.ReadFormAsync(cancellation);
        var typed = new JobFormValues
        {
            Make = form["make"].ToString(),
            Model = form["model"].ToString(),
            Year = form["year"].ToString(),
            Odometer = form["odometer"].ToString(),
            Vin = form["vin"].ToString(),
            Plate = form["plate"].ToString(),
            Customer = form["customer"].ToString(),
            Title = form["title"].ToString(),
            Plan = form["plan"].ToString(),
        };
        var order = new NewJob
        {
            Make = typed.Make,
            Model = typed.Model,
            Year = Whole(typed.Year),
            Odometer = typed.Odometer.Trim().Length == 0 ? null : Whole(typed.Odometer) ?? -1,
            Vin = typed.Vin,
            Plate = typed.Plate,
            Customer = typed.Customer,
            Title = typed.Title,
            Plan = typed.Plan,
        };
        if (JobOpening.Problems(order, shelf, time.GetLocalNow().Year, out var plan) is { Count: > 0 } problems)
        {
            return new RazorComponentResult<JobFormPage>(new { Model = new JobFormView(typed, ViewsOfPlans.Choice(shelf), problems) }) { StatusCode = StatusCodes.Status400BadRequest };
        }

        var job = await store.OpenPlannedAsync(order, plan, cancellation);
        return TypedResults.LocalRedirect($"/jobs/{job.Number}");
    }

    private static int? Whole(string text) =>
        int.TryParse(text.Trim().Replace(" ", "", StringComparison.Ordinal), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static RazorComponentResult<TPage> Page<TPage>(object model) where TPage : Microsoft.AspNetCore.Components.IComponent => new(new { Model = model });
}

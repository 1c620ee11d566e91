using System.Globalization;
using Handspun.Http.Plans;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Points;
using Handspun.Jobs.Store;
using Handspun.Pages.Limits;
using Handspun.Station;
using Handspun.Wire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http.Limits;

/// <summary>All limits: those of the open jobs, and those that a new job starts with.</summary>
internal static class LimitListCalls
{
    private const int PerPage = 60;
    private const int LastPage = 10_000;

    /// <summary>Maps the page.</summary>
    public static void MapLimitListPage(this IEndpointRouteBuilder routes) => routes.MapGet(
        "/limits",
        async (LimitStore store, PlanShelf shelf, StationOptions options, CancellationToken cancellation, int page = 1) =>
        {
            var found = await store.OfOpenJobsAsync(Checked(page), PerPage, cancellation);
            return new RazorComponentResult<LimitListPage>(new
            {
                Model = new LimitListView(
                    [.. found.Limits.Select(limit => Line(limit, options.Unit))],
                    Summary(found),
                    [.. Shipped(shelf).Select(limit => Line(limit, options.Unit))],
                    page > 1 ? Address(page - 1) : null,
                    page * PerPage < found.Count ? Address(page + 1) : null),
            });
        }).ExcludeFromDescription();

    /// <summary>Maps the call.</summary>
    public static void MapLimitLists(this IEndpointRouteBuilder calls) => calls.MapGet(
        "/limits",
        async (LimitStore store, PlanShelf shelf, CancellationToken cancellation, int page = 1) =>
        {
            var found = await store.OfOpenJobsAsync(Checked(page), PerPage, cancellation);
            return new LimitsMessage(
                [.. found.Limits.Select(one => new LimitInUseMessage(one.Job, one.Bike, one.Point, one.PointTitle, LimitMessage.Of(one.Limit)!))],
                found.Count,
                found.Unconfirmed,
                [.. Shipped(shelf).Select(one => new ShippedLimitMessage(one.Plan?.Code, one.Point, one.Title, LimitMessage.Of(one.Limit)!))]);
        });

    private static int Checked(int page) => page is > 0 and < LastPage ? page : throw new RequestSentenceException($"There is no page {page}: begin at /limits.");

    // The catalogue's, then what plans say in its place.
    private static IEnumerable<(Plan? Plan, string Point, string Title, Limit Limit)> Shipped(PlanShelf shelf) =>
    [
        .. PointCatalogue.All.Where(point => point.ShippedLimit is not null).Select(point => ((Plan?)null, point.Code, point.Title, point.ShippedLimit!)),
        .. shelf.All().Plans.SelectMany(plan => plan.Steps.Where(step => step is { Limit: not null, Point: not null }).Select(step => ((Plan?)plan, step.Point!, step.Title, step.Limit!))),
    ];

    private static LimitLine Line(LimitInUse one, LengthUnit unit) => new(
        one.PointTitle,
        $"Job {one.Job}, {one.Bike}",
        LimitSentence.Bounds(one.Limit, unit),
        LimitCondition.InWords(one.Limit),
        one.Limit.Source,
        one.Limit.ConfirmedBy is { } by ? one.Limit.ConfirmedAt is { } at ? $"{by}, {ViewsOfPlans.At(at)}" : by : null,
        $"/jobs/{one.Job}/points/{one.Point}/limit",
        one.Limit.Confirmed ? "Change" : "Look it up and confirm");

    private static LimitLine Line((Plan? Plan, string Point, string Title, Limit Limit) one, LengthUnit unit) => new(
        one.Title,
        one.Plan is { } plan ? $"Plan: {plan.Title}" : "Comes along with the program",
        LimitSentence.Bounds(one.Limit, unit),
        LimitCondition.InWords(one.Limit),
        one.Limit.Source,
        null,
        one.Plan is { } from ? $"/plans/{from.Code}" : null,
        "The plan");

    private static string Summary(LimitsInUse found) => found.Count == 0 ? "No open job has a limit yet."
        : found.Unconfirmed == 0 ? $"All {Counted(found.Count)} in the open jobs confirmed."
        : $"{Counted(found.Count)} in the open jobs, {found.Unconfirmed.ToString(CultureInfo.InvariantCulture)} of them not confirmed.";

    private static string Counted(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? "limit" : "limits")}");

    private static string Address(int page) => string.Create(CultureInfo.InvariantCulture, $"/limits?page={page}");
}

using Handspun.Jobs.History;
using Handspun.Jobs.Store;
using Handspun.Pages;
using Handspun.Pictures.History;
using Handspun.Station;
using Handspun.Wire;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http;

/// <summary>A bike over the years and among its kind, as a page, as data and as pictures.</summary>
internal static class HistoryCalls
{
    /// <summary>Maps the page.</summary>
    public static void MapHistoryPage(this IEndpointRouteBuilder routes) => routes.MapGet(
        "/jobs/{job}/history",
        async (string job, HistoryStore store, StationOptions options, CancellationToken cancellation) =>
        {
            var history = await store.OfBikeAsync(job, cancellation);
            return new RazorComponentResult<HistoryPage>(new { Model = ViewOfHistory.Of(job, history, await store.OfKindAsync(history, cancellation), options.Unit) });
        });

    /// <summary>Maps the calls.</summary>
    public static void MapHistory(this IEndpointRouteBuilder calls)
    {
        var history = calls.MapGroup("/jobs/{job}");
        history.MapGet("/history", async (string job, HistoryStore store, CancellationToken cancellation) =>
        {
            var found = await store.OfBikeAsync(job, cancellation);
            return HistoryMessage.Of(found, await store.OfKindAsync(found, cancellation));
        });
        history.MapGet("/points/{point}/history.svg", async (string job, string point, HistoryStore store, StationOptions options, CancellationToken cancellation) =>
        {
            var found = await store.OfBikeAsync(job, cancellation);
            return Svg(HistoryPicture.Draw(PointOf(found, job, point), found.Bike.Title, options.Unit));
        });
        history.MapGet("/points/{point}/kind.svg", async (string job, string point, HistoryStore store, StationOptions options, CancellationToken cancellation) =>
        {
            var found = await store.OfBikeAsync(job, cancellation);
            var at = PointOf(found, job, point);
            return (await store.OfKindAsync(found with { Points = [at] }, cancellation)).TryGetValue(point, out var spread)
                ? Svg(SpreadPicture.Draw(spread, $"{at.Title}, {found.Bike.Make} {found.Bike.Model}", options.Unit))
                : throw new JobNotFoundException($"Fewer than {KindSpread.FewestBikes} other bikes of this make and model were measured at point '{point}': nothing is said of them yet.");
        });
    }

    private static PointHistory PointOf(BikeHistory history, string job, string point) =>
        history.Points.FirstOrDefault(at => at.Code == point) ?? throw new JobNotFoundException($"The bike of job {job} has no result at point '{point}': its history lists those that it has.");

    private static FileContentHttpResult Svg(Pictures.Page.Picture picture) => TypedResults.File(picture.ToSvg(), "image/svg+xml");
}

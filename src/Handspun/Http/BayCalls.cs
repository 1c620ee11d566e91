using Handspun.Bays;
using Handspun.Capture.Bays;

namespace Handspun.Http;

/// <summary>Calls about the bay.</summary>
internal static class BayCalls
{
    /// <summary>Maps them.</summary>
    public static void MapBay(this IEndpointRouteBuilder calls)
    {
        var bay = calls.MapGroup("/bay");
        bay.MapGet("", (BayDesk desk, CancellationToken cancellation, string? gauge = null) => desk.DescribeAsync(desk.Named(gauge), cancellation));
        bay.MapPost("/point", async (PointRequest request, BayDesk desk, CancellationToken cancellation) =>
        {
            await desk.AssignAsync(request.Read(), request.CautionsRead, cancellation);
            return await desk.DescribeAsync(null, cancellation);
        });
        bay.MapDelete("/point", async (BayDesk desk, CancellationToken cancellation, string? gauge = null) =>
        {
            await desk.StandDownAsync(desk.Named(gauge), cancellation);
            return await desk.DescribeAsync(null, cancellation);
        });
        bay.MapPost("/back", async (BayDesk desk, CancellationToken cancellation, string? gauge = null) =>
        {
            await desk.BackAsync(desk.Named(gauge), cancellation);
            return await desk.DescribeAsync(desk.Named(gauge), cancellation);
        });
        bay.MapPost("/start", (Bay bayAtWork, BayDesk desk, CancellationToken cancellation, string? gauge = null) =>
        {
            bayAtWork.StartNow(desk.Named(gauge));
            return desk.DescribeAsync(desk.Named(gauge), cancellation);
        });
        bay.MapPost("/mark", (Bay bayAtWork, BayDesk desk, CancellationToken cancellation, string? gauge = null) =>
        {
            bayAtWork.MarkNow();
            return desk.DescribeAsync(desk.Named(gauge), cancellation);
        });
        bay.MapPost("/finish", (Bay bayAtWork, BayDesk desk, CancellationToken cancellation, string? gauge = null) =>
        {
            bayAtWork.FinishNow(desk.Named(gauge));
            return desk.DescribeAsync(desk.Named(gauge), cancellation);
        });
    }

    internal sealed record PointRequest(string Job, string Point, string? Gauge = null, bool CautionsRead = false, double? Wanted = null)
    {
        public BayWish Read() => Wanted is null or (>= BayWish.Fewest and <= BayWish.Most)
            ? new(Job, Point, Gauge, Wanted)
            : throw new RequestSentenceException($"wanted is a number of turns, cycles or passes from {BayWish.Fewest} to {BayWish.Most}; leave it out for what is usual.");
    }
}

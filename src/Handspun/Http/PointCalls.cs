using Handspun.Jobs.Points;
using Handspun.Jobs.Store;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Http;

/// <summary>Calls about the points that a job can take.</summary>
internal static class PointCalls
{
    /// <summary>The points of the catalogue: all can be measured in the bay, typed, or worked out.</summary>
    public static IEnumerable<MeasuringPoint> Offered => PointCatalogue.All;

    /// <summary>Maps them.</summary>
    public static void MapPoints(this IEndpointRouteBuilder calls)
    {
        calls.MapGet("/points", () => Offered.Select(CataloguePointMessage.Of));
        calls.MapPost("/jobs/{job}/points", async (string job, NewPointRequest request, JobStore store, StationOptions options, CancellationToken cancellation) =>
            JobMessage.Of(await store.AddPointAsync(job, request.Read(), cancellation), options.Unit));
    }

    internal sealed record NewPointRequest(string Point)
    {
        public MeasuringPoint Read() => Offered.FirstOrDefault(point => point.Code == Point)
            ?? throw new RequestSentenceException($"There is no point '{Point}' that can be measured: give one of {string.Join(", ", Offered.Select(point => point.Code))}.");
    }
}

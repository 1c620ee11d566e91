using Handspun.Broker;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Wire;

namespace Handspun.Http;

/// <summary>Calls about the gauges.</summary>
internal static class GaugeCalls
{
    /// <summary>Maps them.</summary>
    public static void MapGauges(this IEndpointRouteBuilder calls) =>
        calls.MapGet("/gauges", (GaugeRoster gauges, GaugeClock clock, GaugePublisher published) =>
            gauges.All.Select(gauge => GaugeStateMessage.Of(gauge.State, clock, published.NotSent)));
}

using Handspun.Broker;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Wire;

namespace Handspun.Http;

/// <summary>Calls about the gauges.</summary>
internal static class GaugeCalls
{
    /// <summary>Maps them.</summary>
    public static void MapGauges(this IEndpointRouteBuilder calls)
    {
        var all = calls.MapGroup("/gauges");
        all.MapGet("", (GaugeRoster gauges, GaugeClock clock, GaugePublisher published) =>
            gauges.All.Select(gauge => GaugeStateMessage.Of(gauge.State, clock, published.NotSent)));
        all.MapPost("/{gauge}/ask", async (string gauge, GaugeRoster gauges, GaugeClock clock, GaugePublisher published, CancellationToken cancellation) =>
        {
            var asked = Find(gauges, gauge);
            await asked.AskAsync(cancellation);
            return GaugeStateMessage.Of(asked.State, clock, published.NotSent);
        });
        all.MapPost("/{gauge}/index", (string gauge, GaugeRoster gauges, GaugeClock clock, GaugePublisher published) =>
        {
            var pulsed = Find(gauges, gauge);
            pulsed.Pulse(IndexSource.Key);
            return GaugeStateMessage.Of(pulsed.State, clock, published.NotSent);
        });
    }

    private static GaugeListener Find(GaugeRoster gauges, string asked) =>
        GaugeName.TryParse(asked, out var name) && gauges.Find(name) is { } gauge
            ? gauge
            : throw new GaugeNotFoundException($"There is no gauge '{asked}': the station has {string.Join(", ", gauges.All.Select(known => $"'{known.Setup.Name}'"))}.");
}

/// <summary>There is no such gauge.</summary>
/// <param name="sentence">Which there are.</param>
internal sealed class GaugeNotFoundException(string sentence) : Exception(sentence);

using Handspun.Gauges.Listening;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;
using Handspun.ShopGauges;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Http;

/// <summary>Calls about the gauges of the shop: what they are, their checks and studies.</summary>
internal static class ShopGaugeCalls
{
    /// <summary>Maps them.</summary>
    public static void MapShopGauges(this IEndpointRouteBuilder calls)
    {
        calls.MapPost("/gauges", async (GaugeRequest request, GaugeDesk desk, CancellationToken cancellation) =>
            ShopGaugeMessage.Of(await desk.DescribeAsync(request.Name?.Trim() ?? "", request.Read(), cancellation), desk.Today));
        var gauge = calls.MapGroup("/gauges/{gauge}");
        gauge.MapGet("", async (string gauge, GaugeDesk desk, CancellationToken cancellation) =>
            ShopGaugeMessage.Of(await desk.FindAsync(gauge, cancellation), desk.Today));
        gauge.MapPut("", async (string gauge, GaugeRequest request, GaugeDesk desk, CancellationToken cancellation) =>
            ShopGaugeMessage.Of(await desk.DescribeAsync(gauge, request.Read(), cancellation), desk.Today));
        gauge.MapPost("/checks", async (string gauge, CheckRequest request, GaugeDesk desk, CancellationToken cancellation) =>
            ShopGaugeMessage.Of(await desk.CheckAsync(gauge, request, cancellation), desk.Today));
        gauge.MapPost("/studies", async (string gauge, StudyRequest request, GaugeDesk desk, CancellationToken cancellation) =>
            ShopGaugeMessage.Of(await desk.StudyAsync(gauge, request, cancellation), desk.Today));
        gauge.MapGet("/shown", async (string gauge, GaugeDesk desk, StationOptions options, CancellationToken cancellation) =>
            Shown(await desk.FindAsync(gauge, cancellation), options.Unit));
    }

    private static ShownMessage Shown(KnownGauge gauge, LengthUnit unit) => gauge.State switch
    {
        { Condition: GaugeCondition.Reading, ShownMillimetres: { } shown } => new(gauge.Name, Math.Round(shown, 7), LengthText.AsTyped(Length.FromMillimetres(shown), unit)),
        { } state => throw new GaugeRefusalException($"Gauge '{gauge.Name}' shows nothing now. {state.Sentence}"),
        null => throw new GaugeRefusalException($"Gauge '{gauge.Name}' is not plugged in here: type what it shows."),
    };
}

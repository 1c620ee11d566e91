using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Broker;

/// <summary>Publishes what the gauges say. Readings that wait together go out together.</summary>
internal sealed class GaugePublisher(GaugeFeed feed, GaugeClock clock, StationBroker broker) : StationService
{
    private const int EventsWaiting = 4096;

    private readonly GaugeSubscription _subscription = feed.Subscribe("broker", EventsWaiting);

    /// <summary>Readings that were let go because the broker was slow, and messages that a subscriber was too slow for.</summary>
    public long NotSent => _subscription.Lost + broker.Overwritten;

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await broker.ReadyAsync(stoppingToken);
        var batches = new Dictionary<GaugeName, List<Reading>>();
        while (await _subscription.Events.WaitToReadAsync(CancellationToken.None))
        {
            while (_subscription.Events.TryRead(out var happened))
            {
                if (happened is GaugeEvent.Heard heard)
                {
                    if (!batches.TryGetValue(heard.Gauge, out var batch))
                    {
                        batches[heard.Gauge] = batch = [];
                    }

                    batch.AddRange(heard.Readings);
                }
                else if (happened is GaugeEvent.Changed changed)
                {
                    await broker.PublishAsync(Topics.State(changed.Gauge), GaugeStateMessage.Of(changed.State, clock, NotSent), retain: true, CancellationToken.None);
                }
            }

            foreach (var (gauge, readings) in batches.Where(batch => batch.Value.Count > 0))
            {
                await broker.PublishAsync(Topics.Readings(gauge), ReadingsMessage.Of(clock, readings), retain: false, CancellationToken.None);
                readings.Clear();
            }
        }
    }

    /// <summary>Publishes what still waits, the gauges' last state included, then ends.</summary>
    public override async Task StopAsync(CancellationToken cancellationToken)
    {
        _subscription.Dispose();
        await base.StopAsync(cancellationToken);
    }
}

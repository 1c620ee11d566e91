using System.Buffers;
using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using MQTTnet;

namespace Handspun.Delay;

/// <summary>Subscribers of the broker that note how long each reading took.</summary>
internal sealed class Ears : IAsyncDisposable
{
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(1);

    private readonly StationUnderTest _station;
    private readonly ConcurrentQueue<double> _delays = [];
    private readonly List<IMqttClient> _clients = [];

    private Ears(StationUnderTest station) => _station = station;

    /// <summary>Readings that were heard, by all subscribers together.</summary>
    public int Heard => _delays.Count;

    /// <summary>Subscribes so many times.</summary>
    public static async Task<Ears> ListenAsync(StationUnderTest station, int subscribers, CancellationToken cancellationToken)
    {
        var ears = new Ears(station);
        for (var i = 0; i < subscribers; i++)
        {
            var client = new MqttClientFactory().CreateMqttClient();
            client.ApplicationMessageReceivedAsync += ears.HearAsync;
            await client.ConnectAsync(new MqttClientOptionsBuilder().WithTcpServer("127.0.0.1", station.BrokerPort).WithClientId(string.Create(CultureInfo.InvariantCulture, $"ears-{i}")).Build(), cancellationToken);
            await client.SubscribeAsync("handspun/v1/gauges/+/readings", cancellationToken: cancellationToken);
            ears._clients.Add(client);
        }

        return ears;
    }

    /// <summary>Waits until nothing more comes.</summary>
    public async Task QuietAsync(CancellationToken cancellationToken)
    {
        for (var before = -1; before != Heard;)
        {
            before = Heard;
            await Task.Delay(Quiet, TimeProvider.System, cancellationToken);
        }
    }

    /// <summary>The delays, shortest first.</summary>
    public IReadOnlyList<double> DelaysMilliseconds() => _delays.IsEmpty
        ? throw new InvalidOperationException("Nothing was heard: run the service by hand with a gauge to see why.")
        : [.. _delays.Order()];

    public async ValueTask DisposeAsync()
    {
        foreach (var client in _clients)
        {
            await client.DisconnectAsync();
            client.Dispose();
        }
    }

    private Task HearAsync(MqttApplicationMessageReceivedEventArgs message)
    {
        var now = TimeProvider.System.GetTimestamp();
        var gauge = int.Parse(message.ApplicationMessage.Topic.Split('/')[3]["gauge-".Length..], CultureInfo.InvariantCulture);
        using var readings = JsonDocument.Parse(message.ApplicationMessage.Payload.ToArray());
        foreach (var millimetres in readings.RootElement.GetProperty("mm").EnumerateArray())
        {
            if (_station.SentAt(gauge, (int)Math.Round(1000 * millimetres.GetDouble())) is > 0 and var sent)
            {
                _delays.Enqueue(TimeProvider.System.GetElapsedTime(sent, now).TotalMilliseconds);
            }
        }

        return Task.CompletedTask;
    }
}

using System.Text.Json;
using Handspun.Station;
using Handspun.Wire;
using MQTTnet;
using MQTTnet.Protocol;
using MQTTnet.Server;

namespace Handspun.Broker;

/// <summary>The broker inside the station. Only the station publishes below its own topics, but for index pulses; anybody on this machine may listen.</summary>
internal sealed class StationBroker : StationService
{
    private const string Station = "handspun-station";

    private readonly MqttServer _server;
    private readonly PulseInlet _pulses;
    private readonly TaskCompletionSource _started = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private long _overwritten;

    public StationBroker(MqttServer server, PulseInlet pulses)
    {
        (_server, _pulses) = (server, pulses);
        server.StartedAsync += _ =>
        {
            _started.TrySetResult();
            return Task.CompletedTask;
        };
        server.ValidatingConnectionAsync += NameTheNameless;
        server.InterceptingPublishAsync += Guard;
        server.QueuedApplicationMessageOverwrittenAsync += CountLoss;
    }

    /// <summary>Messages that a slow subscriber did not get.</summary>
    public long Overwritten => Interlocked.Read(ref _overwritten);

    /// <summary>Waits until the broker takes messages, which is only when the whole station has started.</summary>
    public Task ReadyAsync(CancellationToken cancellationToken) => _started.Task.WaitAsync(cancellationToken);

    /// <summary>Publishes a message as JSON. Where the broker has been stopped, nobody can be listening and it is let go.</summary>
    public async Task PublishAsync<T>(string topic, T message, bool retain, CancellationToken cancellationToken)
    {
        if (!_server.IsStarted)
        {
            return;
        }

        var packet = new MqttApplicationMessageBuilder()
            .WithTopic(topic)
            .WithPayload(JsonSerializer.SerializeToUtf8Bytes(message, WireJson.Options))
            .WithContentType("application/json")
            .WithQualityOfServiceLevel(MqttQualityOfServiceLevel.AtLeastOnce)
            .WithRetainFlag(retain)
            .Build();
        await _server.InjectApplicationMessage(new InjectedMqttApplicationMessage(packet) { SenderClientId = Station }, cancellationToken);
    }

    /// <summary>Closes every connection; the web server waits for that.</summary>
    public override async Task StopAsync(CancellationToken cancellationToken)
    {
        if (_server.IsStarted)
        {
            await _server.StopAsync(new MqttServerStopOptionsBuilder().Build());
        }

        await base.StopAsync(cancellationToken);
    }

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => Task.CompletedTask;   // the host starts the server itself

    // A client may leave its name to the broker (MQTT 5, 3.1.3.1).
    private static Task NameTheNameless(ValidatingConnectionEventArgs connecting)
    {
        if (string.IsNullOrEmpty(connecting.ClientId))
        {
            connecting.AssignedClientIdentifier = "guest-" + Guid.NewGuid().ToString("N");
            connecting.ReasonCode = MqttConnectReasonCode.Success;
        }

        return Task.CompletedTask;
    }

    private Task Guard(InterceptingPublishEventArgs publishing)
    {
        var message = publishing.ApplicationMessage;
        if (publishing.ClientId != Station && message.Topic.StartsWith(Topics.Root, StringComparison.Ordinal) && !_pulses.TryTake(message.Topic, message.Retain))
        {
            publishing.ProcessPublish = false;
            publishing.Response.ReasonCode = MqttPubAckReasonCode.NotAuthorized;
        }

        return Task.CompletedTask;
    }

    private Task CountLoss(QueueMessageOverwrittenEventArgs lost)
    {
        Interlocked.Increment(ref _overwritten);
        return Task.CompletedTask;
    }
}

using System.Threading.Channels;
using Handspun.Capture.Bays;
using Handspun.Capture.Finishing;
using Handspun.Capture.Progress;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Broker;

/// <summary>Publishes how far captures have come. Only the newest matters: what waits too long is let go.</summary>
internal sealed class ProgressPublisher(StationBroker broker) : StationService, ICaptureReceiver
{
    private const int Waiting = 64;

    private readonly Channel<CaptureProgress> _queue = Channel.CreateBounded<CaptureProgress>(
        new BoundedChannelOptions(Waiting) { FullMode = BoundedChannelFullMode.DropOldest, SingleReader = true });

    /// <inheritdoc/>
    public string Name => "The broker";

    /// <inheritdoc/>
    public ValueTask ProgressAsync(CaptureProgress progress, CancellationToken cancellationToken) => _queue.Writer.WriteAsync(progress, cancellationToken);

    /// <inheritdoc/>
    public ValueTask StartedAsync(StartedCapture capture, CancellationToken cancellationToken) => ValueTask.CompletedTask;

    /// <inheritdoc/>
    public ValueTask DroppedAsync(string capture, CancellationToken cancellationToken) => ValueTask.CompletedTask;

    /// <inheritdoc/>
    public ValueTask FinishedAsync(FinishedCapture capture, CancellationToken cancellationToken) => ValueTask.CompletedTask;

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            await broker.ReadyAsync(stoppingToken);
            await foreach (var progress in _queue.Reader.ReadAllAsync(stoppingToken))
            {
                await broker.PublishAsync(Topics.Progress(progress.Capture), ProgressMessage.Of(progress), retain: false, stoppingToken);
            }
        }
        catch (OperationCanceledException)
        {
            // The station stops.
        }
    }
}

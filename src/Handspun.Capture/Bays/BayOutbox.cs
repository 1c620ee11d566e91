using System.Threading.Channels;
using Handspun.Capture.Finishing;
using Handspun.Capture.Progress;
using Microsoft.Extensions.Logging;

namespace Handspun.Capture.Bays;

/// <summary>Tells the receivers what happened, in order, away from the bay's own work. One receiver's trouble is its own.</summary>
internal sealed class BayOutbox(IReadOnlyList<ICaptureReceiver> receivers, ILogger logger)
{
    private const int Waiting = 1024;

    private readonly Channel<Func<ICaptureReceiver, ValueTask>> _queue =
        Channel.CreateBounded<Func<ICaptureReceiver, ValueTask>>(new BoundedChannelOptions(Waiting) { SingleReader = true });

    public void Started(StartedCapture capture) => Post(receiver => receiver.StartedAsync(capture, CancellationToken.None));

    public void Dropped(string capture) => Post(receiver => receiver.DroppedAsync(capture, CancellationToken.None));

    public void Finished(FinishedCapture capture) => Post(receiver => receiver.FinishedAsync(capture, CancellationToken.None));

    /// <summary>Progress gives way when the queue is half full, so that there is always room for what must not be lost.</summary>
    public void Progress(CaptureProgress progress)
    {
        if (_queue.Reader.Count < Waiting / 2)
        {
            Post(receiver => receiver.ProgressAsync(progress, CancellationToken.None));
        }
    }

    public void Complete() => _queue.Writer.TryComplete();

    public async Task RunAsync()
    {
        await foreach (var tell in _queue.Reader.ReadAllAsync())
        {
            foreach (var receiver in receivers)
            {
                try
                {
                    await tell(receiver);
                }
                catch (Exception e)
                {
                    BayLog.ReceiverFailed(logger, receiver.Name, e);
                }
            }
        }
    }

    private void Post(Func<ICaptureReceiver, ValueTask> tell)
    {
        if (!_queue.Writer.TryWrite(tell))
        {
            BayLog.OutboxFull(logger);
        }
    }
}

using Handspun.Gauges.Links;
using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Listening;

/// <summary>What is said to a gauge while its link is open: start, requests, stop.</summary>
internal sealed class GaugeSpeech(IGaugeLink link, RequestSettings request, TimeProvider time)
{
    private static readonly TimeSpan StopPatience = TimeSpan.FromMilliseconds(500);

    /// <summary>Starts the gauge and asks it as often as its profile says, until it is cancelled.</summary>
    /// <exception cref="IOException">The link takes nothing.</exception>
    public async Task RunAsync(CancellationToken closing)
    {
        await SayAsync(request.Start, closing);
        if (request.Every is not { } every)
        {
            await Task.Delay(Timeout.InfiniteTimeSpan, time, closing);
            return;
        }

        using var timer = new PeriodicTimer(every, time);
        do
        {
            await SayAsync(request.Send, closing);
        }
        while (await timer.WaitForNextTickAsync(closing));
    }

    /// <summary>Asks for one reading.</summary>
    /// <exception cref="IOException">The link takes nothing.</exception>
    public ValueTask AskAsync(CancellationToken cancellationToken) => SayAsync(request.Send, cancellationToken);

    /// <summary>Tells the gauge to stop; a gauge that does not take it is left as it is.</summary>
    public async Task StopAsync()
    {
        try
        {
            await SayAsync(request.Stop, CancellationToken.None).AsTask().WaitAsync(StopPatience, time);
        }
        catch (Exception e) when (e is IOException or TimeoutException or ObjectDisposedException)
        {
            // Its cable may have gone out just now.
        }
    }

    private ValueTask SayAsync(ReadOnlyMemory<byte> bytes, CancellationToken cancellationToken) =>
        bytes.IsEmpty ? ValueTask.CompletedTask : link.SendAsync(bytes, cancellationToken);
}

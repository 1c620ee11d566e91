using Handspun.Capture.Bays;
using Handspun.Capture.Progress;

namespace Handspun.Demo;

/// <summary>The hand of the demo: turns the wheel a moment after a point was chosen, then each time that it is asked to.</summary>
internal sealed class DemoHand(Bay bay, VirtualGaugeProcess gauge, TimeProvider time)
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(3);

    /// <summary>Watches the bay until told to stop.</summary>
    public async Task WatchAsync(CancellationToken stopping)
    {
        string? turnedFor = null;
        using var timer = new PeriodicTimer(Look, time);
        while (await timer.WaitForNextTickAsync(stopping))
        {
            if (bay.View() is { Task: { } task, Progress.Phase: CapturePhase.Waiting } && turnedFor != task.Job)
            {
                turnedFor = task.Job;
                await Task.Delay(Moment, time, stopping);
                await gauge.TurnAsync();
            }
        }
    }
}

using Handspun.Capture.Bays;
using Handspun.Capture.Progress;
using Handspun.Jobs.Store;
using Handspun.Station;

namespace Handspun.Bays;

/// <summary>Takes the bay's steps when their time comes: nobody has to touch anything between two points.</summary>
internal sealed class BayStepper(Bay bay, BayDesk desk, BaySteps steps, TimeProvider time, ILogger<BayStepper> logger) : StationService
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(250);

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Look, time);
        try
        {
            while (await timer.WaitForNextTickAsync(stoppingToken))
            {
                foreach (var step in steps.TakeDue())
                {
                    await TakeAsync(step, stoppingToken);
                }
            }
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The station stops.
        }
    }

    private async Task TakeAsync(ComingStep step, CancellationToken cancellationToken)
    {
        var view = bay.View(step.From.Gauge);
        if (view.Task is not { } task || (task.Job, task.Point) != (step.From.Job, step.From.Point) || NextPoint.IsLedByHand(task, bay.Tasks))
        {
            return;
        }

        if (view.Progress is { Phase: CapturePhase.Running })
        {
            steps.PutOff(step);   // a touch of the shaft, or the point once more
            return;
        }

        try
        {
            await desk.GoOnAsync(task, step.Point, cancellationToken);
            steps.Taken(step);
        }
        catch (Exception e) when (e is JobNotFoundException or BayRefusalException)
        {
            BayDeskLog.NotStepped(logger, step.Point, e.Message);   // the job was changed meanwhile
        }
    }
}

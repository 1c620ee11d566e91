using Handspun.Capture.Bays;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Points;
using Handspun.Station;

namespace Handspun.Bays;

/// <summary>A step of the bay to another point that is to come.</summary>
/// <param name="From">What was measured.</param>
/// <param name="Point">The point that comes next, its name in data.</param>
/// <param name="PointTitle">Its name on screens.</param>
/// <param name="At">When.</param>
internal sealed record ComingStep(BayTask From, string Point, string PointTitle, DateTimeOffset At);

/// <summary>The steps of a bay that are to come, and those that somebody may want to take back. Safe to use from several threads.</summary>
internal sealed class BaySteps(StationOptions options, TimeProvider time)
{
    private readonly Lock _lock = new();
    private readonly Dictionary<GaugeName, ComingStep> _coming = [];
    private readonly Dictionary<GaugeName, ComingStep> _taken = [];

    /// <summary>Notes that a point was measured: the step to the next one comes after the shop's time, or none where there is no next one.</summary>
    public void Measured(BayTask task, JobPoint? next)
    {
        lock (_lock)
        {
            _coming.Remove(task.Gauge);
            _taken.Remove(task.Gauge);
            if (next is not null && options.StepAfter > TimeSpan.Zero)
            {
                _coming[task.Gauge] = new(task, next.Code, next.Title, time.GetUtcNow() + options.StepAfter);
            }
        }
    }

    /// <summary>The step that is to come from what a gauge measures now; null where none is.</summary>
    public ComingStep? Coming(BayTask? task)
    {
        lock (_lock)
        {
            return task is not null && _coming.GetValueOrDefault(task.Gauge) is { } step && (step.From.Job, step.From.Point) == (task.Job, task.Point) ? step : null;
        }
    }

    /// <summary>What a gauge measured before it came to its point by a step; null where it came there otherwise.</summary>
    public BayTask? Before(BayTask? task)
    {
        lock (_lock)
        {
            return task is not null && _taken.GetValueOrDefault(task.Gauge) is { } step && (step.From.Job, step.Point) == (task.Job, task.Point) ? step.From : null;
        }
    }

    /// <summary>The steps whose time has come; they are no longer to come.</summary>
    public IReadOnlyList<ComingStep> TakeDue()
    {
        lock (_lock)
        {
            var due = _coming.Values.Where(step => step.At <= time.GetUtcNow()).ToList();
            due.ForEach(step => _coming.Remove(step.From.Gauge));
            return due;
        }
    }

    /// <summary>Puts a step off by the shop's time, unless the point was measured again meanwhile.</summary>
    public void PutOff(ComingStep step)
    {
        lock (_lock)
        {
            _coming.TryAdd(step.From.Gauge, step with { At = time.GetUtcNow() + options.StepAfter });
        }
    }

    /// <summary>Notes that a step was taken, so that it can be taken back.</summary>
    public void Taken(ComingStep step)
    {
        lock (_lock)
        {
            _taken[step.From.Gauge] = step;
        }
    }

    /// <summary>Lets the gauge stay where it is.</summary>
    public void Stay(GaugeName gauge)
    {
        lock (_lock)
        {
            _coming.Remove(gauge);
        }
    }
}

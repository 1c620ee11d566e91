using Handspun.Capture.Bays;
using Handspun.Capture.Methods;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Standing;

namespace Handspun.Bays;

/// <summary>The point that a bay goes on to by itself.</summary>
internal static class NextPoint
{
    /// <summary>
    /// The point of the plan's next step that is not through, where that step can be done now and the same gauge measures it;
    /// null where the next thing to do is another one, or the point itself still waits for a measurement or a decision.
    /// </summary>
    public static JobPoint? After(Job job, string point)
    {
        var steps = JobStanding.Of(job).Steps.SkipWhile(step => step.Step.Point != point).ToList();
        return job.ClosedAt is null
            && steps is [{ IsThrough: true, Point: { } here, Gate: null or { IsOpen: true } }, .. var after]
            && after.Find(step => !step.IsThrough) is { State: StepState.Open, Point: { } next }
            && CaptureMethods.Find(next.Kind) is not null
            && Tool(next.Kind) == Tool(here.Kind)
            ? next : null;
    }

    /// <summary>Whether no step is taken from a point by itself: another gauge that could measure the next one works beside it, as at the other end of a shaft.</summary>
    public static bool IsLedByHand(BayTask task, IEnumerable<BayTask> atWork) => atWork.Any(other => other.Gauge != task.Gauge && Tool(other.Kind) == Tool(task.Kind));

    // A bore gauge is no indicator, and one that stands over a table and was set there is not taken away in between.
    private static PointKind? Tool(PointKind kind) => kind is PointKind.Bore or PointKind.OutsideSize ? kind : null;
}

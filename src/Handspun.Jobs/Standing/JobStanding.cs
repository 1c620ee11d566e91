using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;

namespace Handspun.Jobs.Standing;

/// <summary>How the plan of a job stands, worked out from its records and its book.</summary>
public sealed record JobStanding
{
    /// <summary>The steps, in order; none for a job without a plan.</summary>
    public required IReadOnlyList<StepStanding> Steps { get; init; }

    /// <summary>The first gate that is shut after it was measured; null where there is none.</summary>
    public StepStanding? Stop => Steps.FirstOrDefault(step => step.Gate is { Reason: GateReason.Over or GateReason.Undecided or GateReason.Stopped });

    /// <summary>The next step that can be done; null where there is none.</summary>
    public StepStanding? Next => Steps.FirstOrDefault(step => step.State == StepState.Open);

    /// <summary>The steps that are neither done nor left out, and gates at which nobody has decided.</summary>
    public IEnumerable<StepStanding> Left => Steps.Where(step => !step.IsThrough);

    /// <summary>The step of that name; null where there is none.</summary>
    public StepStanding? Find(string step) => Steps.FirstOrDefault(s => s.Step.Code == step);

    /// <summary>The step that measures a point; null where the plan has none.</summary>
    public StepStanding? At(string point) => Steps.FirstOrDefault(s => s.Step.Point == point);

    /// <summary>That of a job.</summary>
    public static JobStanding Of(Job job)
    {
        var steps = new List<StepStanding>();
        StepStanding? shut = null;
        foreach (var step in job.Plan?.Steps ?? [])
        {
            var standing = Of(job, step, steps, shut);
            shut ??= standing.Gate is { IsOpen: false } ? standing : null;
            steps.Add(standing);
        }

        return new() { Steps = steps };
    }

    private static StepStanding Of(Job job, PlanStep step, List<StepStanding> above, StepStanding? shut)
    {
        var about = job.BookOf(Subject.Step(step.Code)).ToList();
        var point = step.Point is null ? null : job.Points.Find(p => p.Code == step.Point);
        var newest = about.LastOrDefault(entry => entry.Deed is Ticked or Unticked or Skipped or TakenUpAgain);
        var seen = job.Book.LastOrDefault(entry => entry.Deed is FindingNoted noted && noted.Step == step.Code);
        var waitsFor = WaitsFor(step, above, shut);
        var done = step.Kind switch
        {
            StepKind.Point => point?.Counting is not null,
            StepKind.Finding => seen is not null || newest?.Deed is Ticked,
            _ => newest?.Deed is Ticked,
        };
        return new()
        {
            Step = step,
            State = done ? StepState.Done : newest?.Deed is Skipped ? StepState.Skipped : waitsFor is null ? StepState.Open : StepState.HeldBack,
            WaitsFor = waitsFor,
            Point = point,
            Gate = step.Gate && point is not null ? GateStanding.Of(StandingVerdict.Of(point), about.LastOrDefault(entry => entry.Deed is GateDecided)) : null,
            Entries = about,
            Settled = newest?.Deed is Ticked or Skipped ? newest : seen,
        };
    }

    private static string? WaitsFor(PlanStep step, List<StepStanding> above, StepStanding? shut)
    {
        var first = above.Find(other => step.After.Contains(other.Step.Code) && !(other.State is StepState.Done or StepState.Skipped));
        return first is not null ? $"Held back until '{first.Step.Title}' is done."
            : shut is { Gate: { } gate } ? GateSentence.HoldsBack(shut.Step.Title, gate)
            : null;
    }
}

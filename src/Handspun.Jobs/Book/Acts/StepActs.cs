using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;

namespace Handspun.Jobs.Book.Acts;

/// <summary>What can be written about a step of a plan. Each looks at the job and tells the deed, or refuses with a sentence.</summary>
public static class StepActs
{
    /// <summary>Ticks a check, or says of a finding step that it was looked at.</summary>
    /// <exception cref="HeldBackException">It waits for something, is a point, or is ticked already.</exception>
    public static Deed Tick(Job job, string step, string? words)
    {
        var found = Find(job, step);
        if (found.Step.Kind == StepKind.Point)
        {
            throw new HeldBackException($"'{found.Step.Title}' is done when it is measured: measure it, or leave it out with a reason.");
        }

        Refuse(found, found.Settled?.Deed is Ticked, $"{found.Settled?.By} ticked '{found.Step.Title}' already.");
        Refuse(found, found.WaitsFor is not null, found.WaitsFor);
        return new Ticked(Typed.Words("words", words));
    }

    /// <summary>Takes a tick back. The tick stays in the book.</summary>
    /// <exception cref="HeldBackException">It is not ticked.</exception>
    public static Deed Untick(Job job, string step, string? why)
    {
        var found = Find(job, step);
        Refuse(found, found.Settled?.Deed is not Ticked, $"'{found.Step.Title}' is not ticked.");
        return new Unticked(Typed.Words("why", why));
    }

    /// <summary>Leaves a step out. A gate cannot be left out: somebody decides there.</summary>
    /// <exception cref="HeldBackException">It is a gate, done, or left out already.</exception>
    /// <exception cref="BookRefusalException">There is no reason.</exception>
    public static Deed Skip(Job job, string step, string? why)
    {
        var found = Find(job, step);
        Refuse(found, found.Step.Gate, $"'{found.Step.Title}' is a gate and cannot be left out: measure it, or decide there whether to go on without.");
        Refuse(found, found.State is StepState.Done or StepState.Skipped, $"'{found.Step.Title}' is {(found.State == StepState.Done ? "done" : "left out")} already.");
        return new Skipped(Typed.Needed("why", why, "Say why it is left out: whoever reads the job later wants to know."));
    }

    /// <summary>Takes up a step that was left out.</summary>
    /// <exception cref="HeldBackException">It was not left out.</exception>
    public static Deed TakeUpAgain(Job job, string step, string? why)
    {
        var found = Find(job, step);
        Refuse(found, found.State != StepState.Skipped, $"'{found.Step.Title}' was not left out.");
        return new TakenUpAgain(Typed.Words("why", why));
    }

    /// <summary>Decides at a gate.</summary>
    /// <param name="job">The job.</param>
    /// <param name="step">The gate's step.</param>
    /// <param name="goOn">Whether the job goes on.</param>
    /// <param name="why">The reason.</param>
    /// <param name="record">The record that the decider had before them; empty for none; null where that is not said.</param>
    /// <param name="result">Says the result in the shop's unit.</param>
    /// <exception cref="HeldBackException">It is no gate, it is open by itself, or another record counts by now.</exception>
    /// <exception cref="BookRefusalException">There is no reason.</exception>
    public static Deed Decide(Job job, string step, bool goOn, string? why, string? record, Func<GateStanding, string> result)
    {
        var found = Find(job, step);
        var gate = found.Gate ?? throw new HeldBackException($"'{found.Step.Title}' is no gate: nothing is to be decided there.");
        Refuse(found, goOn && gate.Reason == GateReason.Within, $"'{found.Step.Title}' is within its limit: the job goes on by itself.");
        Refuse(found, record is not null && record != (gate.Result.Record?.Id ?? ""), $"'{found.Step.Title}' was measured again meanwhile: {result(gate)} Look at it, then decide.");
        return new GateDecided(
            goOn,
            Typed.Needed("why", why, "Say why: the decision stands in the job's book with your name."),
            gate.Result.Record?.Id,
            gate.Result.Verdict,
            result(gate));
    }

    private static StepStanding Find(Job job, string step) =>
        JobStanding.Of(job).Find(step) ?? throw new JobNotFoundException($"The plan of job {job.Number} has no step '{step}': the job's page lists its steps.");

    private static void Refuse(StepStanding step, bool when, string? sentence)
    {
        if (when)
        {
            throw new HeldBackException(sentence ?? $"'{step.Step.Title}' cannot be done now.");
        }
    }
}

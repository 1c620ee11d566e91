using System.Globalization;
using Handspun.Jobs.Book;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Records;
using Handspun.Jobs.Standing;
using Handspun.Pages;
using Handspun.Pages.Plans;

namespace Handspun.Http.Plans;

/// <summary>Plans, and how they stand in a job, as the pages show them.</summary>
internal static class ViewsOfPlans
{
    /// <summary>The plans that a new job can take, and none.</summary>
    public static PlanChoiceView Choice(PlanShelf shelf)
    {
        var (plans, problems) = shelf.All();
        return new(
            [
                .. plans.Select(plan => new PlanChoice(plan.Code, plan.Title, $"{plan.About} {plan.Steps.Count} {(plan.Steps.Count == 1 ? "step" : "steps")}.".TrimStart())),
                new("", "No plan", "The runout of both shaft ends, in any order."),
            ],
            problems);
    }

    /// <summary>The plan of a job; null where it has none.</summary>
    public static PlanView? Of(Job job, LengthUnit unit)
    {
        if (job.Plan is not { } plan)
        {
            return null;
        }

        var standing = JobStanding.Of(job);
        return new(
            plan.Title,
            standing.Steps.Count(step => step.IsThrough),
            [.. standing.Steps.Select(step => Line(job, step, unit))],
            standing.Next is { } next ? Line(job, next, unit) : null,
            standing.Stop is { } stop ? Gate(job, stop, unit) : null);
    }

    /// <summary>How far the plan of a job is, or that it is closed, in a line; null where there is nothing to say.</summary>
    public static string? Summary(Job job)
    {
        var standing = JobStanding.Of(job);
        var title = job.Plan?.Title;
        return job.ClosedAt is { } at ? $"Closed {At(at)}"
            : standing.Stop is { } stop ? $"{title}: stopped at {stop.Step.Title}"
            : title is not null ? $"{title}: {standing.Steps.Count(step => step.IsThrough)} of {standing.Steps.Count} steps done"
            : null;
    }

    /// <summary>One step in the list.</summary>
    public static StepLine Line(Job job, StepStanding step, LengthUnit unit) => new(
        AddressOf(job, step.Step.Code),
        step.Step.Title,
        step.Gate is { IsOpen: false, Result.Record: not null } ? "stop" : StepStateCodes.Of(step.State),
        Note(step, unit),
        step.Step.Gate);

    /// <summary>A gate.</summary>
    public static GateView? Gate(Job job, StepStanding step, LengthUnit unit) => step.Gate is not { } gate ? null : new(
        AddressOf(job, step.Step.Code),
        step.Step.Title,
        GateSentence.Result(gate, unit),
        GateSentence.ToCustomer(step.Step, gate),
        gate.Decision is { } decision ? Signed(decision) : null,
        gate.IsOpen,
        gate.Result.Record?.Id ?? "",
        gate.Reason != GateReason.Within,
        gate.Result.Record is not null);

    /// <summary>What was done, oldest first.</summary>
    public static IReadOnlyList<HistoryLine> History(IEnumerable<BookEntry> entries) =>
        [.. entries.Select(entry => new HistoryLine(At(entry.At), $"{entry.By} {BookSentence.Of(entry.Deed)}"))];

    /// <summary>Who did what and when, in a sentence.</summary>
    public static string Signed(BookEntry entry) => $"{entry.By} {BookSentence.Of(entry.Deed)} ({At(entry.At)}).";

    /// <summary>A moment in the station's time.</summary>
    public static string At(DateTimeOffset at) => at.ToLocalTime().ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The page of a step.</summary>
    public static string AddressOf(Job job, string step) => $"/jobs/{job.Number}/steps/{step}";

    // A value, its verdict and what is in doubt about it; who decided at a gate.
    private static string? Note(StepStanding step, LengthUnit unit) => step switch
    {
        { State: StepState.HeldBack } => step.WaitsFor,
        { Point.Counting: { } record } => string.Join(". ", new[] { Measured(record, StandingVerdict.Of(step.Point), unit), step.Gate?.Decision is { } decision ? Signed(decision) : null }.OfType<string>()),
        { Settled: { } settled } => Signed(settled),
        _ => null,
    };

    private static string Measured(CaptureRecord record, StandingVerdict verdict, LengthUnit unit) => string.Join(", ", new[]
    {
        RecordSentence.Value(record, unit),
        verdict.Verdict is { } said ? VerdictWords.Of(ViewsOfJobs.VerdictOf(said)).ToLowerInvariant() : null,
        verdict.OnUnconfirmedLimit ? "limit not confirmed" : null,
    }.OfType<string>());
}

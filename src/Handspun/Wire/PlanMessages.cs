using Handspun.Jobs.Book;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Standing;
using Handspun.Metrology.Decision;

namespace Handspun.Wire;

/// <summary>The plans at hand.</summary>
internal sealed record PlansMessage(IReadOnlyList<PlanMessage> Plans, IReadOnlyList<string> Problems);

/// <summary>A plan.</summary>
internal sealed record PlanMessage(string Plan, string Title, string About, IReadOnlyList<PlanStepMessage> Steps, IReadOnlyList<PlanPartMessage> Parts)
{
    public static PlanMessage Of(Plan plan) => new(
        plan.Code,
        plan.Title,
        plan.About,
        [.. plan.Steps.Select(PlanStepMessage.Of)],
        [.. plan.Parts.Select(part => new PlanPartMessage(part.Code, part.Title, part.Place, part.Faces))]);
}

/// <summary>A step of a plan.</summary>
internal sealed record PlanStepMessage(
    string Step, string Title, string Kind, string? Point, string? How, IReadOnlyList<string> Cautions, IReadOnlyList<string> After, bool Gate, IReadOnlyList<string> Places, LimitMessage? Limit)
{
    public static PlanStepMessage Of(PlanStep step) =>
        new(step.Code, step.Title, StepKindCodes.Of(step.Kind), step.Point, step.How, step.Cautions, step.After, step.Gate, step.Places, LimitMessage.Of(step.Limit));
}

/// <summary>A part of a plan.</summary>
internal sealed record PlanPartMessage(string Part, string Title, string Place, string? Faces);

/// <summary>How a step of a job stands.</summary>
internal sealed record StepMessage
{
    public required string Step { get; init; }

    public required string Title { get; init; }

    public required string Kind { get; init; }

    public string? Point { get; init; }

    public required string State { get; init; }

    public string? WaitsFor { get; init; }

    public GateMessage? Gate { get; init; }

    public required IReadOnlyList<EntryMessage> Book { get; init; }

    public static StepMessage Of(StepStanding step, LengthUnit unit) => new()
    {
        Step = step.Step.Code,
        Title = step.Step.Title,
        Kind = StepKindCodes.Of(step.Step.Kind),
        Point = step.Step.Point,
        State = StepStateCodes.Of(step.State),
        WaitsFor = step.State == StepState.HeldBack ? step.WaitsFor : null,
        Gate = step.Gate is { } gate ? GateMessage.Of(step.Step, gate, unit) : null,
        Book = [.. step.Entries.Select(EntryMessage.Of)],
    };
}

/// <summary>How a gate stands.</summary>
internal sealed record GateMessage(bool Open, string Reason, string? Record, string? Verdict, bool LimitConfirmed, string Sentence, string? ToCustomer, EntryMessage? Decision)
{
    public static GateMessage Of(PlanStep step, GateStanding gate, LengthUnit unit) => new(
        gate.IsOpen,
        GateReasonCodes.Of(gate.Reason),
        gate.Result.Record?.Id,
        gate.Result.Verdict is { } verdict ? VerdictCode.Of(verdict) : null,
        gate.Result.Limit?.Confirmed ?? false,
        GateSentence.Result(gate, unit),
        GateSentence.ToCustomer(step, gate),
        gate.Decision is { } decision ? EntryMessage.Of(decision) : null);
}

/// <summary>A line of a job's book.</summary>
internal sealed record EntryMessage(int Number, DateTimeOffset At, string By, string About, string Sentence)
{
    public static EntryMessage Of(BookEntry entry) => new(entry.Number, entry.At, entry.By, entry.About, BookSentence.Of(entry.Deed));
}

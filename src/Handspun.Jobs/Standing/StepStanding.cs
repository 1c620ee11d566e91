using Handspun.Jobs.Book;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Points;

namespace Handspun.Jobs.Standing;

/// <summary>How far a step is.</summary>
public enum StepState
{
    /// <summary>It can be done now.</summary>
    Open,

    /// <summary>It is done: measured, ticked, or looked at.</summary>
    Done,

    /// <summary>It waits for a gate or another step.</summary>
    HeldBack,

    /// <summary>It is left out, with a reason.</summary>
    Skipped,
}

/// <summary>The words for states of steps in data.</summary>
public static class StepStateCodes
{
    /// <summary><c>open</c>, <c>done</c>, <c>held-back</c> or <c>skipped</c>.</summary>
    public static string Of(StepState state) => state switch
    {
        StepState.Done => "done",
        StepState.HeldBack => "held-back",
        StepState.Skipped => "skipped",
        _ => "open",
    };
}

/// <summary>How a step of a job stands.</summary>
public sealed record StepStanding
{
    /// <summary>The step.</summary>
    public required PlanStep Step { get; init; }

    /// <summary>How far it is.</summary>
    public required StepState State { get; init; }

    /// <summary>What it waits for, in a sentence; null where it waits for nothing.</summary>
    public string? WaitsFor { get; init; }

    /// <summary>The point of a point step.</summary>
    public JobPoint? Point { get; init; }

    /// <summary>How the gate stands, where the step is one.</summary>
    public GateStanding? Gate { get; init; }

    /// <summary>What the book says of it, oldest first.</summary>
    public IReadOnlyList<BookEntry> Entries { get; init; } = [];

    /// <summary>The line that made it done or skipped; null where none did.</summary>
    public BookEntry? Settled { get; init; }

    /// <summary>Whether nothing is left to do or to decide in it.</summary>
    public bool IsThrough => (State is StepState.Done or StepState.Skipped) && Gate is not { WaitsForDecision: true };
}

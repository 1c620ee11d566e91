namespace Handspun.Jobs.Plans;

/// <summary>What is done in one kind of job, in order: what is measured, checked and looked at, and which parts go back where.</summary>
/// <remarks>A job takes a copy when it is opened, kept as JSON, so that a plan that is changed later changes no job.</remarks>
public sealed record Plan
{
    /// <summary>Its name in data: that of its file.</summary>
    public required string Code { get; init; }

    /// <summary>Its name on screens.</summary>
    public required string Title { get; init; }

    /// <summary>What it is for, in a sentence; empty where nobody said.</summary>
    public string About { get; init; } = "";

    /// <summary>The steps, in order.</summary>
    public required IReadOnlyList<PlanStep> Steps { get; init; }

    /// <summary>The parts whose place is kept, in order; may be empty.</summary>
    public IReadOnlyList<PlanPart> Parts { get; init; } = [];

    /// <summary>The step of that name; null where there is none.</summary>
    public PlanStep? Find(string step) => Steps.FirstOrDefault(s => s.Code == step);
}

using Handspun.Jobs.Limits;

namespace Handspun.Jobs.Plans;

/// <summary>One step of a plan.</summary>
public sealed record PlanStep
{
    /// <summary>Its name in data: lower-case letters, digits and hyphens; once in a plan.</summary>
    public required string Code { get; init; }

    /// <summary>Its name on screens.</summary>
    public required string Title { get; init; }

    /// <summary>What is done in it.</summary>
    public required StepKind Kind { get; init; }

    /// <summary>The measuring point of a point step; null for the others.</summary>
    public string? Point { get; init; }

    /// <summary>How it is done, in a sentence or two; null where the title says it.</summary>
    public string? How { get; init; }

    /// <summary>What to heed while it is done, one sentence each; may be empty.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The steps above that must be through first, besides the gates; may be empty.</summary>
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>Whether what comes after waits for this point's verdict.</summary>
    public bool Gate { get; init; }

    /// <summary>What to tell the customer where a gate's verdict is over; null takes <see cref="GateWords"/>.</summary>
    public string? IfOver { get; init; }

    /// <summary>What to tell the customer where a gate's verdict is undecided; null takes <see cref="GateWords"/>.</summary>
    public string? IfUndecided { get; init; }

    /// <summary>Places that a finding can be at, such as the two sides of a pump; may be empty.</summary>
    public IReadOnlyList<string> Places { get; init; } = [];

    /// <summary>What a point step is held against, in place of what the catalogue has; null leaves that.</summary>
    public Limit? Limit { get; init; }
}

namespace Handspun.Jobs.Plans;

/// <summary>A part that must go back where it was.</summary>
public sealed record PlanPart
{
    /// <summary>Its name in data: lower-case letters, digits and hyphens; once in a job.</summary>
    public required string Code { get; init; }

    /// <summary>What it is, such as <c>Lifter</c>.</summary>
    public required string Title { get; init; }

    /// <summary>Where it sits, such as <c>front intake</c>; empty where there is only one.</summary>
    public string Place { get; init; } = "";

    /// <summary>What is to be noted of the way it faced, such as <c>Where did the oil hole point?</c>; null where nothing is.</summary>
    public string? Faces { get; init; }

    /// <summary>What it is and where it sits, in one line.</summary>
    public string Name => Place.Length == 0 ? Title : $"{Title}, {Place}";
}

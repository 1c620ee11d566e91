namespace Handspun.Jobs.Entries;

/// <summary>What somebody read off a tool, exactly as it was typed. Empty and null are the same: not typed.</summary>
/// <remarks>Each number stands with its own unit, or in <see cref="Unit"/>.</remarks>
public sealed record TypedEntry
{
    /// <summary>The length that the tool shows.</summary>
    public string? Value { get; init; }

    /// <summary>The thickest leaf that goes in.</summary>
    public string? Goes { get; init; }

    /// <summary>The next leaf, which does not go in.</summary>
    public string? DoesNotGo { get; init; }

    /// <summary>The needle's highest place.</summary>
    public string? Highest { get; init; }

    /// <summary>The needle's lowest place.</summary>
    public string? Lowest { get; init; }

    /// <summary>The unit of numbers that stand without one: <c>in</c> or <c>mm</c>.</summary>
    public string? Unit { get; init; }

    /// <summary>What it was read from, such as <c>micrometer</c>.</summary>
    public string? Tool { get; init; }

    /// <summary>The smallest step to which the tool can be read. Leaves have none: theirs is the step to the next leaf.</summary>
    public string? Division { get; init; }

    /// <summary>The tool's largest error, ± this much; not typed where it is not known.</summary>
    public string? ErrorLimit { get; init; }

    /// <summary>Who read it.</summary>
    public string? By { get; init; }
}

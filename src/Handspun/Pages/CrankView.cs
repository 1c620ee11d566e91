namespace Handspun.Pages;

/// <summary>What both ends of a crank say together, and the measures that it rests on.</summary>
public sealed record CrankView
{
    /// <summary>What was found, in words; null where nothing can be said.</summary>
    public string? Sentence { get; init; }

    /// <summary>Why nothing, or no direction, can be said, and what to do; null where all is known.</summary>
    public string? Reason { get; init; }

    /// <summary>That truing is specialist work.</summary>
    public required string Caution { get; init; }

    /// <summary>The lines in figures.</summary>
    public required IReadOnlyList<Fact> Figures { get; init; }

    /// <summary>What the answer takes for granted, one sentence each.</summary>
    public required IReadOnlyList<string> Assumptions { get; init; }

    /// <summary>The measures as they stand, in the order to be typed.</summary>
    public required IReadOnlyList<CrankField> Fields { get; init; }
}

/// <summary>One measure to type.</summary>
/// <param name="Name">The key that is sent.</param>
/// <param name="Label">What it is called.</param>
/// <param name="Value">What stands there now, with its unit; empty where nothing does.</param>
/// <param name="Required">Whether it must be filled in.</param>
public sealed record CrankField(string Name, string Label, string Value, bool Required = true);

using Handspun.Jobs.Entries;

namespace Handspun.Pages;

/// <summary>The form for what a tool shows.</summary>
public sealed record EntryView
{
    /// <summary>The job in addresses.</summary>
    public required string Job { get; init; }

    /// <summary>The bike in one line.</summary>
    public required string Bike { get; init; }

    /// <summary>The point in addresses.</summary>
    public required string Point { get; init; }

    /// <summary>The point's name.</summary>
    public required string Title { get; init; }

    /// <summary>What to do, in a sentence or two; null when there is nothing to say.</summary>
    public string? How { get; init; }

    /// <summary>What to heed, one sentence each.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>What the result will be held against; null when no limit is set.</summary>
    public string? Limit { get; init; }

    /// <summary>How the tool is read, as a code.</summary>
    public required string Way { get; init; }

    /// <summary>The other ways that fit the point.</summary>
    public required IReadOnlyList<Choice> OtherWays { get; init; }

    /// <summary>The lengths to type, in order.</summary>
    public required IReadOnlyList<EntryFieldView> Readings { get; init; }

    /// <summary>Whether the tool has a division of its own.</summary>
    public required bool HasDivision { get; init; }

    /// <summary>Tools to choose from; another may be typed.</summary>
    public required IReadOnlyList<string> Tools { get; init; }

    /// <summary>What was typed.</summary>
    public required TypedEntry Typed { get; init; }

    /// <summary>One sentence a field, by the field's name.</summary>
    public required IReadOnlyDictionary<string, string> Errors { get; init; }
}

/// <summary>A length to type.</summary>
/// <param name="Name">The field's name.</param>
/// <param name="Label">What it is called.</param>
/// <param name="Value">What was typed; null for nothing.</param>
public sealed record EntryFieldView(string Name, string Label, string? Value);

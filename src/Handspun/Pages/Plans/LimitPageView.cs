namespace Handspun.Pages.Plans;

/// <summary>The page on which the limit of a point is set or confirmed.</summary>
public sealed record LimitPageView
{
    /// <summary>The job's number.</summary>
    public required string Job { get; init; }

    /// <summary>Year, make and model in one line.</summary>
    public required string Bike { get; init; }

    /// <summary>The point in addresses.</summary>
    public required string Id { get; init; }

    /// <summary>The point's name.</summary>
    public required string Point { get; init; }

    /// <summary>The limit as it is; null where there is none.</summary>
    public LimitView? Now { get; init; }

    /// <summary>Its largest value as it would be typed; empty where there is none.</summary>
    public required string AtMost { get; init; }

    /// <summary>Its smallest value as it would be typed; empty where there is none.</summary>
    public required string AtLeast { get; init; }

    /// <summary>The cam drive it is for, as a code.</summary>
    public string? Drive { get; init; }

    /// <summary>Which parts it is for, as a code.</summary>
    public string? Age { get; init; }

    /// <summary>The page of the point.</summary>
    public required string Back { get; init; }

    /// <summary>Who set it before, oldest first.</summary>
    public required IReadOnlyList<HistoryLine> History { get; init; }

    /// <summary>The job's version that the page shows.</summary>
    public required int Version { get; init; }

    /// <summary>What was typed and what is wrong.</summary>
    public required FormState Form { get; init; }
}

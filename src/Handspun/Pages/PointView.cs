namespace Handspun.Pages;

/// <summary>One measuring point of a job.</summary>
public sealed record PointView
{
    /// <summary>The point in addresses.</summary>
    public required string Id { get; init; }

    /// <summary>The point's name.</summary>
    public required string Title { get; init; }

    /// <summary>How to set the gauge up, in a sentence or two; null when there is nothing to say.</summary>
    public string? How { get; init; }

    /// <summary>What to heed at this point, one sentence each; may be empty.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>What is said of it before it is measured; null when nothing need be.</summary>
    public SetupView? Setup { get; init; }

    /// <summary>What the point waits for, in a sentence; null where it can be measured.</summary>
    public string? WaitsFor { get; init; }

    /// <summary>Whether the job's plan leads to it.</summary>
    public bool IsInPlan { get; init; }

    /// <summary>What the records of a bore say together; null where the point is none, or nothing can be said yet.</summary>
    public BoreView? Bore { get; init; }

    /// <summary>What a result is held against; null when no limit is set.</summary>
    public LimitView? Limit { get; init; }

    /// <summary>Its records, newest first.</summary>
    public required IReadOnlyList<RecordView> Records { get; init; }

    /// <summary>The gauge that is on this point in the bay; null where none is.</summary>
    public string? GaugeInBay { get; init; }

    /// <summary>Whether its results are held against a limit.</summary>
    public bool TakesLimit { get; init; } = true;

    /// <summary>Whether a gauge in the bay can measure it.</summary>
    public bool ForBay { get; init; } = true;

    /// <summary>What the link to its form says where it is typed; null where it is not.</summary>
    public string? TypeText { get; init; }
}

/// <summary>A limit as it is shown.</summary>
/// <param name="Text">With its unit, such as <c>at most 0.0050 in</c>.</param>
/// <param name="Source">Where it comes from; null when nobody said.</param>
/// <param name="Confirmed">Whether somebody checked it against the source for this bike.</param>
/// <param name="ConfirmedBy">Who; null when nobody did.</param>
public sealed record LimitView(string Text, string? Source, bool Confirmed, string? ConfirmedBy);

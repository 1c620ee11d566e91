namespace Handspun.Pages.Comparing;

/// <summary>Two records side by side.</summary>
/// <param name="A">The first.</param>
/// <param name="B">The second.</param>
/// <param name="Difference">What they tell of a difference, in a plain sentence or two, or why nothing can be said.</param>
/// <param name="Angles">Why angles cannot be held against each other; null where they can, or there are none.</param>
/// <param name="IsTold">Whether they differ by more than both can be wrong by; null where nothing can be said.</param>
/// <param name="SameScale">Whether the pictures are on the same scale.</param>
/// <param name="Swapped">The address with both in each other's place.</param>
/// <param name="Others">Where another record is chosen beside the first.</param>
public sealed record CompareView(ComparedView A, ComparedView B, string Difference, string? Angles, bool? IsTold, bool SameScale, string Swapped, string Others);

/// <summary>One of two records side by side.</summary>
public sealed record ComparedView
{
    /// <summary>Its letter on the page.</summary>
    public required string Letter { get; init; }

    /// <summary>The point's name.</summary>
    public required string Point { get; init; }

    /// <summary>When, in which job.</summary>
    public required string At { get; init; }

    /// <summary>The page that it stands on.</summary>
    public required string Address { get; init; }

    /// <summary>The bike, in one line.</summary>
    public required string Bike { get; init; }

    /// <summary>The record.</summary>
    public required RecordView Record { get; init; }

    /// <summary>Its picture; null where it has none.</summary>
    public string? Picture { get; init; }

    /// <summary>Where its result lies on the scale that it shares with the other; null where they share none.</summary>
    public LimitScale? Scale { get; init; }
}

/// <summary>The page on which a record is chosen to be laid beside another.</summary>
/// <param name="First">The one that is chosen already.</param>
/// <param name="Groups">The bike's other records, by point: those that can be subtracted first.</param>
public sealed record ChooseView(ComparedView First, IReadOnlyList<ChooseGroup> Groups);

/// <summary>The records of one point.</summary>
/// <param name="Title">The point, and what tells it from the same point in another job.</param>
/// <param name="Lines">Newest first.</param>
public sealed record ChooseGroup(string Title, IReadOnlyList<ChooseLine> Lines);

/// <summary>A record to choose.</summary>
/// <param name="Address">The page with both.</param>
/// <param name="At">When, in which job.</param>
/// <param name="Result">With its uncertainty.</param>
/// <param name="Verdict">Its verdict.</param>
public sealed record ChooseLine(string Address, string At, string Result, VerdictView Verdict);

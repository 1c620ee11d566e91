namespace Handspun.Pages.Plans;

/// <summary>The page of one step.</summary>
public sealed record StepView
{
    /// <summary>The job's number.</summary>
    public required string Job { get; init; }

    /// <summary>Year, make and model in one line.</summary>
    public required string Bike { get; init; }

    /// <summary>The step in addresses.</summary>
    public required string Id { get; init; }

    /// <summary>Its place among all, such as <c>Step 3 of 12</c>.</summary>
    public required string Place { get; init; }

    /// <summary>The step in the list.</summary>
    public required StepLine Line { get; init; }

    /// <summary>What is done in it: <c>point, check</c> or <c>finding</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>How it is done; null where the title says it.</summary>
    public string? How { get; init; }

    /// <summary>What to heed, one sentence each.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>What must be so before the first spin of the job, where nobody has said yet that it is; else empty.</summary>
    public required IReadOnlyList<string> SpinCautions { get; init; }

    /// <summary>What it waits for; null where it can be done.</summary>
    public string? WaitsFor { get; init; }

    /// <summary>The station's gauges.</summary>
    public required IReadOnlyList<string> Gauges { get; init; }

    /// <summary>The point of a point step.</summary>
    public PointView? Point { get; init; }

    /// <summary>The gate, where it is one.</summary>
    public GateView? Gate { get; init; }

    /// <summary>The findings noted in it, oldest first.</summary>
    public required IReadOnlyList<FindingView> Findings { get; init; }

    /// <summary>What can be picked for a finding; null where the step is none.</summary>
    public FindingFormView? Finding { get; init; }

    /// <summary>The photos of the step itself.</summary>
    public required PhotosView Photos { get; init; }

    /// <summary>Whether it is ticked.</summary>
    public required bool IsTicked { get; init; }

    /// <summary>What was done, oldest first.</summary>
    public required IReadOnlyList<HistoryLine> History { get; init; }

    /// <summary>The page of the step before; null at the first.</summary>
    public string? Before { get; init; }

    /// <summary>The page of the step after; null at the last.</summary>
    public string? After { get; init; }

    /// <summary>The job's version that the page shows.</summary>
    public required int Version { get; init; }

    /// <summary>What was typed and what is wrong.</summary>
    public required FormState Form { get; init; }
}

/// <summary>A line of the book.</summary>
/// <param name="At">When, such as <c>25 Nov 2026, 11:42</c>.</param>
/// <param name="Text">Who did what.</param>
public sealed record HistoryLine(string At, string Text);

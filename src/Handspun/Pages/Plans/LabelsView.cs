namespace Handspun.Pages.Plans;

/// <summary>The page with labels to print.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="Bike">Year, make and model in one line.</param>
/// <param name="Labels">The labels, in order.</param>
public sealed record LabelsView(string Job, string Bike, IReadOnlyList<LabelView> Labels);

/// <summary>The label of one part.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Place">Where it sits; empty where there is only one.</param>
/// <param name="Faced">How it sat; null where nobody noted it.</param>
/// <param name="Address">The part's page, as a phone opens it.</param>
public sealed record LabelView(string Title, string Place, string? Faced, string Address);

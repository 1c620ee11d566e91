namespace Handspun.Pages.Limits;

/// <summary>The page with all limits.</summary>
/// <param name="InUse">Those of the open jobs: not confirmed first.</param>
/// <param name="Summary">How many there are, and how many wait for the manual.</param>
/// <param name="Shipped">Those that a new job starts with.</param>
/// <param name="Before">The address of the page before; null on the first.</param>
/// <param name="After">The address of the page after; null on the last.</param>
public sealed record LimitListView(IReadOnlyList<LimitLine> InUse, string Summary, IReadOnlyList<LimitLine> Shipped, string? Before, string? After);

/// <summary>One limit.</summary>
/// <param name="Point">The point's name.</param>
/// <param name="About">The job and its bike, or the plan.</param>
/// <param name="Text">With its unit, such as <c>at most 0.0050 in</c>.</param>
/// <param name="Condition">For which parts and which drive; null where nobody said.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Confirmed">Who confirmed it and when; null where nobody did.</param>
/// <param name="Address">Where it is looked up and confirmed, or changed; null where there is no such page.</param>
/// <param name="Action">What the link there says.</param>
public sealed record LimitLine(string Point, string About, string Text, string? Condition, string Source, string? Confirmed, string? Address, string Action);

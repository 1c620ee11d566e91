namespace Handspun.Pages;

/// <summary>The gauges of the shop.</summary>
/// <param name="Gauges">The gauges, by name.</param>
public sealed record GaugeListView(IReadOnlyList<GaugeLine> Gauges);

/// <summary>A gauge on a line.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="Description">What it is; null where nobody said.</param>
/// <param name="Standing">Where it stands.</param>
/// <param name="Link">How it is now, or that it is not plugged in.</param>
/// <param name="Checked">When it was checked last, and when it is due; null where it never was.</param>
public sealed record GaugeLine(string Name, string? Description, StandingView Standing, string Link, string? Checked);

/// <summary>Where a gauge stands, as a shape and a word.</summary>
/// <param name="Shape">The shape.</param>
/// <param name="Word">The word, such as <c>Good</c>.</param>
/// <param name="Sentence">What it means and what to do.</param>
public sealed record StandingView(VerdictView Shape, string Word, string Sentence);

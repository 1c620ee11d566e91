namespace Handspun.Pages;

/// <summary>What the records of a bore say together.</summary>
/// <param name="Sentence">What was found, in words.</param>
/// <param name="Verdict">What the smallest and the largest place say against the limit.</param>
/// <param name="HasSize">Whether the setting is known, so that there are sizes.</param>
/// <param name="Figures">Mean, smallest, largest, taper, out-of-round.</param>
/// <param name="Clocks">The clock positions across the top of the table, such as <c>12</c>.</param>
/// <param name="Rows">One row a depth.</param>
/// <param name="Unit">The unit of the table.</param>
public sealed record BoreView(
    string Sentence, VerdictView Verdict, bool HasSize, IReadOnlyList<Fact> Figures, IReadOnlyList<string> Clocks, IReadOnlyList<BoreRow> Rows, string Unit);

/// <summary>One depth of a bore.</summary>
/// <param name="Depth">With its unit.</param>
/// <param name="Cells">What was found across each clock position, in the order of the table's head; empty where nothing was.</param>
public sealed record BoreRow(string Depth, IReadOnlyList<string> Cells);

using System.Globalization;

namespace Handspun.Jobs.Plans;

/// <summary>What is wrong with a plan.</summary>
/// <param name="Plan">The plan's name in data.</param>
/// <param name="Line">The line, from 1; null where it is in none.</param>
/// <param name="Key">The key, with the tables that it stands in, such as <c>step[2].after</c>; empty for the whole plan.</param>
/// <param name="Sentence">What is wrong and what to do, beginning in lower case.</param>
public sealed record PlanProblem(string Plan, int? Line, string Key, string Sentence)
{
    /// <summary>The whole in other words than plan, line and sentence; null for those.</summary>
    public string? Whole { get; init; }

    /// <summary>The sentence by itself, beginning with a capital.</summary>
    public string Alone => Sentence.Length == 0 ? Sentence : char.ToUpperInvariant(Sentence[0]) + Sentence[1..];

    /// <summary>Plan, line and sentence.</summary>
    public override string ToString() => Whole ?? string.Create(CultureInfo.InvariantCulture, $"Plan '{Plan}'{(Line is { } line ? $", line {line}" : "")}: {Sentence}");
}

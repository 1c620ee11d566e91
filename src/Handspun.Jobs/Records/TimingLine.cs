namespace Handspun.Jobs.Records;

/// <summary>One line of a cam's card beside what was measured.</summary>
public sealed record TimingLine
{
    /// <summary>What the line is.</summary>
    public required string What { get; init; }

    /// <summary>Whose degrees they are: <c>crank</c> or <c>cam</c>.</summary>
    public required string Of { get; init; }

    /// <summary>What the card says.</summary>
    public required double CardDegrees { get; init; }

    /// <summary>What was measured.</summary>
    public required double MeasuredDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public required double MeasuredU95Degrees { get; init; }

    /// <summary>Whether that is what the card says: <c>within</c>, <c>over</c> or <c>undecided</c>.</summary>
    public required string Verdict { get; init; }

    /// <summary>The same in one plain sentence.</summary>
    public required string Sentence { get; init; }
}

namespace Handspun.Jobs.Reports;

/// <summary>The first page of a report, for the customer: what was found, what it means, what is advised.</summary>
public sealed record CustomerPage
{
    /// <summary>All of it in one sentence.</summary>
    public required string Headline { get; init; }

    /// <summary>The gravest verdict, as a code: <c>over</c>, <c>undecided</c>, <c>within</c> or <c>none</c>.</summary>
    public required string Code { get; init; }

    /// <summary>What was found, the gravest first.</summary>
    public required IReadOnlyList<FoundLine> Found { get; init; }

    /// <summary>What it means, one thought each.</summary>
    public required IReadOnlyList<string> Means { get; init; }

    /// <summary>What is advised, one step each.</summary>
    public required IReadOnlyList<string> Advised { get; init; }
}

/// <summary>One thing that was found.</summary>
/// <param name="Code">A verdict's code, or <c>seen</c> for what was found by looking, <c>open</c> for what was not measured.</param>
/// <param name="Title">What was measured or looked at.</param>
/// <param name="Text">What came out.</param>
public sealed record FoundLine(string Code, string Title, string Text);

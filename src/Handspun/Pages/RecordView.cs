namespace Handspun.Pages;

/// <summary>One record of a point.</summary>
public sealed record RecordView
{
    /// <summary>The record in addresses.</summary>
    public required string Id { get; init; }

    /// <summary>The gauge that measured it.</summary>
    public required string Gauge { get; init; }

    /// <summary>When it was made, in the station's time, such as <c>25 Nov 2026, 11:42</c>.</summary>
    public required string At { get; init; }

    /// <summary>The result with its unit, such as <c>0.0031 in</c>; null when the spin gave none.</summary>
    public string? Result { get; init; }

    /// <summary>Its expanded uncertainty with its unit and without a sign, such as <c>0.0002 in</c>; null without a result.</summary>
    public string? Uncertainty { get; init; }

    /// <summary>The verdict.</summary>
    public required VerdictView Verdict { get; init; }

    /// <summary>The station's sentence: result against limit, or what is missing for a result.</summary>
    public required string Sentence { get; init; }

    /// <summary>Why the result is less sure than it looks, one sentence each.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>What it rests on, label and value: turns, readings, gauge, high spot.</summary>
    public required IReadOnlyList<Fact> Facts { get; init; }

    /// <summary>Whether this is the record that counts for the point.</summary>
    public required bool Counts { get; init; }

    /// <summary>Whether it may be made the one that counts: it has a result and is not the one already.</summary>
    public required bool MayCount { get; init; }

    /// <summary>Where the result lies against the limit; null when there is no limit or no result.</summary>
    public LimitScale? Scale { get; init; }

    /// <summary>Whether it has a picture.</summary>
    public bool HasPicture { get; init; } = true;

    /// <summary>The verdict in words where it is not about a limit; null leaves them to the verdict.</summary>
    public string? VerdictText { get; init; }
}

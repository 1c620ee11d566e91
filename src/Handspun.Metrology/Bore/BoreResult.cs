using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Bore;

/// <summary>Whether a capture gave a bore.</summary>
public enum BoreStatus
{
    /// <summary>The deviation is known, with its uncertainty.</summary>
    Measured,

    /// <summary>No turning point was passed yet; there is no bore.</summary>
    TooShort,

    /// <summary>The capture or the setting cannot be used at all.</summary>
    Rejected,
}

/// <summary>One pass through the turning point.</summary>
/// <param name="Reading">The reading nearest to it, by its place from 0.</param>
/// <param name="Seconds">When that was.</param>
/// <param name="Millimetres">What the gauge shows of the bore in this pass, creep taken out.</param>
public sealed record BorePass(int Reading, double Seconds, double Millimetres);

/// <summary>What rocking a two-point gauge in a bore found, with all that a picture or a record needs to prove it.</summary>
public sealed record BoreResult
{
    /// <summary>Whether there is a bore.</summary>
    public required BoreStatus Status { get; init; }

    /// <summary>One plain sentence that says what is missing and what to do next; null where the bore was measured.</summary>
    public string? Missing { get; init; }

    /// <summary>Whether it is the size of a body across, and no bore.</summary>
    public bool Outside { get; init; }

    /// <summary>Readings in the capture, those left out included.</summary>
    public required int Readings { get; init; }

    /// <summary>Passes through the turning point that count.</summary>
    public int Passes => ByPass.Count;

    /// <summary>How often the reading turned at its lowest, passes that do not count included.</summary>
    public int Turnings { get; init; }

    /// <summary>Passes that were wanted.</summary>
    public int PassesWanted { get; init; }

    /// <summary>Whether as many passes were seen as wanted.</summary>
    public bool HasEnough => Status == BoreStatus.Measured && Passes >= PassesWanted;

    /// <summary>The bore less the size that the gauge was set to; less the gauge's zero, where that is not known. Positive is larger.</summary>
    public Length? Deviation { get; init; }

    /// <summary>Expanded uncertainty of the deviation (k = 2, JCGM 100).</summary>
    public Length? DeviationU95 { get; init; }

    /// <summary>The bore's size; null where the setting is not known.</summary>
    public Length? Size { get; init; }

    /// <summary>Expanded uncertainty of the size (k = 2).</summary>
    public Length? SizeU95 { get; init; }

    /// <summary>What the uncertainty is made of; null where there is no bore.</summary>
    public BoreBudget? Budget { get; init; }

    /// <summary>Largest minus smallest of the single passes; null with fewer than two.</summary>
    public Length? Spread { get; init; }

    /// <summary>Each pass by itself, in order.</summary>
    public IReadOnlyList<BorePass> ByPass { get; init; } = [];

    /// <summary>Readings that stand alone and were left out as knocks, by their place from 0.</summary>
    public IReadOnlyList<int> Knocks { get; init; } = [];

    /// <summary>What makes the result less sure than it looks, each once.</summary>
    public IReadOnlyList<BoreWarning> Warnings { get; init; } = [];
}

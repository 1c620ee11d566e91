namespace Handspun.Capture.Methods.EndPlay;

/// <summary>What is told of a shaft while it is pushed and pulled.</summary>
public sealed record EndPlayLive : LiveFigures
{
    /// <summary>Cycles so far.</summary>
    public required int Cycles { get; init; }

    /// <summary>Cycles that are enough.</summary>
    public required double CyclesWanted { get; init; }

    /// <summary>The stop at which it is held now, where the gauge reads <c>low</c> or <c>high</c>; null while it moves.</summary>
    public string? HeldAt { get; init; }

    /// <summary>How long it has been held there.</summary>
    public double HeldSeconds { get; init; }

    /// <summary>Largest less smallest end play of the single cycles so far; null with fewer than two.</summary>
    public double? SpreadMillimetres { get; init; }

    /// <summary>End play so far; null before both stops were held.</summary>
    public double? EndPlayMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? EndPlayU95Millimetres { get; init; }
}

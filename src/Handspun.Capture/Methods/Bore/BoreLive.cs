namespace Handspun.Capture.Methods.Bore;

/// <summary>What is told of a bore while the gauge is rocked in it.</summary>
public sealed record BoreLive : LiveFigures
{
    /// <summary>Passes through the turning point so far.</summary>
    public required int Passes { get; init; }

    /// <summary>Passes that are enough.</summary>
    public required double PassesWanted { get; init; }

    /// <summary>How often the reading turned at its lowest, passes that do not count included.</summary>
    public int Turnings { get; init; }

    /// <summary>Largest less smallest of the single passes so far; null with fewer than two.</summary>
    public double? SpreadMillimetres { get; init; }

    /// <summary>The bore less the setting, so far; null before there is one.</summary>
    public double? DeviationMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? DeviationU95Millimetres { get; init; }

    /// <summary>The bore's size so far; null where the setting is not known.</summary>
    public double? SizeMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? SizeU95Millimetres { get; init; }
}

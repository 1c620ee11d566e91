namespace Handspun.Jobs.Records;

/// <summary>A narrow place on a shaft that came back every turn, as it is kept. It is no part of the runout.</summary>
public sealed record FaultFigures
{
    /// <summary>What it may be, as a code: <c>raised</c>, <c>scratch</c> or <c>recess</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Angle of its middle, from the same zero as the high spot.</summary>
    public required double AtDegrees { get; init; }

    /// <summary>How wide it is, in degrees; no less than the angle between two readings.</summary>
    public required double WidthDegrees { get; init; }

    /// <summary>How far it stands out of the shaft's shape; below zero where it is sunk.</summary>
    public required double HeightMillimetres { get; init; }

    /// <summary>Expanded uncertainty of the height (k = 2).</summary>
    public required double HeightU95Millimetres { get; init; }

    /// <summary>Turns on which it was seen.</summary>
    public required int SeenOnTurns { get; init; }

    /// <summary>Turns on which a reading fell there.</summary>
    public required int OfTurns { get; init; }

    /// <summary>What it may be and what to do, in plain words.</summary>
    public required string Sentence { get; init; }
}

namespace Handspun.Capture.Methods.Runout;

/// <summary>What is told of a shaft while it turns.</summary>
public sealed record RunoutLive : LiveFigures
{
    /// <summary>Turns so far.</summary>
    public required double Turns { get; init; }

    /// <summary>Turns that are enough.</summary>
    public required double TurnsWanted { get; init; }

    /// <summary>Turns a second now.</summary>
    public double TurnsPerSecond { get; init; }

    /// <summary>Readings that one turn gets at this speed; 0 where it is not known.</summary>
    public double ReadingsPerTurn { get; init; }

    /// <summary>The largest peak that could hide between readings; null before there is a runout.</summary>
    public double? HiddenPeakMillimetres { get; init; }

    /// <summary>Seconds that a turn must take for this gauge, at least; null where its rate is not known.</summary>
    public double? LeastSecondsPerTurn { get; init; }

    /// <summary>Seconds until there are enough turns at this speed; null where it stands.</summary>
    public double? SecondsToGo { get; init; }

    /// <summary>Runout so far; null before there was one whole turn.</summary>
    public double? TirMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? TirU95Millimetres { get; init; }
}

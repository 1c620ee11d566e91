using Handspun.Gauges.Readings;
using Handspun.Jobs.Limits;

namespace Handspun.Capture.Bays;

/// <summary>What a bay is to measure: chosen once, then good for as many spins as it takes.</summary>
public sealed record BayTask
{
    /// <summary>The job's number.</summary>
    public required string Job { get; init; }

    /// <summary>The job in a few words.</summary>
    public required string JobTitle { get; init; }

    /// <summary>The bike in one line.</summary>
    public required string Bike { get; init; }

    /// <summary>The point's name in data.</summary>
    public required string Point { get; init; }

    /// <summary>The point's name on screens.</summary>
    public required string PointTitle { get; init; }

    /// <summary>The gauge that serves the point.</summary>
    public required GaugeName Gauge { get; init; }

    /// <summary>What the result is held against; null where there is no limit.</summary>
    public Limit? Limit { get; init; }

    /// <summary>Turns that are enough, at least 1.</summary>
    public double TurnsWanted { get; init; } = 3;
}

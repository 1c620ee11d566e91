using Handspun.Capture.Methods;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.ShopGauges;

namespace Handspun.Capture.Bays;

/// <summary>What a bay is to measure: chosen once, then good for as many captures as it takes.</summary>
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

    /// <summary>How the point is measured.</summary>
    public required PointKind Kind { get; init; }

    /// <summary>The gauge that serves the point.</summary>
    public required GaugeName Gauge { get; init; }

    /// <summary>What the result is held against; null where there is no limit.</summary>
    public Limit? Limit { get; init; }

    /// <summary>What was said of the point before it is measured; null where nothing was.</summary>
    public PointSetup? Setup { get; init; }

    /// <summary>The gauge's newest check; null where it was never checked.</summary>
    public LastCheck? LastCheck { get; init; }

    /// <summary>Turns, cycles or passes that are enough, at least 1.</summary>
    public required double Wanted { get; init; }

    /// <summary>The method for the kind of point.</summary>
    public ICaptureMethod Method => CaptureMethods.For(Kind);

    /// <summary>What the method is asked for.</summary>
    public MethodWish Wish => new(Wanted, Setup);
}

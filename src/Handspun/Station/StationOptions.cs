using System.Net;
using Handspun.Gauges.Listening;
using Handspun.Jobs.Lengths;

namespace Handspun.Station;

/// <summary>All that a station is told before it starts.</summary>
internal sealed record StationOptions
{
    /// <summary>Where everything lies.</summary>
    public required DataFolder Data { get; init; }

    /// <summary>Where pages are served.</summary>
    public required IPEndPoint Http { get; init; }

    /// <summary>Where screens of the shop's network reach the pages; null where only this machine does.</summary>
    public IPEndPoint? Screens { get; init; }

    /// <summary>Where the broker listens; port 0 lets the system choose.</summary>
    public required IPEndPoint Mqtt { get; init; }

    /// <summary>The gauges.</summary>
    public required IReadOnlyList<GaugeSetup> Gauges { get; init; }

    /// <summary>The shop's ways, which can be changed while the station runs.</summary>
    public ShopWays Shop { get; init; } = new(ShopFile.Usual);

    /// <summary>The unit of lengths on screens, as it is now.</summary>
    public LengthUnit Unit => Shop.Unit;

    /// <summary>How long after a result the bay goes on to the plan's next point, as it is now; zero where it never does.</summary>
    public TimeSpan StepAfter => Shop.Now.StepAfter;

    /// <summary>Whether the console shows no more than warnings.</summary>
    public bool Quiet { get; init; }
}

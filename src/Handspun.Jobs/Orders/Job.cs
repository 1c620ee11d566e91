using Handspun.Jobs.Bikes;
using Handspun.Jobs.Cranks;
using Handspun.Jobs.Points;

namespace Handspun.Jobs.Orders;

/// <summary>A work order: one bike, what is to be done, and the points that are measured for it.</summary>
public sealed class Job
{
    /// <summary>The store's key.</summary>
    public int Id { get; init; }

    /// <summary>Its number in the shop: the year and a running number, such as <c>2026-0014</c>.</summary>
    public required string Number { get; init; }

    /// <summary>What is to be done, in a few words.</summary>
    public required string Title { get; set; }

    /// <summary>Who brought the bike, where that is written down.</summary>
    public string? Customer { get; set; }

    /// <summary>When it was opened.</summary>
    public required DateTimeOffset OpenedAt { get; init; }

    /// <summary>The bike's key.</summary>
    public int BikeId { get; init; }

    /// <summary>The bike.</summary>
    public required Bike Bike { get; init; }

    /// <summary>When somebody said that the cautions were read and followed; null before.</summary>
    public DateTimeOffset? CautionsReadAt { get; set; }

    /// <summary>What was typed of the crank, so that both ends can be put together; null where nothing was.</summary>
    public CrankSheet? Crank { get; set; }

    /// <summary>What is measured, in any order.</summary>
    public List<JobPoint> Points { get; init; } = [];

    /// <summary>The points in the order of the plan.</summary>
    public IEnumerable<JobPoint> InOrder => Points.OrderBy(point => point.Place);
}

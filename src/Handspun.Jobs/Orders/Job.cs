using Handspun.Jobs.Bikes;
using Handspun.Jobs.Book;
using Handspun.Jobs.Cranks;
using Handspun.Jobs.Plans;
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

    /// <summary>The job's own copy of the plan that it was opened with; null where it was opened without one.</summary>
    public Plan? Plan { get; init; }

    /// <summary>How many lines its book has; what was read at one version and is written at another may have been changed meanwhile.</summary>
    public int Version { get; set; }

    /// <summary>When it was closed; null while it is open.</summary>
    public DateTimeOffset? ClosedAt { get; set; }

    /// <summary>The lines of its book, in any order.</summary>
    public List<BookEntry> Entries { get; init; } = [];

    /// <summary>The lines of its book, oldest first.</summary>
    public IEnumerable<BookEntry> Book => Entries.OrderBy(entry => entry.Number);

    /// <summary>What the book says of one thing, oldest first.</summary>
    /// <param name="subject">As <see cref="Subject"/> writes it.</param>
    public IEnumerable<BookEntry> BookOf(string subject) => Book.Where(entry => entry.About == subject);
}

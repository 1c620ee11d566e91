using Handspun.Jobs.Entries;
using Handspun.Jobs.Limits;

namespace Handspun.Jobs.Points;

/// <summary>What is measured on a bike, in general: a point of the catalogue, which a job takes over when it is chosen.</summary>
public sealed record MeasuringPoint
{
    /// <summary>Its name in data and topics: lower-case letters, digits and hyphens.</summary>
    public required string Code { get; init; }

    /// <summary>Its name on screens.</summary>
    public required string Title { get; init; }

    /// <summary>How it is measured.</summary>
    public required PointKind Kind { get; init; }

    /// <summary>How to set the gauge or the tool up, in a sentence or two.</summary>
    public required string How { get; init; }

    /// <summary>What to heed at this point beyond what is heeded in every job, one sentence each; may be empty.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The limit that a new job starts with, unconfirmed until the shop confirms it; null where no number is honest for every machine.</summary>
    public Limit? ShippedLimit { get; init; }

    /// <summary>How it is read by eye and typed, the usual way first; null leaves it to the kind.</summary>
    public IReadOnlyList<EntryWay>? ReadBy { get; init; }

    /// <summary>What a length typed here may be; null leaves it to the kind.</summary>
    public PlausibleAt? Plausible { get; init; }
}

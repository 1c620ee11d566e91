using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;

namespace Handspun.Pictures.Readings;

/// <summary>What the picture of a record is drawn from whose readings go to and fro: pushes and pulls, or rocks.</summary>
public abstract record ReadingsContent
{
    /// <summary>What was measured on which machine; shortened where it does not fit the page.</summary>
    public required string Title { get; init; }

    /// <summary>Job, date, gauge: whatever tells this record from another. May be empty.</summary>
    public string Subtitle { get; init; } = "";

    /// <summary>When each reading was taken, in seconds from the start of the capture.</summary>
    public required ReadOnlyMemory<double> Seconds { get; init; }

    /// <summary>What each reading was, in millimetres, as many as there are times. Readings that are not finite are not drawn.</summary>
    public required ReadOnlyMemory<double> Millimetres { get; init; }

    /// <summary>The limit that the result is held against; null where there is none.</summary>
    public Tolerance? Limit { get; init; }

    /// <summary>What was decided; null where nothing was.</summary>
    public Verdict? Verdict { get; init; }

    /// <summary>The unit of every length in the picture.</summary>
    public LengthUnit Unit { get; init; }

    /// <exception cref="ArgumentException">The parts do not belong together.</exception>
    internal void Check(IEnumerable<int> named)
    {
        if (Seconds.Length != Millimetres.Length)
        {
            throw new ArgumentException($"There are {Seconds.Length} times for {Millimetres.Length} readings.");
        }

        if (named.Any(place => place < 0 || place >= Seconds.Length))
        {
            throw new ArgumentException($"The result speaks of a reading that is not among the {Seconds.Length}.");
        }
    }
}

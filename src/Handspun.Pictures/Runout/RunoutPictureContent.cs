using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Runout;

namespace Handspun.Pictures.Runout;

/// <summary>What the picture of one runout record is drawn from.</summary>
public sealed record RunoutPictureContent
{
    /// <summary>What was measured on which machine; shortened where it does not fit the page.</summary>
    public required string Title { get; init; }

    /// <summary>Job, date, gauge: whatever tells this record from another. May be empty.</summary>
    public string Subtitle { get; init; } = "";

    /// <summary>When each reading was taken, in seconds from the start of the capture.</summary>
    public required ReadOnlyMemory<double> Seconds { get; init; }

    /// <summary>What each reading was, in millimetres, as many as there are times. Readings that are not finite are not drawn.</summary>
    public required ReadOnlyMemory<double> Millimetres { get; init; }

    /// <summary>What was found in these readings.</summary>
    public required RunoutResult Result { get; init; }

    /// <summary>The limit that the runout is held against; null where there is none.</summary>
    public Tolerance? Limit { get; init; }

    /// <summary>What was decided; null where nothing was.</summary>
    public Verdict? Verdict { get; init; }

    /// <summary>The unit of every length in the picture.</summary>
    public LengthUnit Unit { get; init; }

    /// <exception cref="ArgumentException">The parts do not belong together.</exception>
    internal void Check()
    {
        var readings = Millimetres.Length;
        if (Seconds.Length != readings)
        {
            throw new ArgumentException($"There are {Seconds.Length} times for {readings} readings.");
        }

        if (Result.AngleDegrees.Count != 0 && Result.AngleDegrees.Count != readings)
        {
            throw new ArgumentException($"There are {Result.AngleDegrees.Count} angles for {readings} readings.");
        }

        if (Result.DriftMillimetres.Count != 0 && Result.DriftMillimetres.Count != readings)
        {
            throw new ArgumentException($"There are {Result.DriftMillimetres.Count} values of drift for {readings} readings.");
        }

        if (Result.Rejected.Any(left => left.Reading < 0 || left.Reading >= readings))
        {
            throw new ArgumentException($"A reading that was left out is not among the {readings} readings.");
        }

        if (Result.Status == RunoutStatus.Measured && (Result.Profile is null || Result.Tir is null))
        {
            throw new ArgumentException("A measured runout comes with its profile and its value.");
        }
    }
}

namespace Handspun.Gauges.Journal;

/// <summary>The first line of a journal: all that is needed to read the rest without another file.</summary>
public sealed record JournalHeader
{
    /// <summary>The format's version that this program writes.</summary>
    public const int CurrentVersion = 1;

    /// <summary>The gauge's name in the shop.</summary>
    public required string Gauge { get; init; }

    /// <summary>Where it was plugged in.</summary>
    public required string Port { get; init; }

    /// <summary>The name of its profile.</summary>
    public required string Profile { get; init; }

    /// <summary>The profile's text, so that the bytes can be decoded again.</summary>
    public required string ProfileText { get; init; }

    /// <summary>The wall clock at the moment at which the times of this journal count zero.</summary>
    public required DateTimeOffset Zero { get; init; }

    /// <summary>Readings before this time are lead-in: there to find the start of a frame, and no part of the capture. Null in a journal that is whole.</summary>
    public TimeSpan? From { get; init; }

    /// <summary>The capture that this was cut out for; null in a gauge's running journal.</summary>
    public string? Capture { get; init; }

    /// <summary>The job of that capture.</summary>
    public string? Job { get; init; }

    /// <summary>The measuring point of that capture.</summary>
    public string? Point { get; init; }

    /// <summary>What that capture was to find, as one JSON object that only its maker reads; null where nothing was said.</summary>
    public string? Task { get; init; }
}

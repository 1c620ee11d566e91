using System.Text.Json;
using System.Text.Json.Serialization;
using Handspun.Capture.Finishing;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;
using Handspun.Jobs.Points;
using Handspun.Wire;

namespace Handspun.Export;

/// <summary>A journal as other programs take it: what it is of, and its readings, pulses and marks, decoded.</summary>
/// <remarks>Lengths in millimetres; times in seconds from the capture's start, on a monotonic clock.</remarks>
internal sealed record CaptureExport
{
    /// <summary>The wall clock at the capture's start.</summary>
    public required DateTimeOffset At { get; init; }

    public required string Gauge { get; init; }

    public required string Port { get; init; }

    public required string Profile { get; init; }

    public string? Capture { get; init; }

    public string? Job { get; init; }

    public string? Point { get; init; }

    /// <summary>What was said of the point when the capture began, as keys of its kind; null where nothing was.</summary>
    [JsonPropertyName("setup")]
    public Dictionary<string, JsonElement>? SetupKeys => SetupMessage.KeysOf(Setup);

    /// <summary>The same as it is used.</summary>
    [JsonIgnore]
    public PointSetup? Setup { get; init; }

    /// <summary>Why the capture ended; null where the journal does not say.</summary>
    public string? Ended { get; init; }

    /// <summary>Frames that held no reading.</summary>
    public long Unreadable { get; init; }

    /// <summary>Whether the last line was torn off by a crash.</summary>
    public bool Torn { get; init; }

    public double ResolutionMm { get; init; }

    public double ErrorLimitMm { get; init; }

    /// <summary>Shaft turns from one index pulse to the next.</summary>
    public double IndexTurns { get; init; }

    public required ExportedReadings Readings { get; init; }

    public required IReadOnlyList<double> Index { get; init; }

    public required IReadOnlyList<double> Marks { get; init; }

    /// <summary>Reads a journal, packed or plain.</summary>
    /// <exception cref="JournalException">It cannot be read.</exception>
    /// <exception cref="ProfileException">The profile in it does not hold.</exception>
    /// <exception cref="IOException">It is not there.</exception>
    public static CaptureExport Read(string path)
    {
        var replay = JournalReplay.Read(path);
        var zero = replay.Header.From ?? TimeSpan.Zero;
        var accuracy = ProfileReader.Read(replay.Header.Profile, replay.Header.ProfileText).Accuracy;
        var capture = ReplayedCapture.Of(replay, zero);
        return new CaptureExport
        {
            At = replay.Header.Zero + zero,
            Gauge = replay.Header.Gauge,
            Port = replay.Header.Port,
            Profile = replay.Header.Profile,
            Capture = replay.Header.Capture,
            Job = replay.Header.Job,
            Point = replay.Header.Point,
            Setup = JournalledTask.Read(replay.Header.Task)?.Setup,
            Ended = replay.Ended,
            Unreadable = replay.Unreadable,
            Torn = replay.Torn,
            ResolutionMm = accuracy.ResolutionMillimetres,
            ErrorLimitMm = accuracy.ErrorLimitMillimetres,
            IndexTurns = capture.TurnsPerIndex,
            Readings = new(Microseconds(capture.Seconds), capture.Millimetres.ToArray()),
            Index = Microseconds(capture.IndexSeconds),
            Marks = Microseconds(capture.MarkSeconds),
        };
    }

    // Journals keep whole microseconds; the difference of two times in seconds does not.
    private static double[] Microseconds(ReadOnlyMemory<double> seconds) => [.. seconds.ToArray().Select(t => Math.Round(t, 6))];
}

/// <summary>Times and values, as many of the one as of the other.</summary>
internal sealed record ExportedReadings(IReadOnlyList<double> TimeS, IReadOnlyList<double> Mm);

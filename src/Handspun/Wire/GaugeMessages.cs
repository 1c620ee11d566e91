using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;

namespace Handspun.Wire;

/// <summary>Readings of a gauge.</summary>
/// <param name="T0">The wall clock at which the gauge clock read zero.</param>
/// <param name="T">Times on the gauge clock, in seconds.</param>
/// <param name="Mm">The readings, in millimetres.</param>
internal sealed record ReadingsMessage(DateTimeOffset T0, IReadOnlyList<double> T, IReadOnlyList<double> Mm)
{
    public static ReadingsMessage Of(GaugeClock clock, IReadOnlyCollection<Reading> readings) => new(
        clock.StartedAt,
        [.. readings.Select(reading => Math.Round(reading.At.TotalSeconds, 6))],
        [.. readings.Select(reading => Math.Round(reading.Millimetres, 7))]);
}

/// <summary>How a gauge is.</summary>
internal sealed record GaugeStateMessage
{
    public required string Gauge { get; init; }

    public required string State { get; init; }

    public required string Sentence { get; init; }

    public required DateTimeOffset Since { get; init; }

    public required string Profile { get; init; }

    public required string Port { get; init; }

    public long Readings { get; init; }

    public long Unreadable { get; init; }

    public double UnreadablePerS { get; init; }

    public double ReadingsPerS { get; init; }

    /// <summary>When the newest reading came; null where none has come.</summary>
    public DateTimeOffset? LastReading { get; init; }

    /// <summary>Index pulses so far, bouncing left out.</summary>
    public long Pulses { get; init; }

    /// <summary>Readings that the broker's queue let go.</summary>
    public long NotSent { get; init; }

    public static GaugeStateMessage Of(GaugeState state, GaugeClock clock, long notSent) => new()
    {
        Gauge = state.Gauge.ToString(),
        State = Code(state.Condition),
        Sentence = state.Sentence,
        Since = clock.WallTime(state.Since),
        Profile = state.Profile,
        Port = state.Port,
        Readings = state.Readings,
        Unreadable = state.Unreadable,
        UnreadablePerS = Math.Round(state.UnreadablePerSecond, 2),
        ReadingsPerS = Math.Round(state.ReadingsPerSecond, 1),
        LastReading = state.LastReading is { } at ? clock.WallTime(at) : null,
        Pulses = state.Pulses,
        NotSent = notSent,
    };

    private static string Code(GaugeCondition condition) => condition switch
    {
        GaugeCondition.Reading => "reading",
        GaugeCondition.Silent => "silent",
        GaugeCondition.Absent => "absent",
        GaugeCondition.NotPermitted => "not-permitted",
        GaugeCondition.Lost => "lost",
        _ => "offline",
    };
}

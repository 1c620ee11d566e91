using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Listening;

/// <summary>How a gauge is.</summary>
public enum GaugeCondition
{
    /// <summary>The program does not listen to it (any more).</summary>
    Offline,

    /// <summary>Its port is not there, or is no port, or is held by another program.</summary>
    Absent,

    /// <summary>This user may not open its port.</summary>
    NotPermitted,

    /// <summary>Its port is open, and no reading has come for a while.</summary>
    Silent,

    /// <summary>Readings come.</summary>
    Reading,

    /// <summary>It was there and its cable went out.</summary>
    Lost,
}

/// <summary>How a gauge is at one moment, with what was counted since the station started.</summary>
public sealed record GaugeState
{
    /// <summary>The gauge.</summary>
    public required GaugeName Gauge { get; init; }

    /// <summary>How it is.</summary>
    public required GaugeCondition Condition { get; init; }

    /// <summary>The same in one plain sentence; where something is wrong it says what to do.</summary>
    public required string Sentence { get; init; }

    /// <summary>Since when it is so, on the gauge clock.</summary>
    public required TimeSpan Since { get; init; }

    /// <summary>The name of its profile.</summary>
    public required string Profile { get; init; }

    /// <summary>Where it is plugged in.</summary>
    public required string Port { get; init; }

    /// <summary>What it said of itself last.</summary>
    public GaugeFlags Flags { get; init; }

    /// <summary>The unit that it named last; null where it names none.</summary>
    public GaugeUnit? Unit { get; init; }

    /// <summary>Readings so far.</summary>
    public long Readings { get; init; }

    /// <summary>Frames so far that held no reading.</summary>
    public long Unreadable { get; init; }

    /// <summary>When the newest reading came, on the gauge clock; null where none has come.</summary>
    public TimeSpan? LastReading { get; init; }

    /// <summary>The newest reading, in millimetres; null where none has come.</summary>
    public double? ShownMillimetres { get; init; }

    /// <summary>Index pulses so far, bouncing left out.</summary>
    public long Pulses { get; init; }

    /// <summary>Readings a second over the last second or so.</summary>
    public double ReadingsPerSecond { get; init; }

    /// <summary>Unreadable frames a second over the last second or so.</summary>
    public double UnreadablePerSecond { get; init; }
}

using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Listening;

/// <summary>Something that a gauge said, or that happened to it.</summary>
/// <param name="Gauge">The gauge.</param>
public abstract record GaugeEvent(GaugeName Gauge)
{
    /// <summary>Readings came in, in order; at least one.</summary>
    public sealed record Heard(GaugeName Gauge, IReadOnlyList<Reading> Readings) : GaugeEvent(Gauge);

    /// <summary>An index pulse came, bouncing left out. What it stands for is in the gauge's profile.</summary>
    public sealed record Pulsed(GaugeName Gauge, TimeSpan At) : GaugeEvent(Gauge);

    /// <summary>The gauge's condition or its counts changed.</summary>
    public sealed record Changed(GaugeState State) : GaugeEvent(State.Gauge);
}

namespace Handspun.Capture.Bays;

/// <summary>How patient a bay is, whatever it measures; what depends on the kind of point is its method's own.</summary>
public sealed record BaySettings
{
    /// <summary>How long the gauge may be gone in the middle of a capture.</summary>
    public TimeSpan GaugeGone { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>The longest capture.</summary>
    public TimeSpan Longest { get; init; } = TimeSpan.FromMinutes(3);

    /// <summary>How long a stretch of readings is kept for a screen that opens later.</summary>
    public TimeSpan Trace { get; init; } = TimeSpan.FromSeconds(60);

    /// <summary>How often the result so far is worked out while a capture runs.</summary>
    public TimeSpan LiveEvery { get; init; } = TimeSpan.FromSeconds(0.1);

    /// <summary>The share of one core that working it out may take.</summary>
    public double LiveShare { get; init; } = 0.05;
}

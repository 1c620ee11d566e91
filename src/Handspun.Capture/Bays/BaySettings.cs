namespace Handspun.Capture.Bays;

/// <summary>How patient a bay is. The defaults suit a hand on a rear wheel.</summary>
public sealed record BaySettings
{
    /// <summary>How long a stretch of readings is looked at to see that the shaft has started to turn.</summary>
    public TimeSpan StartWindow { get; init; } = TimeSpan.FromSeconds(0.8);

    /// <summary>How much before that stretch the capture begins, so that the start is in it.</summary>
    public TimeSpan LeadIn { get; init; } = TimeSpan.FromSeconds(0.5);

    /// <summary>How long the shaft may stand still, between two pushes of the hand, before the capture ends.</summary>
    public TimeSpan StandStill { get; init; } = TimeSpan.FromSeconds(2.5);

    /// <summary>How long the shaft must rest after a capture before the next one may start.</summary>
    public TimeSpan Rest { get; init; } = TimeSpan.FromSeconds(1.5);

    /// <summary>How long the gauge may be gone in the middle of a capture.</summary>
    public TimeSpan GaugeGone { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>The longest capture.</summary>
    public TimeSpan Longest { get; init; } = TimeSpan.FromMinutes(3);

    /// <summary>How long a stretch of readings is kept for a screen that opens later.</summary>
    public TimeSpan Trace { get; init; } = TimeSpan.FromSeconds(60);

    /// <summary>How often the runout so far is worked out while the shaft turns.</summary>
    public TimeSpan LiveEvery { get; init; } = TimeSpan.FromSeconds(0.25);

    /// <summary>The share of one core that working it out may take.</summary>
    public double LiveShare { get; init; } = 0.1;

    /// <summary>Less turning than this, and the shaft was only touched: no record is made.</summary>
    public double TouchTurns { get; init; } = 0.4;
}

namespace Handspun.Simulation;

/// <summary>A simulated digital indicator: what it shows of a height, and how badly.</summary>
public sealed record Indicator
{
    /// <summary>Readings a second.</summary>
    public double RateHz { get; init; } = 50;

    /// <summary>The step of the display, in millimetres; above 0.</summary>
    public double ResolutionMillimetres { get; init; } = 0.001;

    /// <summary>Standard deviation of the noise before rounding, in micrometres.</summary>
    public double NoiseMicrometres { get; init; } = 0.5;

    /// <summary>How far the stand creeps over the whole capture, in micrometres.</summary>
    public double DriftMicrometres { get; init; }

    /// <summary>How many single wild readings there are.</summary>
    public int Knocks { get; init; }

    /// <summary>How wild they are, in millimetres.</summary>
    public double KnockMillimetres { get; init; } = 0.15;

    /// <summary>How many stretches of about a third of a second are missing.</summary>
    public int Dropouts { get; init; }

    /// <summary>How many stretches there are in which the display does not follow.</summary>
    public int StuckStretches { get; init; }

    /// <summary>How many readings arrive together under one time stamp; 1 where each has its own.</summary>
    public int Burst { get; init; } = 1;

    /// <summary>Standard deviation of the arrival times, in milliseconds.</summary>
    public double JitterMilliseconds { get; init; }

    /// <summary>What the display shows of a true height, in millimetres.</summary>
    public double Show(double millimetres, Random chance) =>
        Math.Round((millimetres + chance.NextNormal() * NoiseMicrometres / 1000) / ResolutionMillimetres) * ResolutionMillimetres;
}

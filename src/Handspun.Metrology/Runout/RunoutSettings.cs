namespace Handspun.Metrology.Runout;

/// <summary>What the mechanic asks of a runout measurement.</summary>
public sealed record RunoutSettings
{
    /// <summary>Whole turns that are enough. At least 1.</summary>
    public double TurnsWanted { get; init; } = 3;
}

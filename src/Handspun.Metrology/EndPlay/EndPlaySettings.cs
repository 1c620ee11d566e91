namespace Handspun.Metrology.EndPlay;

/// <summary>What the mechanic asks of an end play measurement.</summary>
public sealed record EndPlaySettings
{
    /// <summary>Cycles, one push and one pull each, that are enough. At least 1.</summary>
    public int CyclesWanted { get; init; } = 3;
}

namespace Handspun.Bays;

/// <summary>What somebody wants the bay to measure.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="Point">The point's name in data.</param>
/// <param name="Gauge">The gauge; null takes the only one.</param>
/// <param name="Wanted">Turns, cycles or passes that are enough, 1 to 20; null takes what is usual for the point.</param>
internal sealed record BayWish(string Job, string Point, string? Gauge = null, double? Wanted = null)
{
    /// <summary>The fewest that can be wanted.</summary>
    public const double Fewest = 1;

    /// <summary>The most that can be wanted.</summary>
    public const double Most = 20;
}

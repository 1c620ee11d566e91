namespace Handspun.Bays;

/// <summary>What somebody wants the bay to measure.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="Point">The point's name in data.</param>
/// <param name="Gauge">The gauge; null takes the only one.</param>
/// <param name="TurnsWanted">Turns that are enough, 1 to 20.</param>
internal sealed record BayWish(string Job, string Point, string? Gauge = null, double TurnsWanted = BayWish.UsualTurns)
{
    /// <summary>What is enough where nobody says otherwise.</summary>
    public const double UsualTurns = 3;

    /// <summary>The fewest turns that can be wanted.</summary>
    public const double FewestTurns = 1;

    /// <summary>The most turns that can be wanted.</summary>
    public const double MostTurns = 20;
}

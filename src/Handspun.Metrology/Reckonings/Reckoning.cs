namespace Handspun.Metrology.Reckonings;

/// <summary>What a calculation of the trade came to.</summary>
/// <param name="Lines">The worked formulas, in order; empty where something is missing.</param>
/// <param name="Missing">What is missing or cannot be, and what to do; null where it was worked out.</param>
/// <param name="Cautions">What to mind at this step, in plain words; the maker's manual, the law and licensed practice come first.</param>
public sealed record Reckoning(IReadOnlyList<Worked> Lines, string? Missing, IReadOnlyList<string> Cautions)
{
    /// <summary>The last line, which is what was asked for.</summary>
    public Worked? Answer => Lines.Count > 0 ? Lines[^1] : null;
}

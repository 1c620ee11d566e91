using Handspun.Metrology.Reckonings;

namespace Handspun.Wire;

/// <summary>What a reckoning came to.</summary>
/// <param name="Reckoning">Its name.</param>
/// <param name="Lines">The formulas, worked; empty where something is missing.</param>
/// <param name="Missing">What is missing or cannot be; null where it was worked out.</param>
/// <param name="Cautions">What to heed at this step.</param>
internal sealed record ReckoningMessage(string Reckoning, IReadOnlyList<ReckoningLine> Lines, string? Missing, IReadOnlyList<string> Cautions)
{
    public static ReckoningMessage Of(string code, Reckoning reckoning, ShownUnit unit) =>
        new(code, [.. reckoning.Lines.Select(line => ReckoningLine.Of(line, unit))], reckoning.Missing, reckoning.Cautions);
}

/// <summary>A formula with its numbers filled in.</summary>
/// <param name="Formula">The formula in words.</param>
/// <param name="Filled">The same with its numbers, the result and its uncertainty.</param>
/// <param name="Value">The result: millimetres where it is a length, else plain.</param>
/// <param name="U95">Its expanded uncertainty (k = 2).</param>
/// <param name="Unit">Such as <c>mm</c>, <c>turns</c> or <c>flats</c>.</param>
internal sealed record ReckoningLine(string Formula, string Filled, double Value, double U95, string Unit)
{
    public static ReckoningLine Of(Worked worked, ShownUnit unit) =>
        new(worked.Formula, worked.Filled(unit), Math.Round(worked.Result.Value, 6), Math.Round(worked.U95.Value, 6), worked.Result.Unit);
}

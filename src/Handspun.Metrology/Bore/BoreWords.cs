using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Bore;

/// <summary>What a bore lacks, and what to do next.</summary>
internal static class BoreWords
{
    /// <summary>Nothing moved.</summary>
    public const string NoMovement = "The readings do not move: with the gauge in the bore, rock it slowly this way and that through its turning point.";

    private const string NoTurn = "No turning point was seen: rock the gauge until the reading falls, turns and rises again, several times.";
    private const string Once = "The turning point was passed once only: rock the gauge back and forth several times.";
    private const string Unsteady = "The lowest reading comes out differently every time, so it is no turning point: rock the gauge further, evenly to both sides.";
    private static readonly PlausibleLength Sizes = new(Length.FromMillimetres(3), Length.FromMillimetres(300));

    /// <summary>What is wrong with a setting; null where nothing is, or where there is none.</summary>
    public static string? FaultOf(BoreSetting? setting) => setting is null ? null
        : setting.SizeU95 < Length.Zero || setting.ShownU95 < Length.Zero ? "The uncertainty of the setting is negative: type it as a length of zero or more."
        : Sizes.Doubt(setting.Size, "what a bore gauge is set to");

    /// <summary>What a capture lacks; null where nothing is lacking.</summary>
    /// <param name="found">What was found.</param>
    /// <param name="values">The readings.</param>
    public static string? Lacking(PassSearch found, double[] values) => found switch
    {
        { Rocks: null } => values.Max() - values.Min() > 3 * found.Step ? NoTurn : NoMovement,
        { Passes.Count: < 2, LeftOut: 0 } => Once,
        { Doubt: not > 0 } or { Bore: double.NaN } => Unsteady,
        _ when found.Passes.Count < 2 || found.LeftOut > found.Passes.Count || Scatters(found) => Unsteady,
        _ => null,
    };

    private static bool Scatters(PassSearch found)
    {
        const double ofTheHeight = 0.03;
        var mean = found.Passes.Average(pass => pass.Millimetres);
        var scatter = Math.Sqrt(found.Passes.Average(pass => Math.Pow(pass.Millimetres - mean, 2)));
        return scatter > Math.Max(0.004, Math.Max(ofTheHeight * found.Rocks!.Height, 0.5 * found.Step));
    }
}

using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Bore;

/// <summary>What a bore or a body lacks, and what to do next.</summary>
/// <param name="NoMovement">Nothing moved.</param>
/// <param name="NoTurn">The reading never turned.</param>
/// <param name="Once">It turned once only.</param>
/// <param name="Unsteady">It turned somewhere else every time.</param>
internal sealed record BoreWords(string NoMovement, string NoTurn, string Once, string Unsteady)
{
    private static readonly PlausibleLength Sizes = new(Length.FromMillimetres(3), Length.FromMillimetres(300));

    private static readonly BoreWords Bore = new(
        "The readings do not move: with the gauge in the bore, rock it slowly this way and that through its turning point.",
        "No turning point was seen: rock the gauge until the reading falls, turns and rises again, several times.",
        "The turning point was passed once only: rock the gauge back and forth several times.",
        "The lowest reading comes out differently every time, so it is no turning point: rock the gauge further, evenly to both sides.");

    private static readonly BoreWords Body = new(
        "The readings do not move: roll the body slowly through under the gauge, this way and that past its largest size.",
        "No turning point was seen: roll the body through until the gauge has passed its largest size and comes back, several times.",
        "The turning point was passed once only: roll the body back and forth under the gauge several times.",
        "The largest size comes out differently every time, so it is no turning point: press the body flat on its table and roll it evenly to both sides.");

    /// <summary>The words for what is measured.</summary>
    public static BoreWords Of(BoreSettings settings) => settings.Outside ? Body : Bore;

    /// <summary>What is wrong with a setting; null where nothing is, or where there is none.</summary>
    public static string? FaultOf(BoreSettings settings) => settings.Setting is not { } setting ? null
        : setting.SizeU95 < Length.Zero || setting.ShownU95 < Length.Zero ? "The uncertainty of the setting is negative: type it as a length of zero or more."
        : Sizes.Doubt(setting.Size, settings.Outside ? "what a gauge is set to" : "what a bore gauge is set to");

    /// <summary>Whether a capture lacks nothing.</summary>
    public static bool IsWhole(PassSearch found) => found is { Rocks: not null, Doubt: > 0, Passes.Count: >= 2 } && !IsUnsteady(found);

    /// <summary>What a capture lacks; null where nothing is lacking.</summary>
    /// <param name="found">What was found.</param>
    /// <param name="values">The readings.</param>
    public string? Lacking(PassSearch found, double[] values) => found switch
    {
        { Rocks: null } => values.Max() - values.Min() > 3 * found.Step ? NoTurn : NoMovement,
        { Passes.Count: < 2, LeftOut: 0 } => Once,
        _ => IsWhole(found) ? null : Unsteady,
    };

    private static bool IsUnsteady(PassSearch found) => found.Bore is double.NaN || found.LeftOut > found.Passes.Count || Scatters(found);

    private static bool Scatters(PassSearch found)
    {
        const double ofTheHeight = 0.03;
        var mean = found.Passes.Average(pass => pass.Millimetres);
        var scatter = Math.Sqrt(found.Passes.Average(pass => Math.Pow(pass.Millimetres - mean, 2)));
        return scatter > Math.Max(0.004, Math.Max(ofTheHeight * found.Rocks!.Height, 0.5 * found.Step));
    }
}

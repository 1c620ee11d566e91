using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Bore;

/// <summary>What a two-point gauge was set to before it went into the bore: a setting ring, or a micrometer at a size.</summary>
/// <param name="Size">The ring's or the micrometer's size.</param>
/// <param name="SizeU95">Its expanded uncertainty (k = 2).</param>
/// <param name="Shown">What the gauge showed there, at its turning point; zero where it was zeroed.</param>
/// <param name="ShownU95">The expanded uncertainty of that (k = 2) beside the gauge's step, from a capture of its own; zero where it was zeroed by eye.</param>
public sealed record BoreSetting(Length Size, Length SizeU95, Length Shown, Length ShownU95);

/// <summary>What the mechanic asks of a bore measurement.</summary>
public sealed record BoreSettings
{
    /// <summary>Passes through the turning point that are enough; each rock there and back makes two. At least 1.</summary>
    public int PassesWanted { get; init; } = 6;

    /// <summary>Whether the reading grows when the gauge spans more; a dial whose plunger is pushed in by a smaller bore reads the other way.</summary>
    public bool LargerReadsHigher { get; init; } = true;

    /// <summary>What the gauge was set to; null where it is not known, and then there is a deviation from the gauge's zero and no size.</summary>
    public BoreSetting? Setting { get; init; }
}

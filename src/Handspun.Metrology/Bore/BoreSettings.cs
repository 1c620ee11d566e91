using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Bore;

/// <summary>What a gauge was set to: a setting ring or a micrometer at a size before it went into a bore, a pin or a block before a body is put under it.</summary>
/// <param name="Size">The size of that.</param>
/// <param name="SizeU95">Its expanded uncertainty (k = 2).</param>
/// <param name="Shown">What the gauge showed there, at its turning point; zero where it was zeroed.</param>
/// <param name="ShownU95">The expanded uncertainty of that (k = 2) beside the gauge's step, from a capture of its own; zero where it was zeroed by eye.</param>
public sealed record BoreSetting(Length Size, Length SizeU95, Length Shown, Length ShownU95);

/// <summary>What the mechanic asks of a bore measurement, or of the size of a body across.</summary>
public sealed record BoreSettings
{
    /// <summary>Passes through the turning point that are enough; each rock there and back makes two. At least 1.</summary>
    public int PassesWanted { get; init; } = 6;

    /// <summary>Whether the reading grows when the gauge spans more; a dial whose plunger is pushed in by a smaller bore reads the other way.</summary>
    public bool LargerReadsHigher { get; init; } = true;

    /// <summary>Whether it is a body that is rolled through under the gauge, and the turning point its largest size; a bore's is its smallest.</summary>
    public bool Outside { get; init; }

    /// <summary>What the gauge was set to; null where it is not known, and then there is a deviation from the gauge's zero and no size.</summary>
    public BoreSetting? Setting { get; init; }
}

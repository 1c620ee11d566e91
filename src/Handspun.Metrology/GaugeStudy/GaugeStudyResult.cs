using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.GaugeStudy;

/// <summary>What a repeatability and reproducibility study found. Spreads are standard deviations.</summary>
public sealed record GaugeStudyResult
{
    /// <summary>The analysis of variance that all of it rests on.</summary>
    public required StudyAnova Anova { get; init; }

    /// <summary>Whether mechanics-by-parts was counted as mere repeatability, because it does not stand out of it.</summary>
    public required bool Pooled { get; init; }

    /// <summary>How likely chance alone makes mechanics-by-parts stand out as much, 0 to 1.</summary>
    public required double TogetherByChance { get; init; }

    /// <summary>One mechanic, one part, again and again.</summary>
    public required Length Repeatability { get; init; }

    /// <summary>Between mechanics, what each does to each part included.</summary>
    public required Length Reproducibility { get; init; }

    /// <summary>Repeatability and reproducibility together: the gauge in these hands.</summary>
    public required Length Gauge { get; init; }

    /// <summary>Between the parts themselves.</summary>
    public required Length Parts { get; init; }

    /// <summary>Everything together.</summary>
    public required Length Total { get; init; }

    /// <summary>Gauge over total, in percent.</summary>
    public double GaugePercent => Percent(Gauge);

    /// <summary>Repeatability over total, in percent.</summary>
    public double RepeatabilityPercent => Percent(Repeatability);

    /// <summary>Reproducibility over total, in percent.</summary>
    public double ReproducibilityPercent => Percent(Reproducibility);

    /// <summary>Parts over total, in percent.</summary>
    public double PartsPercent => Percent(Parts);

    /// <summary>√2 times parts over gauge, not rounded; infinite where the gauge does not scatter at all.</summary>
    public double CategoriesRaw => Gauge > Length.Zero ? Math.Sqrt(2) * Parts.Millimetres / Gauge.Millimetres : double.PositiveInfinity;

    /// <summary>Into how many groups the gauge can tell such parts apart: <see cref="CategoriesRaw"/> cut to a whole number, at least 1 and at most a thousand.</summary>
    public int Categories => (int)Math.Clamp(CategoriesRaw, 1, 1000);

    private double Percent(Length spread) => Total > Length.Zero ? 100 * spread.Millimetres / Total.Millimetres : 0;
}

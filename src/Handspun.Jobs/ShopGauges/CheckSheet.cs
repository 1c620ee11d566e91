using Handspun.Metrology.GaugeStudy;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.ShopGauges;

/// <summary>What is typed of a check of a gauge. Lengths in millimetres.</summary>
public sealed record CheckSheet
{
    private const double Longest = 1000;
    private const double LargestDeviation = 0.1;
    private const int LongestText = 120;

    /// <summary>Who made it.</summary>
    public required string By { get; init; }

    /// <summary>What the gauge was held against, in words: a gauge block or a setting ring, with the number of its certificate.</summary>
    public required string Against { get; init; }

    /// <summary>The nominal size of the block or ring.</summary>
    public required double SizeMillimetres { get; init; }

    /// <summary>By how much it differs from that, as its certificate has it.</summary>
    public double DeviationMillimetres { get; init; }

    /// <summary>Expanded uncertainty (k = 2) of the size, as its certificate has it; of both sizes together where the gauge was zeroed on another block.</summary>
    public required double SizeU95Millimetres { get; init; }

    /// <summary>The size on which the gauge was zeroed; 0 where it shows sizes from its own zero.</summary>
    public double ZeroedOnMillimetres { get; init; }

    /// <summary>What the gauge showed, set down anew each time.</summary>
    public required IReadOnlyList<double> ReadingsMillimetres { get; init; }

    /// <summary>The gauge's step.</summary>
    public required double ResolutionMillimetres { get; init; }

    /// <summary>The largest error that its papers allow, ± this much.</summary>
    public required double ErrorLimitMillimetres { get; init; }

    /// <summary>The last day on which the check counts, where that was said; null leaves it to the gauge's interval.</summary>
    public DateOnly? DueOn { get; init; }

    /// <summary>What the gauge should show.</summary>
    public double TrueMillimetres => SizeMillimetres + DeviationMillimetres - ZeroedOnMillimetres;

    /// <summary>All that cannot be, one sentence each, and what to do; empty where it can be used.</summary>
    /// <param name="today">The day of the check.</param>
    public IEnumerable<string> Problems(DateOnly today) => Words().Concat(Sizes()).Concat(Gauge(today));

    /// <summary>Works it out; it must have no problems.</summary>
    internal GaugeCheck Work(DateOnly due, DateOnly today) => GaugeCheck.Work([.. ReadingsMillimetres], TrueSize, Length.FromMillimetres(ResolutionMillimetres), Length.FromMillimetres(ErrorLimitMillimetres), due, today);

    private Measured<Length> TrueSize => new(Length.FromMillimetres(TrueMillimetres), Length.FromMillimetres(SizeU95Millimetres));

    private IEnumerable<string> Words()
    {
        if (string.IsNullOrWhiteSpace(By) || By.Length > LongestText)
        {
            yield return "Say who checked the gauge.";
        }

        if (string.IsNullOrWhiteSpace(Against) || Against.Length > LongestText)
        {
            yield return $"Say what the gauge was held against, in at most {LongestText} characters: which block or ring, and the number of its certificate.";
        }
    }

    private IEnumerable<string> Sizes()
    {
        if (SizeMillimetres is not (> 0 and < Longest))
        {
            yield return "Give the size of the block or ring with its unit: more than nothing and less than a metre.";
        }

        if (!(Math.Abs(DeviationMillimetres) <= LargestDeviation))
        {
            yield return "A block or ring differs from its size by less than a tenth of a millimetre: take the deviation from its certificate, with its unit.";
        }

        if (SizeU95Millimetres is not (>= 0 and <= LargestDeviation))
        {
            yield return "A block or ring is known to better than a tenth of a millimetre: take its uncertainty from its certificate, with its unit.";
        }

        if (ZeroedOnMillimetres is not (>= 0 and < Longest))
        {
            yield return "Give the size on which the gauge was zeroed with its unit, or leave it empty where it shows sizes from its own zero.";
        }
    }

    private IEnumerable<string> Gauge(DateOnly today)
    {
        if (ResolutionMillimetres is not (>= 0 and < 1))
        {
            yield return "Give the gauge's smallest step with its unit.";
        }

        if (ErrorLimitMillimetres is not (> 0 and < 1))
        {
            yield return "Nothing says how far off the gauge may be: type the error limit of its papers, with its unit.";
        }

        if (DueOn < today)
        {
            yield return "The day on which the gauge is due again has passed already: give a later one, or leave it empty.";
        }

        if (!Sizes().Any() && (GaugeCheck.Fault([.. ReadingsMillimetres], TrueSize) ?? FarOff()) is { } fault)
        {
            yield return fault;
        }
    }

    // Another unit, a gauge that was not zeroed, or another block: none of these is an error of the gauge.
    private string? FarOff()
    {
        const double farthest = 0.5;
        var off = ReadingsMillimetres.Average() - TrueMillimetres;
        return Math.Abs(off) > Math.Max(farthest, 10 * ErrorLimitMillimetres)
            ? "The readings are far from what the gauge should show: look at their unit, at which block or ring it was, and where the gauge was zeroed, and type them again."
            : null;
    }
}

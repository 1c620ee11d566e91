using Handspun.Metrology.Quantities;
using MathNet.Numerics.Distributions;

namespace Handspun.Metrology.GaugeStudy;

/// <summary>Repeatability and reproducibility of a gauge by analysis of variance, mechanics and parts both random.</summary>
public static class GaugeStudyMethod
{
    /// <summary>Chance above which mechanics-by-parts is pooled with the trials.</summary>
    public const double PooledAbove = 0.05;

    private const int LeastOfEach = 2;

    /// <summary>What is wrong with a table of values and what to do, in one sentence; null where nothing is.</summary>
    /// <param name="millimetres">Values by mechanic, part and trial.</param>
    public static string? Fault(double[,,] millimetres)
    {
        ArgumentNullException.ThrowIfNull(millimetres);
        var (mechanics, parts, trials) = (millimetres.GetLength(0), millimetres.GetLength(1), millimetres.GetLength(2));
        return mechanics < LeastOfEach ? "A study takes two mechanics or more: let another one measure the same parts."
            : parts < LeastOfEach ? "A study takes two parts or more, better ten: measure further ones."
            : trials < LeastOfEach ? "A study takes two trials or more of each part: let everyone measure every part again."
            : millimetres.Cast<double>().All(double.IsFinite) ? null
            : "A value of the study is missing or no number: measure that part again and type it in.";
    }

    /// <summary>Works a full table out. Components of variance that come out negative are zero.</summary>
    /// <param name="millimetres">Values by mechanic, part and trial, at least two of each, all finite.</param>
    /// <exception cref="ArgumentException">The table is not so; the message is the sentence of <see cref="Fault"/>.</exception>
    public static GaugeStudyResult Work(double[,,] millimetres)
    {
        if (Fault(millimetres) is { } fault)
        {
            throw new ArgumentException(fault, nameof(millimetres));
        }

        var (mechanics, parts, trials) = (millimetres.GetLength(0), millimetres.GetLength(1), millimetres.GetLength(2));
        var anova = StudyAnova.Of(millimetres);
        var chance = ByChance(anova.Together, anova.Trials);
        var pooled = chance > PooledAbove;
        var trial = pooled ? anova.Trials.With(anova.Together) : anova.Trials;
        var against = pooled ? trial.MeanSquare : anova.Together.MeanSquare;

        // Expected mean squares of the two-way random model: trials σ²; together σ² + t σ_mp²; mechanics further p t σ_m²; parts m t σ_p².
        var together = pooled ? 0 : Math.Max(0, (anova.Together.MeanSquare - anova.Trials.MeanSquare) / trials);
        var mechanic = Math.Max(0, (anova.Mechanics.MeanSquare - against) / (parts * trials));
        var part = Math.Max(0, (anova.Parts.MeanSquare - against) / (mechanics * trials));
        var gauge = trial.MeanSquare + mechanic + together;
        return new()
        {
            Anova = anova,
            Pooled = pooled,
            TogetherByChance = chance,
            Repeatability = Spread(trial.MeanSquare),
            Reproducibility = Spread(mechanic + together),
            Gauge = Spread(gauge),
            Parts = Spread(part),
            Total = Spread(gauge + part),
        };
    }

    private static double ByChance(AnovaLine line, AnovaLine against) =>
        against.MeanSquare > 0
            ? 1 - FisherSnedecor.CDF(line.DegreesOfFreedom, against.DegreesOfFreedom, line.MeanSquare / against.MeanSquare)
            : line.MeanSquare > 0 ? 0 : 1;

    private static Length Spread(double variance) => Length.FromMillimetres(Math.Sqrt(variance));
}

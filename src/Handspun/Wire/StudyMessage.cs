using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.GaugeStudy;
using Handspun.Metrology.Quantities;

namespace Handspun.Wire;

/// <summary>One study, worked out. Spreads are standard deviations; shares are percent of the whole spread.</summary>
internal sealed record StudyMessage
{
    public required DateTimeOffset At { get; init; }

    public required IReadOnlyList<string> Mechanics { get; init; }

    public required IReadOnlyList<string> Parts { get; init; }

    public required IReadOnlyList<IReadOnlyList<IReadOnlyList<double>>> ValuesMm { get; init; }

    public required string Sentence { get; init; }

    public required IReadOnlyList<AnovaLineMessage> Anova { get; init; }

    /// <summary>Whether mechanics-by-parts was counted as mere repeatability.</summary>
    public required bool Pooled { get; init; }

    public required double TogetherByChance { get; init; }

    public required IReadOnlyList<SpreadMessage> Spreads { get; init; }

    public required int Categories { get; init; }

    public static StudyMessage Of(KeptStudy study)
    {
        var result = study.Sheet.Work();
        return new()
        {
            At = study.At,
            Mechanics = study.Sheet.Mechanics,
            Parts = study.Sheet.Parts,
            ValuesMm = study.Sheet.ValuesMillimetres,
            Sentence = GaugeWords.Study(result),
            Anova =
            [
                AnovaLineMessage.Of("mechanics", result.Anova.Mechanics),
                AnovaLineMessage.Of("parts", result.Anova.Parts),
                AnovaLineMessage.Of("together", result.Anova.Together),
                AnovaLineMessage.Of("trials", result.Anova.Trials),
            ],
            Pooled = result.Pooled,
            TogetherByChance = Math.Round(result.TogetherByChance, 6),
            Spreads =
            [
                SpreadMessage.Of("repeatability", result.Repeatability, result.RepeatabilityPercent),
                SpreadMessage.Of("reproducibility", result.Reproducibility, result.ReproducibilityPercent),
                SpreadMessage.Of("gauge", result.Gauge, result.GaugePercent),
                SpreadMessage.Of("parts", result.Parts, result.PartsPercent),
                SpreadMessage.Of("total", result.Total, 100),
            ],
            Categories = result.Categories,
        };
    }
}

/// <summary>One line of an analysis of variance, in square millimetres.</summary>
internal sealed record AnovaLineMessage(string Source, int DegreesOfFreedom, double SumOfSquares, double MeanSquare)
{
    public static AnovaLineMessage Of(string source, AnovaLine line) => new(source, line.DegreesOfFreedom, line.SumOfSquares, line.MeanSquare);
}

/// <summary>One spread.</summary>
internal sealed record SpreadMessage(string Source, double Mm, double Percent)
{
    public static SpreadMessage Of(string source, Length spread, double percent) => new(source, spread.Millimetres, percent);
}

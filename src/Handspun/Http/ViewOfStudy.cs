using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.GaugeStudy;
using Handspun.Metrology.Quantities;
using Handspun.Pages;

namespace Handspun.Http;

/// <summary>A gauge study as the gauge's page shows it.</summary>
internal static class ViewOfStudy
{
    /// <summary>The study, worked out.</summary>
    public static StudyView Of(KeptStudy study, LengthUnit unit)
    {
        var (sheet, result) = (study.Sheet, study.Sheet.Work());
        var trials = sheet.ValuesMillimetres[0][0].Count;
        return new(
            GaugeWords.Day(GaugeWords.DayOf(study.At)),
            $"{sheet.Mechanics.Count} mechanics, {sheet.Parts.Count} parts, {trials} trials",
            GaugeWords.Study(result),
            [
                Line("Mechanics", result.Anova.Mechanics, unit),
                Line("Parts", result.Anova.Parts, unit),
                Line("Mechanics by parts", result.Anova.Together, unit),
                Line("Trials", result.Anova.Trials, unit),
            ],
            string.Create(CultureInfo.InvariantCulture, $"Chance alone makes mechanics by parts stand out as much in {100 * result.TogetherByChance:0.#} % of studies, so it {(result.Pooled ? "is counted with the trials" : "counts by itself")}. Squares of {LengthText.Symbol(unit)}."),
            [
                Spread("Repeatability: same mechanic, same part", result.Repeatability, result.RepeatabilityPercent, unit),
                Spread("Reproducibility: between mechanics", result.Reproducibility, result.ReproducibilityPercent, unit),
                Spread("Gauge in these hands: both", result.Gauge, result.GaugePercent, unit),
                Spread("Between the parts", result.Parts, result.PartsPercent, unit),
                Spread("All together", result.Total, 100, unit),
            ],
            LengthText.Symbol(unit));
    }

    private static IReadOnlyList<string> Line(string source, AnovaLine line, LengthUnit unit)
    {
        var square = Math.Pow(LengthText.InUnit(1, unit), 2);
        return [source, line.DegreesOfFreedom.ToString(CultureInfo.InvariantCulture), Scientific(line.SumOfSquares * square), Scientific(line.MeanSquare * square)];
    }

    private static IReadOnlyList<string> Spread(string source, Length spread, double percent, LengthUnit unit) =>
        [source, LengthText.Fine(spread, unit).Split(' ')[0], percent.ToString("0.0", CultureInfo.InvariantCulture)];

    private static string Scientific(double value) => value.ToString(value is 0 or (>= 0.001 and < 10_000) ? "0.0000" : "0.000E+0", CultureInfo.InvariantCulture);
}

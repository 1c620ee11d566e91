using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Records;
using Handspun.Metrology.GaugeStudy;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.ShopGauges;

/// <summary>Checks and studies in words.</summary>
public static class GaugeWords
{
    /// <summary>The code in data where a gauge was never checked.</summary>
    public const string NeverCode = "never-checked";

    /// <summary>Where a gauge stands on a day, as a code: <c>good</c>, <c>undecided</c>, <c>failed</c>, <c>overdue</c> or <c>never-checked</c>.</summary>
    public static string Code(LastCheck? check, DateOnly day) => check is null ? NeverCode : GaugeStandingText.Code(check.On(day));

    /// <summary>The same in one sentence.</summary>
    public static string Sentence(LastCheck? check, DateOnly day) => check is null ? GaugeDoubt.NeverChecked.Sentence : GaugeStandingText.Sentence(check.On(day));

    /// <summary>A day, such as <c>3 Mar 2026</c>.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The day of a moment, in the shop.</summary>
    public static DateOnly DayOf(DateTimeOffset at) => DateOnly.FromDateTime(at.ToLocalTime().DateTime);

    /// <summary>A record's gauge, such as <c>pinion, checked 3 Mar 2026</c>; its name alone where the record does not know of checks.</summary>
    public static string OnRecord(CaptureRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Gauge.LastCheck is { } check ? $"{record.Gauge.Name}, checked {Day(DayOf(check.At))}"
            : record.Warnings.Contains(GaugeDoubt.NeverChecked) ? $"{record.Gauge.Name}, never checked"
            : record.Gauge.Name;
    }

    /// <summary>An error with its uncertainty, finely enough for a gauge block.</summary>
    public static string Error(double millimetres, double u95Millimetres, LengthUnit unit) =>
        $"{LengthText.Fine(Length.FromMillimetres(millimetres), unit, withPlus: true)} ± {LengthText.FineUncertainty(Length.FromMillimetres(u95Millimetres), unit)}";

    /// <summary>What a study says of the gauge in these hands. The bounds are common practice in gauge studies, from memory, no source.</summary>
    public static string Study(GaugeStudyResult study)
    {
        var share = study.GaugePercent switch
        {
            < 10 => "That is little: the gauge tells these parts apart well.",
            < 30 => "That may do, where nothing better is at hand.",
            _ => "That is too much: these parts cannot be judged with it.",
        };
        var most = study.Reproducibility > study.Repeatability
            ? "Most of it is between the mechanics: agree on how the gauge is held and read."
            : "Most of it is one and the same mechanic's readings: look at the stand, the plunger and the gauge itself.";
        var groups = study.Categories switch
        {
            1 => "It cannot tell these parts apart.",
            < 5 => $"It tells these parts into {study.Categories} groups; 5 or more are wanted.",
            >= 1000 => "The readings did not scatter at all, so how many groups it tells apart is not known.",
            _ => $"It tells these parts into {study.Categories} groups.",
        };
        return string.Create(CultureInfo.InvariantCulture, $"Gauge and hands make up {study.GaugePercent:0.0} % of all the spread. {share} {(study.Gauge > Length.Zero ? most + " " : "")}{groups}");
    }
}

using Handspun.Jobs.Lengths;
using Handspun.Jobs.Records;
using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Reports;

/// <summary>The gauge of a record in a report: how finely it reads, how true it is, and its check.</summary>
internal static class GaugeLines
{
    public static IEnumerable<Figure> Of(CaptureRecord record, LengthUnit unit, ReportClock clock)
    {
        var gauge = record.Gauge;
        if (gauge.ResolutionMillimetres > 0)
        {
            yield return new("Reads to", In(gauge.ResolutionMillimetres));
        }

        if (gauge.ErrorLimitMillimetres > 0)
        {
            yield return new("Error limit", $"± {In(gauge.ErrorLimitMillimetres)}, as its maker states");
        }

        if (gauge.LastCheck is { } check)
        {
            yield return new("Check", $"{clock.Day(check.At)} by {check.By}, against {check.Against}: error {GaugeWords.Error(check.ErrorMillimetres, check.ErrorU95Millimetres, unit)}. {GaugeWords.Sentence(check, GaugeWords.DayOf(record.At))}");
        }
        else if (record.HasFiles)
        {
            yield return new("Check", "none on record");
        }

        // Six decimals of an inch would be needed for a micrometre; two units say it without.
        string In(double millimetres) => unit.IsInch
            ? $"{LengthText.Uncertainty(Length.FromMillimetres(millimetres), LengthUnit.Inch)} ({LengthText.Of(Length.FromMillimetres(millimetres), LengthUnit.Millimetre)})"
            : LengthText.Of(Length.FromMillimetres(millimetres), unit);
    }
}

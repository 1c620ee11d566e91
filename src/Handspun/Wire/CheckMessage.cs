using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.GaugeStudy;

namespace Handspun.Wire;

/// <summary>One check.</summary>
internal sealed record CheckMessage(
    DateTimeOffset At,
    DateOnly DueOn,
    string By,
    string Against,
    double SizeMm,
    double DeviationMm,
    double SizeU95Mm,
    double ZeroedOnMm,
    IReadOnlyList<double> ReadingsMm,
    double ResolutionMm,
    double ErrorLimitMm,
    double ErrorMm,
    double ErrorU95Mm,
    double RepeatabilityMm,
    string Found)
{
    public static CheckMessage Of(KeptCheck check) => new(
        check.At,
        check.DueOn,
        check.Sheet.By,
        check.Sheet.Against,
        check.Sheet.SizeMillimetres,
        check.Sheet.DeviationMillimetres,
        check.Sheet.SizeU95Millimetres,
        check.Sheet.ZeroedOnMillimetres,
        check.Sheet.ReadingsMillimetres,
        check.Sheet.ResolutionMillimetres,
        check.Sheet.ErrorLimitMillimetres,
        Math.Round(check.ErrorMillimetres, 7),
        Math.Round(check.ErrorU95Millimetres, 7),
        Math.Round(check.RepeatabilityMillimetres, 7),
        GaugeStandingText.Code(check.Standing));
}

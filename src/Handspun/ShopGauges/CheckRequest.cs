using System.Globalization;
using Handspun.Http;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.Quantities;

namespace Handspun.ShopGauges;

/// <summary>A check as it is typed: lengths with their units, the readings with one behind the last.</summary>
internal sealed record CheckRequest(
    string? By = null,
    string? Against = null,
    string? Size = null,
    string? Deviation = null,
    string? SizeU95 = null,
    string? ZeroedOn = null,
    string? Readings = null,
    string? Resolution = null,
    string? ErrorLimit = null,
    string? DueOn = null)
{
    /// <summary>What was typed; what was left empty is taken from what is known of the gauge.</summary>
    /// <exception cref="RequestSentenceException">A length, a reading or the day cannot be read.</exception>
    public CheckSheet Read(KnownGauge gauge) => ReadingsText.Read(Readings, out var readings) is { } problem
        ? throw new RequestSentenceException(problem)
        : new()
        {
            By = By?.Trim() ?? "",
            Against = Against?.Trim() ?? "",
            SizeMillimetres = Needed("size", Size).Millimetres,
            DeviationMillimetres = Typed("deviation", Deviation)?.Millimetres ?? 0,
            SizeU95Millimetres = Needed("size_u95", SizeU95).Millimetres,
            ZeroedOnMillimetres = Typed("zeroed_on", ZeroedOn)?.Millimetres ?? 0,
            ReadingsMillimetres = [.. readings.Select(reading => reading.Millimetres)],
            ResolutionMillimetres = Typed("resolution", Resolution)?.Millimetres ?? gauge.ResolutionMillimetres ?? 0,
            ErrorLimitMillimetres = Typed("error_limit", ErrorLimit)?.Millimetres ?? gauge.ErrorLimitMillimetres ?? 0,
            DueOn = Day(DueOn),
        };

    internal static Length? Typed(string name, string? text) =>
        string.IsNullOrWhiteSpace(text) ? null
        : LengthText.TryParseSigned(text, out var length) ? length
        : throw new RequestSentenceException($"{name} '{text}' is no length. {LengthText.HowToWrite}");

    private static Length Needed(string name, string? text) => Typed(name, text) ?? throw new RequestSentenceException($"{name} is missing. {LengthText.HowToWrite}");

    private static DateOnly? Day(string? text) =>
        string.IsNullOrWhiteSpace(text) ? null
        : DateOnly.TryParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day
        : throw new RequestSentenceException($"due_on '{text}' is no day: give it like '2027-03-01', or leave it empty.");
}

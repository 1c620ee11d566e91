using System.Globalization;
using Handspun.Http;
using Handspun.Jobs.ShopGauges;

namespace Handspun.ShopGauges;

/// <summary>What a gauge is, as it is typed; its name where it is a new one.</summary>
internal sealed record GaugeRequest(string? Name = null, string? Description = null, string? CheckEveryDays = null, string? Resolution = null, string? ErrorLimit = null)
{
    public GaugeSheet Read() => new()
    {
        Description = string.IsNullOrWhiteSpace(Description) ? null : Description.Trim(),
        CheckEveryDays = Days(CheckEveryDays),
        ResolutionMillimetres = CheckRequest.Typed("resolution", Resolution)?.Millimetres,
        ErrorLimitMillimetres = CheckRequest.Typed("error_limit", ErrorLimit)?.Millimetres,
    };

    private static int Days(string? text) =>
        string.IsNullOrWhiteSpace(text) ? ShopGauge.UsualDays
        : int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var days) ? days
        : throw new RequestSentenceException($"check_every_days '{text}' is no number of days: give it like '365'.");
}

using Handspun.Jobs.ShopGauges;
using Handspun.ShopGauges;

namespace Handspun.Wire;

/// <summary>A gauge of the shop: where it stands, its checks and its studies, newest first.</summary>
internal sealed record ShopGaugeMessage
{
    public required string Gauge { get; init; }

    public string? Description { get; init; }

    public required int CheckEveryDays { get; init; }

    public double? ResolutionMm { get; init; }

    public double? ErrorLimitMm { get; init; }

    /// <summary><c>good</c>, <c>undecided</c>, <c>failed</c>, <c>overdue</c> or <c>never-checked</c>.</summary>
    public required string Standing { get; init; }

    public required string Sentence { get; init; }

    public DateOnly? DueOn { get; init; }

    public required IReadOnlyList<CheckMessage> Checks { get; init; }

    public required IReadOnlyList<StudyMessage> Studies { get; init; }

    public static ShopGaugeMessage Of(KnownGauge gauge, DateOnly today) => new()
    {
        Gauge = gauge.Name,
        Description = gauge.Kept?.Description,
        CheckEveryDays = gauge.Kept?.CheckEveryDays ?? ShopGauge.UsualDays,
        ResolutionMm = gauge.ResolutionMillimetres,
        ErrorLimitMm = gauge.ErrorLimitMillimetres,
        Standing = GaugeWords.Code(gauge.LastCheck, today),
        Sentence = GaugeWords.Sentence(gauge.LastCheck, today),
        DueOn = gauge.LastCheck?.DueOn,
        Checks = [.. (gauge.Kept?.ChecksNewestFirst ?? []).Select(CheckMessage.Of)],
        Studies = [.. (gauge.Kept?.StudiesNewestFirst ?? []).Select(StudyMessage.Of)],
    };
}

/// <summary>What a gauge shows now.</summary>
internal sealed record ShownMessage(string Gauge, double Mm, string Text);

using Handspun.Jobs.ShopGauges;

namespace Handspun.Wire;

/// <summary>The newest check of a gauge.</summary>
/// <param name="At">When it was made.</param>
/// <param name="DueOn">The last day on which it counts.</param>
/// <param name="By">Who made it.</param>
/// <param name="Against">What the gauge was held against.</param>
/// <param name="ErrorMm">What the gauge showed minus what is true.</param>
/// <param name="ErrorU95Mm">Its expanded uncertainty (k = 2).</param>
/// <param name="Found">What followed for the gauge on that day: <c>good</c>, <c>undecided</c> or <c>failed</c>.</param>
internal sealed record GaugeCheckMessage(DateTimeOffset At, DateOnly DueOn, string By, string Against, double ErrorMm, double ErrorU95Mm, string Found)
{
    public static GaugeCheckMessage? Of(LastCheck? check) => check is null
        ? null
        : new(check.At, check.DueOn, check.By, check.Against, Math.Round(check.ErrorMillimetres, 7), Math.Round(check.ErrorU95Millimetres, 7), check.Found);
}

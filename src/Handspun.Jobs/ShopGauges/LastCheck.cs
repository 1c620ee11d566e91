using Handspun.Metrology.GaugeStudy;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.ShopGauges;

/// <summary>A gauge's newest check, as records keep it.</summary>
public sealed record LastCheck
{
    /// <summary>When it was made.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The last day on which it counts.</summary>
    public required DateOnly DueOn { get; init; }

    /// <summary>Who made it.</summary>
    public required string By { get; init; }

    /// <summary>What the gauge was held against, in words.</summary>
    public required string Against { get; init; }

    /// <summary>What the gauge showed minus what is true, in millimetres.</summary>
    public required double ErrorMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2), in millimetres.</summary>
    public required double ErrorU95Millimetres { get; init; }

    /// <summary>The largest error that it was held against, ± this much in millimetres: what the gauge's papers allow.</summary>
    public double ErrorLimitMillimetres { get; init; }

    /// <summary>What followed for the gauge on the day of the check, as a code: <c>good</c>, <c>undecided</c> or <c>failed</c>.</summary>
    public required string Found { get; init; }

    /// <summary>The largest error that the check leaves room for: what was found and its uncertainty together.</summary>
    public Length LargestError => Length.FromMillimetres(Math.Abs(ErrorMillimetres) + ErrorU95Millimetres);

    /// <summary>Where the gauge stands on a day.</summary>
    public GaugeStanding On(DateOnly day)
    {
        var found = GaugeStandingText.Read(Found);
        return found == GaugeStanding.Good && day > DueOn ? GaugeStanding.Overdue : found;
    }
}

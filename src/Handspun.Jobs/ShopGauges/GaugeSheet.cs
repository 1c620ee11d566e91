namespace Handspun.Jobs.ShopGauges;

/// <summary>What is typed of a gauge.</summary>
public sealed record GaugeSheet
{
    private const int LongestText = 120;
    private const int MostDays = 3660;

    /// <summary>What it is, in a few words; null where nobody says.</summary>
    public string? Description { get; init; }

    /// <summary>Days from one check to the next.</summary>
    public int CheckEveryDays { get; init; } = ShopGauge.UsualDays;

    /// <summary>The smallest step that it shows, in millimetres; null where its profile says.</summary>
    public double? ResolutionMillimetres { get; init; }

    /// <summary>The largest error that its papers allow, ± this much in millimetres; null where its profile says.</summary>
    public double? ErrorLimitMillimetres { get; init; }

    /// <summary>What cannot be, in one sentence that says what to do; null where it can be used.</summary>
    public string? Problem() =>
        Description?.Length > LongestText ? $"Say what the gauge is in at most {LongestText} characters."
        : CheckEveryDays is < 1 or > MostDays ? $"Give the days from one check to the next as a whole number from 1 to {MostDays}."
        : ResolutionMillimetres is not (null or (> 0 and < 1)) ? "Give the gauge's smallest step with its unit, or leave it empty where its profile says it."
        : ErrorLimitMillimetres is not (null or (> 0 and < 1)) ? "Give the error limit of the gauge's papers with its unit, or leave it empty where its profile says it."
        : null;
}

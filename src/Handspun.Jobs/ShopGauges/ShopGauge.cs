namespace Handspun.Jobs.ShopGauges;

/// <summary>A gauge as the shop keeps a book of it: whether it is plugged in or not.</summary>
public sealed class ShopGauge
{
    /// <summary>How often a gauge is checked where nobody says otherwise, in days (common practice, no source).</summary>
    public const int UsualDays = 365;

    /// <summary>The store's key.</summary>
    public int Id { get; init; }

    /// <summary>What the shop calls it; the name by which the station knows it where it is plugged in.</summary>
    public required string Name { get; init; }

    /// <summary>What it is, in a few words; null where nobody said.</summary>
    public string? Description { get; set; }

    /// <summary>Days from one check to the next; at least 1.</summary>
    public int CheckEveryDays { get; set; } = UsualDays;

    /// <summary>The smallest step that it shows, in millimetres; null where its profile says.</summary>
    public double? ResolutionMillimetres { get; set; }

    /// <summary>The largest error that its papers allow, ± this much in millimetres; null where its profile says.</summary>
    public double? ErrorLimitMillimetres { get; set; }

    /// <summary>Its checks, in any order.</summary>
    public List<KeptCheck> Checks { get; init; } = [];

    /// <summary>Its studies, in any order.</summary>
    public List<KeptStudy> Studies { get; init; } = [];

    /// <summary>The checks, newest first.</summary>
    public IEnumerable<KeptCheck> ChecksNewestFirst => Checks.OrderByDescending(check => check.At).ThenByDescending(check => check.Id);

    /// <summary>The studies, newest first.</summary>
    public IEnumerable<KeptStudy> StudiesNewestFirst => Studies.OrderByDescending(study => study.At).ThenByDescending(study => study.Id);

    /// <summary>What records keep of the newest check; null where it was never checked.</summary>
    public LastCheck? LastCheck => ChecksNewestFirst.FirstOrDefault()?.ToLastCheck();
}

using Handspun.Jobs.ShopGauges;

namespace Handspun.Jobs.Records;

/// <summary>The gauge of a record, as it was at the time.</summary>
public sealed record RecordGauge
{
    /// <summary>What the shop calls it.</summary>
    public required string Name { get; init; }

    /// <summary>The name of its profile.</summary>
    public required string Profile { get; init; }

    /// <summary>Where it was plugged in.</summary>
    public required string Port { get; init; }

    /// <summary>The smallest step that it shows, in millimetres; 0 where it is not known.</summary>
    public double ResolutionMillimetres { get; init; }

    /// <summary>The largest error that its maker states, ± this much in millimetres; 0 where it is not known.</summary>
    public double ErrorLimitMillimetres { get; init; }

    /// <summary>Its newest check at that time; null where it was never checked, or the record was made before checks were kept.</summary>
    public LastCheck? LastCheck { get; init; }
}

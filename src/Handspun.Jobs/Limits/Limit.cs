using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Limits;

/// <summary>What a result is held against, with its source and who confirmed it.</summary>
/// <remarks>At least one bound is there; the lower is below the upper.</remarks>
public sealed record Limit
{
    /// <summary>The smallest value allowed, in millimetres; null where there is no lower bound.</summary>
    public double? LowerMillimetres { get; init; }

    /// <summary>The largest value allowed, in millimetres; null where there is no upper bound.</summary>
    public double? UpperMillimetres { get; init; }

    /// <summary>Where it comes from: the manual and its page, or that it has no source.</summary>
    public required string Source { get; init; }

    /// <summary>Who confirmed it against the manual; null where nobody did.</summary>
    public string? ConfirmedBy { get; init; }

    /// <summary>When it was confirmed; null where that was not noted.</summary>
    public DateTimeOffset? ConfirmedAt { get; init; }

    /// <summary>Which drive of the cams it is for; null where it holds for both or nobody said.</summary>
    public CamDrive? Drive { get; init; }

    /// <summary>Whether it is for new parts or for parts in service; null where nobody said.</summary>
    public LimitAge? Age { get; init; }

    /// <summary>Whether somebody confirmed it.</summary>
    public bool Confirmed => ConfirmedBy is not null;

    /// <summary>Whether another allows the same values, whatever its source.</summary>
    public bool AllowsTheSameAs(Limit? other) => other is not null && LowerMillimetres == other.LowerMillimetres && UpperMillimetres == other.UpperMillimetres;

    /// <summary>The bounds as the decision rule takes them.</summary>
    public Tolerance Tolerance => (LowerMillimetres, UpperMillimetres) switch
    {
        ({ } lower, { } upper) => Tolerance.Between(Length.FromMillimetres(lower), Length.FromMillimetres(upper)),
        ({ } lower, null) => Tolerance.AtLeast(Length.FromMillimetres(lower)),
        (null, { } upper) => Tolerance.AtMost(Length.FromMillimetres(upper)),
        _ => throw new InvalidOperationException("A limit has at least one bound."),
    };
}

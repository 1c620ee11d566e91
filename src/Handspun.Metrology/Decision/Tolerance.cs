using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Decision;

/// <summary>The values that are allowed: at most so much, at least so much, or between two bounds.</summary>
/// <remarks>At least one bound is there, and the lower is below the upper.</remarks>
public sealed record Tolerance
{
    private Tolerance(Length? lower, Length? upper) => (Lower, Upper) = (lower, upper);

    /// <summary>The smallest value allowed; null where there is no lower bound.</summary>
    public Length? Lower { get; }

    /// <summary>The largest value allowed; null where there is no upper bound.</summary>
    public Length? Upper { get; }

    /// <summary>At most this much.</summary>
    public static Tolerance AtMost(Length upper) => new(null, upper);

    /// <summary>At least this much.</summary>
    public static Tolerance AtLeast(Length lower) => new(lower, null);

    /// <summary>Between two bounds, both allowed.</summary>
    /// <exception cref="ArgumentException">The lower bound is not below the upper.</exception>
    public static Tolerance Between(Length lower, Length upper) => lower < upper
        ? new(lower, upper)
        : throw new ArgumentException("The lower bound of a limit lies below its upper bound.", nameof(lower));
}

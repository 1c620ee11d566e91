using Handspun.Metrology.Quantities;

namespace Handspun.Pages;

/// <summary>Where a result and its uncertainty lie against a limit, as fractions 0 to 1 of a drawn scale: one that starts at zero, or for a size one about the limit.</summary>
/// <param name="Value">The result.</param>
/// <param name="From">The result less its uncertainty.</param>
/// <param name="To">The result and its uncertainty.</param>
/// <param name="Lower">The lower limit; null when there is none.</param>
/// <param name="Upper">The upper limit; null when there is none.</param>
public sealed record LimitScale(double Value, double From, double To, double? Lower, double? Upper)
{
    // A size is held against bounds that lie close together, or differs from its bound by a small part of it: from zero up nothing could be told.
    private const double SmallPart = 0.01;

    /// <summary>The scale for a result; null when there is no limit above zero to hold it against.</summary>
    public static LimitScale? For(Length result, Length uncertainty, Length? lower, Length? upper)
    {
        var bound = (upper ?? lower)?.Millimetres ?? 0;
        if (bound <= 0)
        {
            return null;
        }

        var (start, end) = Ends(result.Millimetres, uncertainty.Millimetres, lower?.Millimetres, upper?.Millimetres, bound);
        double At(Length length) => Math.Clamp((length.Millimetres - start) / (end - start), 0, 1);
        return new(
            At(result), At(result - uncertainty), At(result + uncertainty),
            lower is { } low ? At(low) : null, upper is { } high ? At(high) : null);
    }

    private static (double Start, double End) Ends(double result, double uncertainty, double? lower, double? upper, double bound)
    {
        var (least, most) = (Math.Min(lower ?? bound, result - uncertainty), Math.Max(upper ?? bound, result + uncertainty));
        var about = most - least;
        return least > 0 && about > 0 && about < SmallPart * bound
            ? (least - 0.4 * about, most + 0.4 * about)
            : (0, Math.Max(bound * 1.4, (result + uncertainty) * 1.08));
    }
}

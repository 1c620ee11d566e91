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

    /// <summary>The scale for a result that another one shares, with the limit of the first: from zero, or about both where they lie close together.</summary>
    /// <param name="one">The result and its uncertainty.</param>
    /// <param name="other">Those of the other.</param>
    /// <param name="bounds">The limit of the first, the smallest and the largest value; null where there is none.</param>
    /// <param name="otherBounds">That of the other.</param>
    public static LimitScale Together((Length Value, Length U95) one, (Length Value, Length U95) other, (Length? Lower, Length? Upper) bounds, (Length? Lower, Length? Upper) otherBounds)
    {
        var marks = new Length?[] { one.Value - one.U95, one.Value + one.U95, other.Value - other.U95, other.Value + other.U95, bounds.Lower, bounds.Upper, otherBounds.Lower, otherBounds.Upper }
            .OfType<Length>().Select(length => length.Millimetres).ToList();
        var (least, most) = (marks.Min(), marks.Max());
        var about = Math.Max(most - least, 1e-6);
        var (start, end) = least > 0 && about < SmallPart * most || least < 0 ? (least - 0.4 * about, most + 0.4 * about) : (0, Math.Max(most, 1e-6) * 1.12);
        double At(Length length) => Math.Clamp((length.Millimetres - start) / (end - start), 0, 1);
        return new(
            At(one.Value), At(one.Value - one.U95), At(one.Value + one.U95),
            bounds.Lower is { } low ? At(low) : null, bounds.Upper is { } high ? At(high) : null);
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

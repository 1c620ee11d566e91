using Handspun.Metrology.Quantities;

namespace Handspun.Pages;

/// <summary>Where a result and its uncertainty lie against a limit, as fractions 0 to 1 of a drawn scale that starts at zero.</summary>
/// <param name="Value">The result.</param>
/// <param name="From">The result less its uncertainty.</param>
/// <param name="To">The result and its uncertainty.</param>
/// <param name="Lower">The lower limit; null when there is none.</param>
/// <param name="Upper">The upper limit; null when there is none.</param>
public sealed record LimitScale(double Value, double From, double To, double? Lower, double? Upper)
{
    /// <summary>The scale for a result; null when there is no limit above zero to hold it against.</summary>
    public static LimitScale? For(Length result, Length uncertainty, Length? lower, Length? upper)
    {
        var bound = (upper ?? lower)?.Millimetres ?? 0;
        if (bound <= 0)
        {
            return null;
        }

        var end = Math.Max(bound * 1.4, (result + uncertainty).Millimetres * 1.08);
        double At(Length length) => Math.Clamp(length.Millimetres / end, 0, 1);
        return new(
            At(result), At(result - uncertainty), At(result + uncertainty),
            lower is { } low ? At(low) : null, upper is { } high ? At(high) : null);
    }
}

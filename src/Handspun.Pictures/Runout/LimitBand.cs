using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;

namespace Handspun.Pictures.Runout;

/// <summary>Where a limit lies on a scale of heights above the low spot: the high spot is to come to rest inside it.</summary>
/// <param name="Lower">The lower edge that is a bound; null where there is none.</param>
/// <param name="Upper">The upper edge that is a bound; null where there is none.</param>
/// <param name="OffScale">The upper edge is so far above the shaft's movement that the scale leaves it out.</param>
internal sealed record LimitBand(double? Lower, double? Upper, bool OffScale)
{
    // At six times the movement the profile would be a sixth of the plot high, and its shape is what the plot is for.
    private const double MostOfMovement = 6;

    /// <param name="limit">The limit, where there is one.</param>
    /// <param name="movement">The height of the high spot with its uncertainty, in the unit shown.</param>
    /// <param name="unit">The unit shown.</param>
    public static LimitBand? Of(Tolerance? limit, double movement, LengthUnit unit)
    {
        if (limit is null)
        {
            return null;
        }

        double? lower = limit.Lower is { } least ? LengthText.InUnit(least.Millimetres, unit) : null;
        double? upper = limit.Upper is { } most ? LengthText.InUnit(most.Millimetres, unit) : null;
        return new(lower, upper, Math.Max(lower ?? 0, upper ?? 0) > MostOfMovement * movement);
    }
}

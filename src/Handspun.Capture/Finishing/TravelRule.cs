using Handspun.Gauges.Profiles;
using Handspun.Metrology.Quantities;

namespace Handspun.Capture.Finishing;

/// <summary>Whether a capture took so much of the gauge's travel that the plunger may have stood at its end.</summary>
/// <remarks>A gauge is zeroed anywhere, so its readings do not say how far the plunger is in; how far they reach from lowest to highest does.</remarks>
public static class TravelRule
{
    private const double NearlyAll = 0.9;   // a plunger set to the very middle has no more in hand than this leaves

    /// <summary>Whether readings reach over nearly all of the travel; never where the profile does not say the travel.</summary>
    /// <param name="lowest">The lowest reading.</param>
    /// <param name="highest">The highest reading.</param>
    /// <param name="profile">The gauge's profile.</param>
    public static bool IsUsedUp(Length lowest, Length highest, GaugeProfile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return profile.Value.TravelMillimetres is > 0 and var travel && (highest - lowest).Millimetres >= NearlyAll * travel;
    }

    /// <summary>The same of the readings of a finished capture.</summary>
    internal static bool IsUsedUp(FinishedCapture capture)
    {
        var (lowest, highest) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var millimetres in capture.Readings.Millimetres.Span)
        {
            (lowest, highest) = (Math.Min(lowest, millimetres), Math.Max(highest, millimetres));
        }

        return lowest <= highest && IsUsedUp(Length.FromMillimetres(lowest), Length.FromMillimetres(highest), capture.Gauge.Profile);
    }
}

using Handspun.Jobs.Points;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Methods.Runout;

/// <summary>What a point's setup says of how its indicator stands: the same live, replayed and analyzed.</summary>
public static class IndicatorStand
{
    /// <summary>The gauge as it stands.</summary>
    /// <param name="gauge">What is known of it by itself.</param>
    /// <param name="setup">What was said of the point; null where nothing was.</param>
    public static GaugeTraits Gauge(GaugeTraits gauge, PointSetup? setup)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        var standing = setup is RunoutSetup { Celsius: { } celsius } ? gauge with { Celsius = celsius } : gauge;
        return setup is RunoutSetup { LeverDegrees: { } degrees } ? standing.AtLever(degrees) : standing;
    }

    /// <summary>The readings as the surface moved, where a lever shows more than that.</summary>
    /// <param name="readings">As the gauge showed them.</param>
    /// <param name="setup">What was said of the point; null where nothing was.</param>
    public static RotationCapture Readings(RotationCapture readings, PointSetup? setup)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (setup is not RunoutSetup { LeverDegrees: { } degrees })
        {
            return readings;
        }

        var factor = Misalignment.LeverFactor(degrees);
        return readings with { Millimetres = Array.ConvertAll(readings.Millimetres.ToArray(), reading => reading * factor) };
    }
}

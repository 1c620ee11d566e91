using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Motion;

/// <summary>Tells a shaft that turns under the indicator from one that stands still.</summary>
public static class ShaftMotion
{
    /// <summary>Whether the readings, a stretch of about half a second to three seconds, show the shaft moving rather than noise, a flickering last digit, one knock or a slow drift.</summary>
    /// <param name="seconds">When each was taken, in seconds; never decreasing.</param>
    /// <param name="millimetres">What each was, in millimetres.</param>
    /// <param name="resolution">The gauge's step; zero where it is not known.</param>
    public static bool IsTurning(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres, Length resolution) =>
        throw new NotImplementedException();
}

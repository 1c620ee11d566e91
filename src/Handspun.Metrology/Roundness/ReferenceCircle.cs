using Handspun.Metrology.Quantities;

namespace Handspun.Metrology.Roundness;

/// <summary>A point of the profile on which a circle rests.</summary>
/// <param name="Index">Its place in the input, from 0; null where the profile was a Fourier series.</param>
/// <param name="At">Its direction from the circle's centre, or its angle where the profile was given by angle.</param>
public readonly record struct ControlPoint(int? Index, Angle At);

/// <summary>One reference circle of a profile.</summary>
/// <param name="CentreX">Centre toward 0 degrees, from the input's own origin.</param>
/// <param name="CentreY">Centre toward 90 degrees, from the input's own origin.</param>
/// <param name="Radius">The radius; for a profile of deviations, the radius above that of the dial's zero, which is not known.</param>
/// <param name="Peak">The highest point above the circle, zero or more.</param>
/// <param name="Valley">The lowest point below the circle, zero or more.</param>
public sealed record ReferenceCircle(Length CentreX, Length CentreY, Length Radius, Length Peak, Length Valley)
{
    /// <summary>Out-of-roundness, peak to valley, about this circle's centre (RONt of ISO 12181-1).</summary>
    public Length PeakToValley => Peak + Valley;

    /// <summary>The points on the outside that hold the circle, in order; the highest one for the least-squares circle. Where points tie, one choice of them.</summary>
    public IReadOnlyList<ControlPoint> Outer { get; init; } = [];

    /// <summary>The points on the inside that hold the circle, in order; the lowest one for the least-squares circle. Where points tie, one choice of them.</summary>
    public IReadOnlyList<ControlPoint> Inner { get; init; } = [];
}

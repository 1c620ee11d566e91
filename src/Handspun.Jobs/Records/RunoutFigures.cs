namespace Handspun.Jobs.Records;

/// <summary>What a runout capture found, as it is kept. Lengths in millimetres, angles in degrees; null where it is not known.</summary>
public sealed record RunoutFigures
{
    /// <summary>Readings in the capture.</summary>
    public int Readings { get; init; }

    /// <summary>Readings that were left out as knocks.</summary>
    public int Rejected { get; init; }

    /// <summary>Turns that were seen.</summary>
    public double Turns { get; init; }

    /// <summary>Total indicated runout.</summary>
    public double? TirMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? TirU95Millimetres { get; init; }

    /// <summary>Distance of the shaft's centre from the axis of rotation.</summary>
    public double? EccentricityMillimetres { get; init; }

    /// <summary>Out-of-roundness without the eccentricity.</summary>
    public double? RoundnessMillimetres { get; init; }

    /// <summary>Angle of the high spot from the reference.</summary>
    public double? HighSpotDegrees { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? HighSpotU95Degrees { get; init; }

    /// <summary>Angle of the low spot from the reference.</summary>
    public double? LowSpotDegrees { get; init; }

    /// <summary>Where zero degrees is, as a code: <c>first-reading</c>, <c>mark</c>, <c>index</c> or <c>encoder</c>.</summary>
    public string? AngleReference { get; init; }
}

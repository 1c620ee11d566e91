using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout.Faults;

namespace Handspun.Metrology.Runout;

/// <summary>Whether a capture gave a runout.</summary>
public enum RunoutStatus
{
    /// <summary>The runout is known, with its uncertainty.</summary>
    Measured,

    /// <summary>Less than one whole turn was seen, or no turning at all; there is no runout.</summary>
    TooShort,

    /// <summary>The capture cannot be used at all: too few readings, times that run backwards, values that are not numbers.</summary>
    Rejected,
}

/// <summary>Where zero degrees is.</summary>
public enum AngleReference
{
    /// <summary>At the first reading that was used: good for comparing angles inside one capture only.</summary>
    FirstReading,

    /// <summary>At the reference mark that the mechanic named.</summary>
    Mark,

    /// <summary>At the index pulse.</summary>
    Index,

    /// <summary>At the encoder's own zero.</summary>
    Encoder,
}

/// <summary>Why a reading was left out.</summary>
public enum RejectionReason
{
    /// <summary>It stands alone, far off what the shaft shows at that angle on the other turns.</summary>
    Knock,

    /// <summary>The shaft was not turning: before the hand moved, or after it stopped.</summary>
    Standing,

    /// <summary>The gauge repeated an old value while the shaft moved on.</summary>
    Stuck,

    /// <summary>It belongs to a narrow place that comes back at the same angle every turn.</summary>
    LocalFault,
}

/// <summary>A reading that was left out.</summary>
/// <param name="Reading">Its place in the capture, from 0.</param>
/// <param name="Reason">Why it was left out.</param>
public readonly record struct RejectedReading(int Reading, RejectionReason Reason);

/// <summary>What a runout measurement found, with all that a picture or a record needs to prove it.</summary>
public sealed record RunoutResult
{
    /// <summary>Whether there is a runout.</summary>
    public required RunoutStatus Status { get; init; }

    /// <summary>One plain sentence that says what is missing and what to do next; null where the runout was measured.</summary>
    public string? Missing { get; init; }

    /// <summary>Readings in the capture, those left out included.</summary>
    public required int Readings { get; init; }

    /// <summary>Turns of the shaft that were seen; 0 where it did not turn.</summary>
    public double Turns { get; init; }

    /// <summary>Speed over the last part of the capture, in turns a second; 0 when standing.</summary>
    public double TurnsPerSecond { get; init; }

    /// <summary>Total indicated runout: the full indicator movement of the fitted profile over one turn (ISO 1101, circular run-out).</summary>
    public Length? Tir { get; init; }

    /// <summary>Expanded uncertainty of the runout (k = 2, JCGM 100).</summary>
    public Length? TirU95 { get; init; }

    /// <summary>How far the shaft's centre is off the axis of rotation.</summary>
    public Length? Eccentricity { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public Length? EccentricityU95 { get; init; }

    /// <summary>Where the shaft's centre lies from the axis: where the first wave of the profile is highest, which need not be the high spot.</summary>
    public Angle? EccentricityToward { get; init; }

    /// <summary>Its expanded uncertainty (k = 2), in degrees; null where the angle cannot be held against that of another capture, because zero is at the first reading or at a pulse that comes at another place of the shaft each time.</summary>
    public double? EccentricityTowardU95Degrees { get; init; }

    /// <summary>Out-of-roundness that is left when the eccentricity is taken away (least-squares circle, ISO 12181-1).</summary>
    public Length? Roundness { get; init; }

    /// <summary>Where the shaft stands highest under the indicator.</summary>
    public Angle? HighSpot { get; init; }

    /// <summary>Expanded uncertainty of the high spot (k = 2), in degrees; null where the angle has no reference.</summary>
    public double? HighSpotU95Degrees { get; init; }

    /// <summary>Where the shaft stands lowest under the indicator.</summary>
    public Angle? LowSpot { get; init; }

    /// <summary>Where zero degrees is.</summary>
    public AngleReference Reference { get; init; }

    /// <summary>The shaft's profile over one turn; null where there is no runout.</summary>
    public ShaftProfile? Profile { get; init; }

    /// <summary>The angle of each reading in degrees from the reference, whole turns counted; NaN where it is not known. Empty, or one for each reading.</summary>
    public IReadOnlyList<double> AngleDegrees { get; init; } = [];

    /// <summary>The slow drift of the stand that was taken out of each reading, in millimetres. Empty, or one for each reading.</summary>
    public IReadOnlyList<double> DriftMillimetres { get; init; } = [];

    /// <summary>The runout of each whole turn by itself, in millimetres, in order.</summary>
    public IReadOnlyList<double> TirByTurnMillimetres { get; init; } = [];

    /// <summary>Narrow places that come back at the same angle every turn, by angle; they are no part of <see cref="Tir"/>.</summary>
    public IReadOnlyList<LocalFault> Faults { get; init; } = [];

    /// <summary>The full indicator movement with the local faults in it; null where there is no runout. The same as <see cref="Tir"/> where there are none.</summary>
    public Length? TirWithFaults { get; init; }

    /// <summary>The readings that were left out, and why.</summary>
    public IReadOnlyList<RejectedReading> Rejected { get; init; } = [];

    /// <summary>What makes the result less sure than it looks, each once.</summary>
    public IReadOnlyList<RunoutWarning> Warnings { get; init; } = [];
}

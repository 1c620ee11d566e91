using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Lift;

/// <summary>Whether a capture gave a lift curve.</summary>
public enum LiftStatus
{
    /// <summary>Lift, centreline and duration are known, with their uncertainties.</summary>
    Measured,

    /// <summary>Nothing, or too little, told the angle.</summary>
    NoAngle,

    /// <summary>Less than one whole turn of the cam was seen.</summary>
    TooShort,

    /// <summary>The readings do not come to rest on a base circle, so no lift can be counted from it.</summary>
    NoBaseCircle,

    /// <summary>The lobe does not reach the checking lift.</summary>
    NotOpened,

    /// <summary>The capture cannot be used at all, or contradicts what was said of it.</summary>
    Rejected,
}

/// <summary>What a lift measurement found. Zero of every angle is the reference: index pulse, mark or encoder zero.</summary>
public sealed record LiftResult
{
    /// <summary>Whether there is a lift curve.</summary>
    public required LiftStatus Status { get; init; }

    /// <summary>One plain sentence that says what is missing and what to do next; null where it was measured.</summary>
    public string? Missing { get; init; }

    /// <summary>Readings in the capture, those left out included.</summary>
    public required int Readings { get; init; }

    /// <summary>Turns of the cam that were seen.</summary>
    public double CamTurns { get; init; }

    /// <summary>Which shaft the angle was told of.</summary>
    public AngleShaft AngleOf { get; init; }

    /// <summary>What zero degrees is.</summary>
    public AngleReference Reference { get; init; }

    /// <summary>Whether zero is the same place of the shaft in every capture; false where pulses come several times a turn and nothing tells them apart.</summary>
    public bool ZeroTold { get; init; } = true;

    /// <summary>The nose's height above the base circle, at the tappet.</summary>
    public Measured<Length>? LobeLift { get; init; }

    /// <summary>Lobe lift times rocker ratio, play not taken off; null where no ratio was given.</summary>
    public Measured<Length>? ValveLift { get; init; }

    /// <summary>The lift that opening, closing and duration count from, at the tappet.</summary>
    public Length CheckingLift { get; init; }

    /// <summary>The lobe's centreline: midway between the two places 0.050 in (on a low lobe, three tenths of its lift) below its top (common practice, no source), from the reference.</summary>
    public Measured<CamAngle>? Centreline { get; init; }

    /// <summary>Where the lift rises through the checking lift, less than half a turn of the cam before <see cref="Centreline"/>.</summary>
    public Measured<CamAngle>? Opening { get; init; }

    /// <summary>Where the lift falls through the checking lift, less than half a turn of the cam after <see cref="Centreline"/>.</summary>
    public Measured<CamAngle>? Closing { get; init; }

    /// <summary>From opening to closing.</summary>
    public Measured<CamAngle>? Duration { get; init; }

    /// <summary>Full movement of the base circle over the arc on which the tappet rests; it is not in the lift.</summary>
    public Measured<Length>? BaseCircleRunout { get; init; }

    /// <summary>Lift in millimetres at each whole degree of the cam from the reference: 360 values; empty where there is none.</summary>
    public IReadOnlyList<double> CurveMillimetres { get; init; } = [];

    /// <summary>The angle of the cam at each reading in degrees from the reference, whole turns counted. Empty, or one for each reading.</summary>
    public IReadOnlyList<double> AngleDegrees { get; init; } = [];

    /// <summary>The readings that were left out, and why.</summary>
    public IReadOnlyList<RejectedReading> Rejected { get; init; } = [];

    /// <summary>What makes the result less sure than it looks, each once.</summary>
    public IReadOnlyList<LiftWarning> Warnings { get; init; } = [];
}

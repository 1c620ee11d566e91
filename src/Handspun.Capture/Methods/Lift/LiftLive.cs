namespace Handspun.Capture.Methods.Lift;

/// <summary>What is told of a cam while it turns.</summary>
public sealed record LiftLive : LiveFigures
{
    /// <summary>Turns of the cam so far.</summary>
    public required double CamTurns { get; init; }

    /// <summary>Turns of the cam that are enough.</summary>
    public required double CamTurnsWanted { get; init; }

    /// <summary>Whether anything has told the angle yet.</summary>
    public required bool AngleTold { get; init; }

    /// <summary>Lobe lift so far; null before there was one whole turn of the cam.</summary>
    public double? LobeLiftMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2).</summary>
    public double? LobeLiftU95Millimetres { get; init; }
}

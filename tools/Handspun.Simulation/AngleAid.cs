namespace Handspun.Simulation;

/// <summary>What tells the angle of the shaft beside the indicator.</summary>
public sealed record AngleAid
{
    /// <summary>Shaft turns from one index pulse to the next; 0 where there is no index.</summary>
    public double TurnsPerIndex { get; init; }

    /// <summary>Whether the mechanic calls each passing of the reference mark, late or early by about a twentieth of a second.</summary>
    public bool Marks { get; init; }

    /// <summary>Steps a turn of an encoder; 0 where there is none.</summary>
    public int EncoderSteps { get; init; }

    /// <summary>Nothing but the indicator.</summary>
    public static AngleAid None { get; } = new();

    /// <summary>A pulse at the same angle of every turn.</summary>
    public static AngleAid IndexEachTurn { get; } = new() { TurnsPerIndex = 1 };
}

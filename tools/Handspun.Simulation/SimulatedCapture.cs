namespace Handspun.Simulation;

/// <summary>A simulated capture and the truth behind it.</summary>
public sealed record SimulatedCapture
{
    /// <summary>When each reading was taken, in seconds.</summary>
    public required double[] Seconds { get; init; }

    /// <summary>What each reading was, in millimetres.</summary>
    public required double[] Millimetres { get; init; }

    /// <summary>When index pulses came, in seconds.</summary>
    public required double[] IndexSeconds { get; init; }

    /// <summary>When the reference mark was called, in seconds.</summary>
    public required double[] MarkSeconds { get; init; }

    /// <summary>When encoder angles were taken, in seconds.</summary>
    public required double[] EncoderSeconds { get; init; }

    /// <summary>Encoder angles in degrees, whole turns counted.</summary>
    public required double[] EncoderDegrees { get; init; }

    /// <summary>The true angle of the shape at each reading, in degrees, whole turns counted; mark, encoder and a once-a-turn index have their zero where this is a whole turn.</summary>
    public required double[] TrueDegrees { get; init; }

    /// <summary>The true runout, in millimetres.</summary>
    public required double TrueTirMillimetres { get; init; }

    /// <summary>The true high spot from the first index pulse, else from the mark's or encoder's zero, in degrees.</summary>
    public required double TrueHighSpotDegrees { get; init; }
}

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

    /// <summary>Where a result's zero lies in <see cref="TrueDegrees"/>: at the first index pulse (with a pulse from another wheel, anywhere), else at the mark's or encoder's zero, which is 0.</summary>
    public required double ZeroDegrees { get; init; }

    /// <summary>The true runout, in millimetres; NaN where it is no shaft.</summary>
    public double TrueTirMillimetres { get; init; } = double.NaN;

    /// <summary>The true high spot from the first index pulse, else from the mark's or encoder's zero, in degrees; NaN where it is no shaft.</summary>
    public double TrueHighSpotDegrees { get; init; } = double.NaN;
}

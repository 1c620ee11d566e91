namespace Handspun.Metrology.Runout;

/// <summary>What an indicator and whatever gives the angle saw while a hand turned the shaft.</summary>
/// <remarks>
/// Times are seconds on one monotonic clock and never decrease; readings are millimetres, finite, plunger in positive.
/// <see cref="RunoutMethod"/> answers for bad contents with a rejected result, not an exception.
/// </remarks>
public sealed record RotationCapture
{
    /// <summary>When each reading was taken, in seconds.</summary>
    public required ReadOnlyMemory<double> Seconds { get; init; }

    /// <summary>What each reading was, in millimetres. As many as there are times.</summary>
    public required ReadOnlyMemory<double> Millimetres { get; init; }

    /// <summary>When index pulses came, in seconds. Empty where there is no index.</summary>
    public ReadOnlyMemory<double> IndexSeconds { get; init; }

    /// <summary>Shaft turns from one index pulse to the next: 1, or the overall gear ratio when the pulse comes from the rear wheel.</summary>
    public double TurnsPerIndex { get; init; } = 1;

    /// <summary>The place among the index pulses of one that is known to be at zero, where several come in a turn; null where none is.</summary>
    public int? ZeroPulse { get; init; }

    /// <summary>When the mechanic said that the reference mark passes the pointer, in seconds.</summary>
    public ReadOnlyMemory<double> MarkSeconds { get; init; }

    /// <summary>When the encoder's angles were taken, in seconds. Empty where there is no encoder.</summary>
    public ReadOnlyMemory<double> EncoderSeconds { get; init; }

    /// <summary>The encoder's angles in degrees, whole turns counted (unwrapped) or not. As many as there are encoder times.</summary>
    public ReadOnlyMemory<double> EncoderDegrees { get; init; }
}

using Handspun.Metrology.EndPlay;

namespace Handspun.Capture.Methods.EndPlay;

/// <summary>Whether a shaft is held at the end of a capture, at which stop and for how long.</summary>
/// <param name="Stop">The stop; null where the shaft moves, or was never held.</param>
/// <param name="Seconds">How long it has been held there; 0 where it moves.</param>
public readonly record struct HeldNow(Stop? Stop, double Seconds)
{
    /// <summary>How long a stop is to be held, in seconds.</summary>
    public const double LongEnough = 0.5;

    private const double JustNow = 0.2;   // the newest readings may be left out as knocks

    /// <summary>Whether it is held, but not yet for long enough.</summary>
    public bool IsShort => Stop is not null && Seconds < LongEnough;

    internal static HeldNow Of(EndPlayResult result, ReadOnlySpan<double> seconds) =>
        result.Holds is [.., var last] && last.LastReading < seconds.Length && seconds[^1] - seconds[last.LastReading] <= JustNow
            ? new(last.Stop, seconds[last.LastReading] - seconds[last.FirstReading])
            : default;
}

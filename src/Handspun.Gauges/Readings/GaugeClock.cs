namespace Handspun.Gauges.Readings;

/// <summary>The one monotonic clock of a station, on which every gauge's bytes and readings are stamped.</summary>
/// <remarks>The wall clock is read once, when the clock is made; a wall clock that is set later moves no reading.</remarks>
public sealed class GaugeClock(TimeProvider time)
{
    private readonly long _zero = time.GetTimestamp();

    /// <summary>The wall clock at the moment when this clock read zero.</summary>
    public DateTimeOffset StartedAt { get; } = time.GetUtcNow();

    /// <summary>Time since the clock was made; never runs backwards.</summary>
    public TimeSpan Now => time.GetElapsedTime(_zero);

    /// <summary>The wall-clock time of a moment on this clock.</summary>
    public DateTimeOffset WallTime(TimeSpan at) => StartedAt + at;
}

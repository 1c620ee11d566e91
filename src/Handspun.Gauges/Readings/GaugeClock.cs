namespace Handspun.Gauges.Readings;

/// <summary>The one monotonic clock of a station, on which every gauge's bytes and readings are stamped.</summary>
/// <remarks>The wall clock is read once, when the clock is made; a wall clock that is set later moves no reading.</remarks>
public sealed class GaugeClock(TimeProvider time)
{
    private readonly long _zero = time.GetTimestamp();

    /// <summary>The wall clock at the moment when this clock read zero.</summary>
    public DateTimeOffset StartedAt { get; } = time.GetUtcNow();

    /// <summary>Time since the clock was made, in whole microseconds; never runs backwards.</summary>
    /// <remarks>A journal keeps microseconds: so a reading has the same time live and on replay.</remarks>
    public TimeSpan Now
    {
        get
        {
            var elapsed = time.GetElapsedTime(_zero);
            return new(elapsed.Ticks - elapsed.Ticks % TimeSpan.TicksPerMicrosecond);
        }
    }

    /// <summary>The wall-clock time of a moment on this clock.</summary>
    public DateTimeOffset WallTime(TimeSpan at) => StartedAt + at;
}

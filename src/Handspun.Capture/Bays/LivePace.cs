namespace Handspun.Capture.Bays;

/// <summary>How often the result so far is worked out: it costs more as the capture grows, and is asked for less often then.</summary>
internal sealed class LivePace(BaySettings settings, TimeProvider time)
{
    private TimeSpan _last;
    private TimeSpan _cost;

    /// <summary>A new capture starts.</summary>
    public void Restart(TimeSpan now) => (_last, _cost) = (now, TimeSpan.Zero);

    /// <summary>Works it out where it is time to.</summary>
    /// <param name="now">The present moment.</param>
    /// <param name="among">How many captures share the time.</param>
    /// <param name="measure">Works it out.</param>
    /// <returns>Whether it was time.</returns>
    public bool Try(TimeSpan now, int among, Action measure)
    {
        var every = _cost * among / settings.LiveShare;
        if (now - _last < (every > settings.LiveEvery ? every : settings.LiveEvery))
        {
            return false;
        }

        var before = time.GetTimestamp();
        measure();
        _cost = time.GetElapsedTime(before);
        _last = now;
        return true;
    }
}

using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Listening;

/// <summary>Keeps a gauge's condition and counts, and tells its state when either has changed.</summary>
/// <remarks>Counted on the listening loop and told on a ticking one, so it is safe to use from both.</remarks>
internal sealed class GaugeTally(GaugeSetup setup, GaugeClock clock, GaugeFeed feed)
{
    private readonly Lock _lock = new();
    private GaugeState _state = new()
    {
        Gauge = setup.Name,
        Condition = GaugeCondition.Absent,
        Sentence = $"Looking for the gauge at {setup.Port}.",
        Since = clock.Now,
        Profile = setup.Profile.Name,
        Port = setup.Port.ToString() ?? "",
    };

    private (TimeSpan At, long Readings, long Unreadable) _told;
    private TimeSpan _lastHeard;

    public GaugeState State
    {
        get
        {
            lock (_lock)
            {
                return _state;
            }
        }
    }

    public void Become(GaugeCondition condition, string sentence)
    {
        lock (_lock)
        {
            if (_state.Condition == condition && _state.Sentence == sentence)
            {
                return;
            }

            _state = _state with
            {
                Condition = condition,
                Sentence = sentence,
                Since = _state.Condition == condition ? _state.Since : clock.Now,
                ReadingsPerSecond = condition == GaugeCondition.Reading ? _state.ReadingsPerSecond : 0,
                UnreadablePerSecond = 0,
            };
            _lastHeard = clock.Now;
            feed.Publish(new GaugeEvent.Changed(_state));
        }
    }

    public void Count(IReadOnlyList<Reading> readings, long unreadable, TimeSpan at)
    {
        lock (_lock)
        {
            _state = _state with { Readings = _state.Readings + readings.Count, Unreadable = _state.Unreadable + unreadable };
            if (readings.Count > 0)
            {
                _lastHeard = at;
                _state = _state with { LastReading = at, ShownMillimetres = readings[^1].Millimetres };
            }
        }
    }

    /// <summary>What the gauge says of itself; told with the next change or tick.</summary>
    public void Describe(GaugeFlags flags, GaugeUnit? unit)
    {
        lock (_lock)
        {
            _state = _state with { Flags = flags, Unit = unit };
        }
    }

    public void CountPulse()
    {
        lock (_lock)
        {
            _state = _state with { Pulses = _state.Pulses + 1 };
        }
    }

    /// <summary>Works out the rates and falls silent when nothing came; called about once a second.</summary>
    public void Tick(TimeSpan silence)
    {
        lock (_lock)
        {
            var now = clock.Now;
            var seconds = (now - _told.At).TotalSeconds;
            if (seconds <= 0)
            {
                return;
            }

            var before = _state;
            _state = _state with
            {
                ReadingsPerSecond = (_state.Readings - _told.Readings) / seconds,
                UnreadablePerSecond = (_state.Unreadable - _told.Unreadable) / seconds,
            };
            _told = (now, _state.Readings, _state.Unreadable);
            if (_state.Condition == GaugeCondition.Reading && now - _lastHeard > silence)
            {
                _state = _state with { Condition = GaugeCondition.Silent, Sentence = GaugeSentence.FellSilent(setup), Since = now };
            }

            if (_state != before)
            {
                feed.Publish(new GaugeEvent.Changed(_state));
            }
        }
    }
}

using Handspun.Gauges.Readings;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Gauges.Tests.Readings;

public class GaugeClockTests
{
    private readonly FakeTimeProvider _time = new(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero));

    [Fact]
    public void Clock_Starts_AtZero()
    {
        var clock = new GaugeClock(_time);

        Assert.Equal(TimeSpan.Zero, clock.Now);
        Assert.Equal(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero), clock.StartedAt);
    }

    [Fact]
    public void Clock_OfLaterMoments_CountsFromItsStart()
    {
        var clock = new GaugeClock(_time);
        _time.Advance(TimeSpan.FromSeconds(12.5));

        Assert.Equal(TimeSpan.FromSeconds(12.5), clock.Now);
        Assert.Equal(clock.StartedAt + TimeSpan.FromSeconds(12.5), clock.WallTime(clock.Now));
    }

    // A journal keeps microseconds; a clock that is finer would give a reading one time live and another on replay.
    [Fact]
    public void Clock_BetweenTwoMicroseconds_IsAtTheEarlier()
    {
        var clock = new GaugeClock(_time);
        _time.Advance(TimeSpan.FromTicks(12_345_678));

        Assert.Equal(TimeSpan.FromTicks(12_345_670), clock.Now);
    }

    [Fact]
    public void Clock_WhenTheWallClockIsSet_GoesOnAsBefore()
    {
        var time = new SetTime();
        var clock = new GaugeClock(time);
        time.Set(TimeSpan.FromHours(-1));

        Assert.Equal(TimeSpan.Zero, clock.Now);
        Assert.Equal(clock.StartedAt, clock.WallTime(clock.Now));
    }

    // The one at hand moves its timestamp along when its wall clock is set; a machine's does not.
    private sealed class SetTime : TimeProvider
    {
        private DateTimeOffset _wall = new(2026, 3, 14, 9, 0, 0, TimeSpan.Zero);

        public void Set(TimeSpan by) => _wall += by;

        public override DateTimeOffset GetUtcNow() => _wall;

        public override long GetTimestamp() => 0;
    }
}

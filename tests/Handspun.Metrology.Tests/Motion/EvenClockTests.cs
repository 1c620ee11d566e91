using CsCheck;
using Handspun.Metrology.Motion;

namespace Handspun.Metrology.Tests.Motion;

public class EvenClockTests
{
    private static readonly TimeSpan Every = TimeSpan.FromMilliseconds(10);

    [Fact]
    public void Readings_ThatABridgeHandsOverEverySixteenMilliseconds_LieOnTheirClockAgain()
    {
        var taken = Taken(0.01, 600);
        var arrived = Collected(taken, 0.016);

        var times = EvenClock.Spread(arrived, Every);

        // A lateness that all have in common cannot be seen; what is left to each must be far below the bridge's own 4.6 ms
        // (16 ms / √12, the standard deviation of a uniform lateness).
        Assert.True(Scatter(arrived, taken) > 0.004);
        Assert.True(Scatter(times, taken) < 0.0005, $"scatter {Scatter(times, taken)} s");
    }

    [Fact]
    public void Clock_ThatIsALittleOff_IsFollowed()
    {
        var taken = Taken(0.0101, 600);

        Assert.True(Scatter(EvenClock.Spread(Collected(taken, 0.016), Every), taken) < 0.0005);
    }

    [Theory]
    [InlineData(0.0125)]
    [InlineData(0.02)]
    public void Gauge_ThatDoesNotKeepToTheClock_IsLeftAsItArrived(double period)
    {
        var arrived = Collected(Taken(period, 300), 0.016);

        Assert.Equal(arrived, EvenClock.Spread(arrived, Every));
    }

    [Fact]
    public void Pause_StartsTheCountAnew()
    {
        double[] taken = [.. Taken(0.01, 300), .. Taken(0.01, 300).Select(t => t + 7.123)];

        Assert.True(Scatter(EvenClock.Spread(Collected(taken, 0.016), Every), taken) < 0.004);
        Assert.True(Scatter(EvenClock.Spread(Collected(taken, 0.016), Every)[300..], taken[300..]) < 0.0005);
    }

    [Fact]
    public void Times_NeverDecrease_AndAreNeverAfterTheArrivals() =>
        Gen.Frequency((20, Gen.Double[0, 0.02]), (1, Gen.Double[0.1, 0.2])).Array[0, 300].Each(2000, gaps =>
        {
            var sum = 0.0;
            double[] arrived = [.. gaps.Select(gap => sum += gap)];

            var times = EvenClock.Spread(arrived, Every);

            Assert.Equal(arrived.Length, times.Length);
            Assert.All(times.Zip(arrived), pair => Assert.True(pair.First <= pair.Second));
            Assert.All(times.Zip(times.Skip(1)), pair => Assert.True(pair.First <= pair.Second));
        });

    private static double[] Taken(double period, int count) => [.. Enumerable.Range(0, count).Select(i => 0.0037 + i * period)];

    private static double[] Collected(double[] taken, double every) => [.. taken.Select(t => Math.Ceiling(t / every) * every)];

    private static double Scatter(double[] times, double[] taken)
    {
        var off = times.Zip(taken, (time, t) => time - t).ToArray();
        var mean = off.Average();
        return Math.Sqrt(off.Average(one => (one - mean) * (one - mean)));
    }
}

using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;

namespace Handspun.Gauges.Tests.Listening;

public class GaugeFeedTests
{
    private static readonly GaugeName Pinion = GaugeName.Parse("pinion");

    private readonly GaugeFeed _feed = new();

    [Fact]
    public async Task Subscriber_ThatIsSlow_LosesItsOldest_Counted_AndTheOthersLoseNothing()
    {
        var slow = _feed.Subscribe("slow", 2);
        var quick = _feed.Subscribe("quick", 100);
        for (var i = 0; i < 10; i++)
        {
            _feed.Publish(Heard(i, i + 0.5));
        }

        slow.Dispose();
        quick.Dispose();
        Assert.Equal([8, 8.5, 9, 9.5], await ReadingsAsync(slow));
        Assert.Equal(20, (await ReadingsAsync(quick)).Count);
        Assert.Equal((16, 0), (slow.Lost, quick.Lost));
        Assert.Equal(("slow", "quick"), (slow.Name, quick.Name));
    }

    [Fact]
    public async Task Subscriber_ThatIsGone_GetsNoMore_AndMayReadWhatWaits()
    {
        var subscriber = _feed.Subscribe("test", 10);
        _feed.Publish(Heard(1));
        subscriber.Dispose();
        subscriber.Dispose();
        _feed.Publish(Heard(2));

        Assert.Equal([1], await ReadingsAsync(subscriber));
        Assert.Equal(0, subscriber.Lost);
    }

    [Fact]
    public async Task Subscribers_ThatComeAndGoWhileThingsAreSaid_DisturbNobody()
    {
        var steady = _feed.Subscribe("steady", 10_000);
        var coming = Task.Run(() =>
        {
            for (var i = 0; i < 2000; i++)
            {
                _feed.Subscribe("brief", 1).Dispose();
            }
        });
        for (var i = 0; i < 5000; i++)
        {
            _feed.Publish(Heard(i));
        }

        await coming;
        steady.Dispose();
        Assert.Equal(Enumerable.Range(0, 5000).Select(i => (double)i), await ReadingsAsync(steady));
    }

    private static GaugeEvent.Heard Heard(params double[] millimetres) =>
        new(Pinion, [.. millimetres.Select(value => Reading.FromMillimetres(value, TimeSpan.Zero))]);

    private static async Task<List<double>> ReadingsAsync(GaugeSubscription subscriber) =>
        [.. (await subscriber.Events.ReadAllAsync().ToListAsync()).Cast<GaugeEvent.Heard>().SelectMany(heard => heard.Readings).Select(reading => reading.Millimetres)];
}

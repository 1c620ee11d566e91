using System.Collections.Immutable;
using System.Threading.Channels;

namespace Handspun.Gauges.Listening;

/// <summary>Hands what the gauges say to everyone who listens; each has a queue of its own, and one that is slow costs the others nothing.</summary>
public sealed class GaugeFeed
{
    private ImmutableArray<GaugeSubscription> _subscriptions = [];

    /// <summary>Starts to listen.</summary>
    /// <param name="name">Who listens, for logs and counts.</param>
    /// <param name="capacity">Events that may wait. When more come, the oldest is let go and counted.</param>
    public GaugeSubscription Subscribe(string name, int capacity)
    {
        var subscription = new GaugeSubscription(this, name, capacity);
        ImmutableInterlocked.Update(ref _subscriptions, list => list.Add(subscription));
        return subscription;
    }

    /// <summary>Hands an event to everyone.</summary>
    public void Publish(GaugeEvent happened)
    {
        foreach (var subscription in _subscriptions)
        {
            subscription.Offer(happened);
        }
    }

    internal void Remove(GaugeSubscription subscription) =>
        ImmutableInterlocked.Update(ref _subscriptions, list => list.Remove(subscription));
}

/// <summary>One listener's queue.</summary>
public sealed class GaugeSubscription : IDisposable
{
    private readonly GaugeFeed _feed;
    private readonly Channel<GaugeEvent> _queue;
    private long _lost;

    internal GaugeSubscription(GaugeFeed feed, string name, int capacity)
    {
        (_feed, Name) = (feed, name);
        _queue = Channel.CreateBounded<GaugeEvent>(
            new BoundedChannelOptions(capacity) { FullMode = BoundedChannelFullMode.DropOldest, SingleReader = true },
            dropped => Interlocked.Add(ref _lost, dropped is GaugeEvent.Heard heard ? heard.Readings.Count : 0));
    }

    /// <summary>Who listens.</summary>
    public string Name { get; }

    /// <summary>Readings that were let go because the queue was full.</summary>
    public long Lost => Interlocked.Read(ref _lost);

    /// <summary>The events, in order.</summary>
    public ChannelReader<GaugeEvent> Events => _queue.Reader;

    /// <summary>Listens no more; what still waits can be read to its end.</summary>
    public void Dispose()
    {
        _feed.Remove(this);
        _queue.Writer.TryComplete();
    }

    internal void Offer(GaugeEvent happened) => _queue.Writer.TryWrite(happened);
}

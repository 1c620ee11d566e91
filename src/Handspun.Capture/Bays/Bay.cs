using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Records;
using Microsoft.Extensions.Logging;

namespace Handspun.Capture.Bays;

/// <summary>One bay at work: it is given a job and a point once, and from then on every capture becomes a record, without a touch.</summary>
/// <remarks>Safe to use from several threads. What happens is told to the receivers in order, by <see cref="RunAsync"/>.</remarks>
public sealed class Bay
{
    private const int EventsWaiting = 8192;
    private static readonly TimeSpan TickEvery = TimeSpan.FromMilliseconds(100);

    private readonly Lock _lock = new();
    private readonly GaugeRoster _gauges;
    private readonly GaugeFeed _feed;
    private readonly TimeProvider _time;
    private readonly ILogger<Bay> _logger;
    private readonly BayOutbox _outbox;
    private readonly BayWork _work;

    /// <summary>A bay that is idle until it is given a point.</summary>
    public Bay(
        GaugeRoster gauges,
        GaugeFeed feed,
        GaugeClock clock,
        BaySettings settings,
        IEnumerable<ICaptureReceiver> receivers,
        TimeProvider time,
        ILogger<Bay> logger)
    {
        (_gauges, _feed, _time, _logger) = (gauges, feed, time, logger);
        _outbox = new BayOutbox([.. receivers], logger);
        _work = new BayWork(gauges, clock, settings, _outbox, time, logger);
    }

    /// <summary>The bay as it is now.</summary>
    public BaySnapshot View
    {
        get
        {
            lock (_lock)
            {
                return _work.View;
            }
        }
    }

    /// <summary>Gives the bay its point. A capture that runs for another point is ended first, and recorded.</summary>
    /// <exception cref="BayRefusalException">There is no such gauge.</exception>
    public void Assign(BayTask task)
    {
        if (_gauges.Find(task.Gauge) is null)
        {
            throw new BayRefusalException($"There is no gauge '{task.Gauge}': give one of {string.Join(", ", _gauges.All.Select(gauge => $"'{gauge.Setup.Name}'"))}.");
        }

        lock (_lock)
        {
            _work.Assign(task);
        }
    }

    /// <summary>Lets the point go. A capture that runs is ended first, and recorded.</summary>
    public void StandDown()
    {
        lock (_lock)
        {
            _work.StandDown();
        }
    }

    /// <summary>Starts a capture now, for a shaft so true that the gauge does not show it turning.</summary>
    /// <exception cref="BayRefusalException">The bay has no point, or a capture runs already.</exception>
    public void StartNow()
    {
        lock (_lock)
        {
            _work.StartNow();
        }
    }

    /// <summary>Ends the running capture now.</summary>
    /// <exception cref="BayRefusalException">No capture runs.</exception>
    public void FinishNow()
    {
        lock (_lock)
        {
            _work.FinishNow();
        }
    }

    /// <summary>Notes that the reference mark passes the pointer now; angles then count from it.</summary>
    /// <exception cref="BayRefusalException">No capture runs.</exception>
    public void MarkNow()
    {
        lock (_lock)
        {
            _work.MarkNow();
        }
    }

    /// <summary>Works until told to stop; a capture that runs then is recorded with what it has.</summary>
    public async Task RunAsync(CancellationToken stopping)
    {
        var telling = _outbox.RunAsync();
        using var subscription = _feed.Subscribe("bay", EventsWaiting);
        var ticking = TickAsync(stopping);
        try
        {
            await foreach (var happened in subscription.Events.ReadAllAsync(stopping))
            {
                lock (_lock)
                {
                    Hear(happened);
                }
            }
        }
        catch (OperationCanceledException)
        {
            // The station stops.
        }

        await ticking;
        if (subscription.Lost > 0)
        {
            BayLog.Behind(_logger, subscription.Lost);
        }

        lock (_lock)
        {
            _work.Finish(CaptureEnding.StationStopped);
        }

        _outbox.Complete();
        await telling;
    }

    private void Hear(GaugeEvent happened)
    {
        switch (happened)
        {
            case GaugeEvent.Heard heard:
                _work.Hear(heard);
                break;
            case GaugeEvent.Pulsed pulse:
                _work.Hear(pulse);
                break;
        }
    }

    private async Task TickAsync(CancellationToken stopping)
    {
        using var timer = new PeriodicTimer(TickEvery, _time);
        try
        {
            while (await timer.WaitForNextTickAsync(stopping))
            {
                lock (_lock)
                {
                    _work.Tick();
                }
            }
        }
        catch (OperationCanceledException)
        {
            // The station stops.
        }
    }
}

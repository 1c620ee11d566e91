using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Records;
using Microsoft.Extensions.Logging;

namespace Handspun.Capture.Bays;

/// <summary>One bay at work: each of its gauges is given a job and a point once, and from then on every capture becomes a record, without a touch.</summary>
/// <remarks>
/// Gauges work side by side, each at its own point; two of them may sit on the ends of one shaft. The point that was given last is
/// the one in front: what is asked or told without naming a gauge is about that one.
/// Safe to use from several threads. What happens is told to the receivers in order, by <see cref="RunAsync"/>.
/// </remarks>
public sealed class Bay
{
    private const int EventsWaiting = 8192;
    private static readonly TimeSpan TickEvery = TimeSpan.FromMilliseconds(100);

    private readonly Lock _lock = new();
    private readonly GaugeRoster _gauges;
    private readonly GaugeFeed _feed;
    private readonly GaugeClock _clock;
    private readonly BaySettings _settings;
    private readonly TimeProvider _time;
    private readonly ILogger<Bay> _logger;
    private readonly BayOutbox _outbox;
    private readonly GaugeWindows _windows;
    private readonly List<GaugePost> _posts = [];   // in the order in which they were given their points

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
        (_gauges, _feed, _clock, _settings, _time, _logger) = (gauges, feed, clock, settings, time, logger);
        _outbox = new BayOutbox([.. receivers], logger);
        _windows = new GaugeWindows(settings.Trace);
    }

    /// <summary>What the bay measures, the point that was given first at the beginning.</summary>
    public IReadOnlyList<BayTask> Tasks
    {
        get
        {
            lock (_lock)
            {
                return [.. _posts.Select(post => post.Task)];
            }
        }
    }

    /// <summary>One gauge's point as it is now; of the point in front where no gauge is named.</summary>
    public BaySnapshot View(GaugeName? gauge = null)
    {
        lock (_lock)
        {
            return Find(gauge)?.View ?? BaySnapshot.Idle;
        }
    }

    /// <summary>Gives a gauge its point. A capture that runs for another point of it is ended first, and recorded; another gauge lets the same point go.</summary>
    /// <exception cref="BayRefusalException">There is no such gauge.</exception>
    public void Assign(BayTask task)
    {
        if (_gauges.Find(task.Gauge) is not { } gauge)
        {
            throw new BayRefusalException($"There is no gauge '{task.Gauge}': give one of {string.Join(", ", _gauges.All.Select(gauge => $"'{gauge.Setup.Name}'"))}.");
        }

        lock (_lock)
        {
            var comesFromAnother = Of(task.Gauge) is { Task: var before } && (before.Job, before.Point) != (task.Job, task.Point);
            foreach (var post in _posts.Where(post => post.Task.Gauge == task.Gauge || (post.Task.Job == task.Job && post.Task.Point == task.Point)).ToList())
            {
                StandDown(post);
            }

            var given = new GaugePost(task, gauge, _windows.Of(task.Gauge), _clock, _settings, _outbox, _time, _logger);
            _posts.Add(given);
            given.Begin(comesFromAnother);
        }
    }

    /// <summary>Says anew what a point of the bay is: its limit or its setup has changed. It holds from the next capture on; one that runs under another setup is ended first.</summary>
    /// <param name="task">The same point of the same job, with the same gauge.</param>
    public void Renew(BayTask task)
    {
        lock (_lock)
        {
            Of(task.Gauge)?.Renew(task);
        }
    }

    /// <summary>Lets a gauge's point go; every point where no gauge is named. A capture that runs is ended first, and recorded.</summary>
    public void StandDown(GaugeName? gauge = null)
    {
        lock (_lock)
        {
            foreach (var post in _posts.Where(post => gauge is null || post.Task.Gauge == gauge).ToList())
            {
                StandDown(post);
            }
        }
    }

    /// <summary>Starts a capture now, for a shaft so true that the gauge does not show it turning.</summary>
    /// <exception cref="BayRefusalException">The gauge has no point, or its capture runs already.</exception>
    public void StartNow(GaugeName? gauge = null)
    {
        lock (_lock)
        {
            (Find(gauge) ?? throw new BayRefusalException("The bay has no point to measure: choose a job and a point first.")).StartNow();
        }
    }

    /// <summary>Ends the running capture now.</summary>
    /// <exception cref="BayRefusalException">No capture runs.</exception>
    public void FinishNow(GaugeName? gauge = null)
    {
        lock (_lock)
        {
            (Find(gauge) ?? throw NothingRuns(null)).FinishNow();
        }
    }

    /// <summary>Notes that the reference mark passes the pointer now, in every capture that runs: what turns together counts its angles from the same moment.</summary>
    /// <exception cref="BayRefusalException">No capture runs, or none of a shaft that turns.</exception>
    public void MarkNow()
    {
        lock (_lock)
        {
            var running = _posts.Where(post => post.IsRunning).ToList();
            if (running.Count == 0)
            {
                throw NothingRuns(Find(null)?.Task);
            }

            var turning = running.FindAll(post => post.Task.Method.TakesMarks);
            if (turning.Count == 0)
            {
                throw new BayRefusalException("A mark says where a turn begins, and nothing turns here: go on without it.");
            }

            turning.ForEach(post => post.MarkNow());
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
            _posts.ForEach(post => post.Finish(CaptureEnding.StationStopped));
        }

        _outbox.Complete();
        await telling;
    }

    private void Hear(GaugeEvent happened)
    {
        switch (happened)
        {
            case GaugeEvent.Heard heard:
                _windows.Of(heard.Gauge).Add(heard.Readings);
                Of(heard.Gauge)?.Hear(heard.Readings);
                break;
            case GaugeEvent.Pulsed pulse:
                _windows.Of(pulse.Gauge).AddPulse(pulse.At);
                Of(pulse.Gauge)?.Hear(pulse.At);
                break;
        }
    }

    private GaugePost? Find(GaugeName? gauge) => gauge is { } name ? Of(name) : _posts.LastOrDefault();

    private GaugePost? Of(GaugeName gauge) => _posts.Find(post => post.Task.Gauge == gauge);

    private void StandDown(GaugePost post)
    {
        post.StandDown();
        _posts.Remove(post);
    }

    internal static BayRefusalException NothingRuns(BayTask? task) => new($"No capture is running: {task?.Method.Words.NotRunning ?? "choose a job and a point first"}.");

    private async Task TickAsync(CancellationToken stopping)
    {
        using var timer = new PeriodicTimer(TickEvery, _time);
        try
        {
            while (await timer.WaitForNextTickAsync(stopping))
            {
                lock (_lock)
                {
                    var running = _posts.Count(post => post.IsRunning);
                    _posts.ForEach(post => post.Tick(running));
                }
            }
        }
        catch (OperationCanceledException)
        {
            // The station stops.
        }
    }
}

using System.Globalization;
using Handspun.Capture.Finishing;
using Handspun.Capture.Progress;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Records;
using Handspun.Metrology.Motion;
using Handspun.Metrology.Quantities;
using Microsoft.Extensions.Logging;

namespace Handspun.Capture.Bays;

/// <summary>One bay at work: it is given a job and a point once, and from then on every spin of the shaft becomes a record, without a touch.</summary>
/// <remarks>Safe to use from several threads. What happens is told to the receivers in order, by <see cref="RunAsync"/>.</remarks>
public sealed class Bay(
    GaugeRoster gauges,
    GaugeFeed feed,
    GaugeClock clock,
    BaySettings settings,
    IEnumerable<ICaptureReceiver> receivers,
    TimeProvider time,
    ILogger<Bay> logger)
{
    private const int EventsWaiting = 8192;
    private static readonly TimeSpan TickEvery = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan WaitingEvery = TimeSpan.FromSeconds(1);

    private readonly Lock _lock = new();
    private readonly Dictionary<GaugeName, ReadingWindow> _windows = [];
    private readonly BayOutbox _outbox = new([.. receivers], logger);
    private BayTask? _task;
    private string _next = "";
    private CaptureRun? _run;
    private CaptureProgress? _progress;
    private string? _afterwards;
    private bool _resting;
    private TimeSpan _lastLive;
    private TimeSpan _liveCost;
    private TimeSpan _lastTold;

    /// <summary>The bay as it is now.</summary>
    public BaySnapshot View
    {
        get
        {
            lock (_lock)
            {
                if (_task is null || !_windows.TryGetValue(_task.Gauge, out var window))
                {
                    return new(_task, _progress, [], []);
                }

                var (seconds, millimetres) = window.Since(TimeSpan.MinValue);
                return new(_task, _progress, seconds.ToArray(), millimetres.ToArray());
            }
        }
    }

    /// <summary>Gives the bay its point. A capture that runs for another point is ended first, and recorded.</summary>
    /// <exception cref="BayRefusalException">There is no such gauge.</exception>
    public void Assign(BayTask task)
    {
        if (gauges.Find(task.Gauge) is null)
        {
            throw new BayRefusalException($"There is no gauge '{task.Gauge}': give one of {string.Join(", ", gauges.All.Select(gauge => $"'{gauge.Setup.Name}'"))}.");
        }

        lock (_lock)
        {
            Finish(CaptureEnding.ByHand);
            StandDownLocked();
            _task = task;
            _afterwards = null;
            _resting = false;
            Await();
            BayLog.Assigned(logger, task.Job, task.Point, task.Gauge);
        }
    }

    /// <summary>Lets the point go. A capture that runs is ended first, and recorded.</summary>
    public void StandDown()
    {
        lock (_lock)
        {
            Finish(CaptureEnding.ByHand);
            StandDownLocked();
        }
    }

    /// <summary>Starts a capture now, for a shaft so true that the gauge does not show it turning.</summary>
    /// <exception cref="BayRefusalException">The bay has no point, or a capture runs already.</exception>
    public void StartNow()
    {
        lock (_lock)
        {
            if (_task is null)
            {
                throw new BayRefusalException("The bay has no point to measure: choose a job and a point first.");
            }

            if (_run is not null)
            {
                throw new BayRefusalException("A capture is running already: end it first.");
            }

            Start(clock.Now);
        }
    }

    /// <summary>Ends the running capture now.</summary>
    /// <exception cref="BayRefusalException">No capture runs.</exception>
    public void FinishNow()
    {
        lock (_lock)
        {
            if (_run is null)
            {
                throw new BayRefusalException("No capture is running: turn the shaft, or start one by hand.");
            }

            Finish(CaptureEnding.ByHand);
        }
    }

    /// <summary>Notes that the reference mark passes the pointer now; angles then count from it.</summary>
    /// <exception cref="BayRefusalException">No capture runs.</exception>
    public void MarkNow()
    {
        lock (_lock)
        {
            if (_run is not { } run)
            {
                throw new BayRefusalException("No capture is running: turn the shaft first, and say when the mark passes.");
            }

            var at = clock.Now;
            gauges.Find(run.Task.Gauge)!.Journal.AppendEvent(at, JournalEntry.Mark);
            run.Mark(at);
        }
    }

    /// <summary>Works until told to stop; a capture that runs then is recorded with what it has.</summary>
    public async Task RunAsync(CancellationToken stopping)
    {
        var telling = _outbox.RunAsync();
        using var subscription = feed.Subscribe("bay", EventsWaiting);
        var ticking = TickAsync(stopping);
        try
        {
            await foreach (var happened in subscription.Events.ReadAllAsync(stopping))
            {
                if (happened is GaugeEvent.Heard heard)
                {
                    Hear(heard);
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
            BayLog.Behind(logger, subscription.Lost);
        }

        lock (_lock)
        {
            Finish(CaptureEnding.StationStopped);
        }

        _outbox.Complete();
        await telling;
    }

    private async Task TickAsync(CancellationToken stopping)
    {
        using var timer = new PeriodicTimer(TickEvery, time);
        try
        {
            while (await timer.WaitForNextTickAsync(stopping))
            {
                lock (_lock)
                {
                    Tick();
                }
            }
        }
        catch (OperationCanceledException)
        {
            // The station stops.
        }
    }

    private void Hear(GaugeEvent.Heard heard)
    {
        lock (_lock)
        {
            if (!_windows.TryGetValue(heard.Gauge, out var window))
            {
                _windows[heard.Gauge] = window = new ReadingWindow(settings.Trace);
            }

            foreach (var reading in heard.Readings)
            {
                window.Add(reading);
                if (_run?.Task.Gauge == heard.Gauge)
                {
                    _run.Add(reading);
                }
            }

            if (_task?.Gauge == heard.Gauge && _run is null)
            {
                LookForStart(window);
            }
        }
    }

    private void LookForStart(ReadingWindow window)
    {
        var turning = IsTurning(window, window.Newest - (_resting ? settings.Rest : settings.StartWindow));
        if (_resting)
        {
            _resting = turning;
        }
        else if (turning)
        {
            Start(window.Newest - settings.StartWindow - settings.LeadIn);
            _run!.HasTurned = true;
        }
    }

    private void Tick()
    {
        if (_task is null)
        {
            return;
        }

        if (_run is null)
        {
            if (clock.Now - _lastTold >= WaitingEvery)
            {
                Tell(CapturePhase.Waiting);
            }

            return;
        }

        if (EndingNow(_run) is { } ending)
        {
            Finish(ending);
        }
    }

    private CaptureEnding? EndingNow(CaptureRun run)
    {
        var now = clock.Now;
        LookForGauge(run, now);
        if (run.GaugeGoneSince is null)
        {
            var window = _windows.GetValueOrDefault(run.Task.Gauge);
            run.IsTurning = window is not null && IsTurning(window, window.Newest - settings.StandStill);
            run.HasTurned |= run.IsTurning;
            LookLive(run, now);
        }

        return EndingRule.For(run, now, settings);
    }

    private void LookForGauge(CaptureRun run, TimeSpan now)
    {
        if (gauges.Find(run.Task.Gauge)?.State.Condition == GaugeCondition.Reading)
        {
            run.GaugeGoneSince = null;
        }
        else if (run.GaugeGoneSince is null)
        {
            run.GaugeGoneSince = now;
            run.GaugeGap = true;
            Tell(CapturePhase.Turning);
        }
    }

    // The fit costs more as the capture grows, so it is asked for less often then.
    private void LookLive(CaptureRun run, TimeSpan now)
    {
        var every = _liveCost / settings.LiveShare;
        if (now - _lastLive < (every > settings.LiveEvery ? every : settings.LiveEvery))
        {
            return;
        }

        var before = time.GetTimestamp();
        run.Measure();
        _liveCost = time.GetElapsedTime(before);
        _lastLive = now;
        Tell(CapturePhase.Turning);
    }

    private bool IsTurning(ReadingWindow window, TimeSpan since)
    {
        var (seconds, millimetres) = window.Since(since);
        var resolution = gauges.Find(_task!.Gauge)!.Setup.Profile.Accuracy.ResolutionMillimetres;
        return ShaftMotion.IsTurning(seconds.Span, millimetres.Span, Length.FromMillimetres(resolution));
    }

    private void Start(TimeSpan from)
    {
        var task = _task!;
        var gauge = gauges.Find(task.Gauge)!;
        _run = new CaptureRun(_next, task, gauge, from < TimeSpan.Zero ? TimeSpan.Zero : from, gauge.Journal.Hold());
        if (_windows.TryGetValue(task.Gauge, out var window))
        {
            var (seconds, millimetres) = window.Since(_run.From);
            _run.AddEarlier(seconds.Span, millimetres.Span);
        }

        (_lastLive, _liveCost) = (clock.Now, TimeSpan.Zero);
        _outbox.Started(new StartedCapture(_run.Id, task, _run.From));
        Tell(CapturePhase.Turning);
        BayLog.Started(logger, _run.Id, task.Job, task.Point, task.Gauge);
    }

    private void Finish(CaptureEnding ending)
    {
        if (_run is not { } run)
        {
            return;
        }

        var result = run.Measure();
        _resting = true;
        if (EndingRule.WasOnlyTouched(ending, result, settings))
        {
            BayLog.Touched(logger, run.Id);
            run.Drop();
            _outbox.Dropped(run.Id);
            _afterwards = CaptureSentence.Touched;
            (_run, _progress) = (null, null);
            Await();
            return;
        }

        var finished = run.Finish(ending, clock);
        BayLog.Finished(logger, run.Id, run.Task.Job, run.Task.Gauge, ending, result.Turns, result.Readings);
        Tell(CapturePhase.Ended);
        _run = null;
        _outbox.Finished(finished);
        _afterwards = CaptureSentence.Again;
        Await();
    }

    private void StandDownLocked()
    {
        if (_task is not null)
        {
            Tell(CapturePhase.StoodDown);
            (_task, _progress) = (null, null);
        }
    }

    private void Await()
    {
        _next = NewName();
        Tell(CapturePhase.Waiting);
    }

    private void Tell(CapturePhase phase)
    {
        _lastTold = clock.Now;
        var newest = _windows.GetValueOrDefault(_task!.Gauge)?.Newest ?? TimeSpan.Zero;
        _progress = _run is { } run ? run.Report(phase, newest) : new CaptureProgress
        {
            Capture = _next,
            Task = _task,
            Phase = phase,
            Now = newest,
            Sentence = phase == CapturePhase.Waiting ? _afterwards ?? CaptureSentence.Waiting : CaptureSentence.StoodDown,
        };
        _outbox.Progress(_progress);
    }

    // The time makes it readable and sortable; the tail keeps two stations that share a store apart.
    private string NewName() => string.Create(
        CultureInfo.InvariantCulture,
        $"{time.GetUtcNow():yyyyMMdd-HHmmss}-{Guid.NewGuid().ToString("N")[..6]}");
}

using System.Globalization;
using Handspun.Capture.Finishing;
using Handspun.Capture.Methods;
using Handspun.Capture.Progress;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Records;
using Microsoft.Extensions.Logging;

namespace Handspun.Capture.Bays;

/// <summary>What a bay does with each thing that happens: a reading, a tick, a button. It knows no threads; <see cref="Bay"/> lets in one at a time.</summary>
internal sealed class BayWork(GaugeRoster gauges, GaugeClock clock, BaySettings settings, BayOutbox outbox, TimeProvider time, ILogger logger)
{
    private static readonly TimeSpan WaitingEvery = TimeSpan.FromSeconds(1);

    private readonly GaugeWindows _windows = new(settings.Trace);
    private readonly LivePace _live = new(settings, time);
    private BayTask? _task;
    private string _next = "";
    private CaptureRun? _run;
    private CaptureProgress? _progress;
    private string? _afterwards;
    private bool _resting;
    private TimeSpan _lastTold;

    public BaySnapshot View
    {
        get
        {
            if (_task is null)
            {
                return new(_task, _progress, [], []);
            }

            var (seconds, millimetres) = _windows.Of(_task.Gauge).Since(TimeSpan.MinValue);
            return new(_task, _progress, seconds.ToArray(), millimetres.ToArray());
        }
    }

    public void Assign(BayTask task)
    {
        StandDown();
        (_task, _afterwards, _resting) = (task, null, false);
        Await();
        BayLog.Assigned(logger, task.Job, task.Point, task.Gauge);
    }

    public void StandDown()
    {
        Finish(CaptureEnding.ByHand);
        if (_task is not null)
        {
            Tell(CapturePhase.StoodDown);
            (_task, _progress) = (null, null);
        }
    }

    public void StartNow()
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

    public void FinishNow()
    {
        _ = Running();
        Finish(CaptureEnding.ByHand);
    }

    public void MarkNow()
    {
        var run = Running();
        run.Mark(gauges.Find(run.Task.Gauge)!.Note(JournalEntry.Mark));
    }

    public void Hear(GaugeEvent.Heard heard)
    {
        var window = _windows.Of(heard.Gauge);
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
            LookForStart(_task.Method.Pace, window);
        }
    }

    /// <summary>An index pulse; one that comes just before the capture is known to have started belongs to it too.</summary>
    public void Hear(GaugeEvent.Pulsed pulse)
    {
        _windows.Of(pulse.Gauge).AddPulse(pulse.At);
        if (_run?.Task.Gauge == pulse.Gauge)
        {
            _run.Pulse(pulse.At);
        }
    }

    public void Tick()
    {
        if (_run is { } run)
        {
            if (EndingNow(run) is { } ending)
            {
                Finish(ending);
            }
        }
        else if (_task is not null && clock.Now - _lastTold >= WaitingEvery)
        {
            Tell(CapturePhase.Waiting);
        }
    }

    public void Finish(CaptureEnding ending)
    {
        if (_run is not { } run)
        {
            return;
        }

        var finding = run.Measure();
        var words = run.Task.Method.Words;
        _resting = true;
        if (EndingRule.WasOnlyTouched(ending, finding))
        {
            BayLog.Touched(logger, run.Id);
            run.Drop();
            outbox.Dropped(run.Id);
            (_run, _progress, _afterwards) = (null, null, words.AfterTouch);
        }
        else
        {
            var finished = run.Finish(ending, clock);
            BayLog.Finished(logger, run.Id, run.Task.Job, run.Task.Gauge, ending, finding.Count, words.Counted, run.Readings);
            Tell(CapturePhase.Ended);
            outbox.Finished(finished);
            (_run, _afterwards) = (null, words.HowToRepeat);
        }

        Await();
    }

    private CaptureRun Running() => _run ?? throw new BayRefusalException($"No capture is running: {_task?.Method.Words.NotRunning ?? "choose a job and a point first"}.");

    private void LookForStart(CapturePace pace, ReadingWindow window)
    {
        var moves = Moves(_task!, window, _resting ? pace.Rest : pace.StartWindow);
        if (_resting)
        {
            _resting = moves;
        }
        else if (moves)
        {
            Start(window.Newest - pace.StartWindow - pace.LeadIn);
            _run!.HasMoved = true;
        }
    }

    private CaptureEnding? EndingNow(CaptureRun run)
    {
        var now = clock.Now;
        LookForGauge(run, now);
        if (run.GaugeGoneSince is null)
        {
            run.IsMoving = Moves(run.Task, _windows.Of(run.Task.Gauge), run.Task.Method.Pace.StandStill);
            run.HasMoved |= run.IsMoving;
            if (_live.Try(now, run.Look))
            {
                Tell(CapturePhase.Running);
            }
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
            Tell(CapturePhase.Running);
        }
    }

    private bool Moves(BayTask task, ReadingWindow window, TimeSpan stretch)
    {
        var (seconds, millimetres) = window.Since(window.Newest - stretch);
        return task.Method.Moves(seconds.Span, millimetres.Span, RecordMaking.TraitsOf(gauges.Find(task.Gauge)!.Setup.Profile));
    }

    private void Start(TimeSpan from)
    {
        var task = _task!;
        var gauge = gauges.Find(task.Gauge)!;
        _run = new CaptureRun(_next, task, gauge, from < TimeSpan.Zero ? TimeSpan.Zero : from, gauge.Journal.Hold());
        var window = _windows.Of(task.Gauge);
        var (seconds, millimetres) = window.Since(_run.From);
        _run.AddEarlier(seconds.Span, millimetres.Span);
        foreach (var pulse in window.PulsesSince(_run.From))
        {
            _run.Pulse(pulse);
        }

        _live.Restart(clock.Now);
        outbox.Started(new StartedCapture(_run.Id, task, _run.From));
        Tell(CapturePhase.Running);
        BayLog.Started(logger, _run.Id, task.Job, task.Point, task.Gauge);
    }

    private void Await()
    {
        if (_task is not null)
        {
            _next = NewName();
            Tell(CapturePhase.Waiting);
        }
    }

    private void Tell(CapturePhase phase)
    {
        _lastTold = clock.Now;
        var newest = _windows.Of(_task!.Gauge).Newest;
        _progress = _run?.Report(phase, newest) ?? new CaptureProgress
        {
            Capture = _next,
            Task = _task,
            Phase = phase,
            Now = newest,
            Live = _task.Method.Nothing.Live(new CaptureSoFar(_task.Wanted)),
            Sentence = phase == CapturePhase.Waiting ? _afterwards ?? _task.Method.Words.HowToStart : "The point was let go.",
        };
        outbox.Progress(_progress);
    }

    // The time makes it readable and sortable; the tail keeps two stations that share a store apart.
    private string NewName() => string.Create(
        CultureInfo.InvariantCulture,
        $"{time.GetUtcNow():yyyyMMdd-HHmmss}-{Guid.NewGuid().ToString("N")[..6]}");
}

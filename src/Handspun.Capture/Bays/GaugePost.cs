using Handspun.Capture.Finishing;
using Handspun.Capture.Methods;
using Handspun.Capture.Progress;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Records;
using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.Runout;
using Microsoft.Extensions.Logging;

namespace Handspun.Capture.Bays;

/// <summary>One gauge at its point: what is done with each thing that happens, a reading, a tick, a button. It knows no threads; <see cref="Bay"/> lets in one at a time.</summary>
internal sealed class GaugePost(BayTask task, GaugeListener gauge, ReadingWindow window, GaugeClock clock, BaySettings settings, BayOutbox outbox, TimeProvider time, ILogger logger)
{
    private static readonly TimeSpan WaitingEvery = TimeSpan.FromSeconds(1);

    private readonly LivePace _live = new(settings, time);
    private readonly GaugeTraits _traits = RecordMaking.TraitsOf(gauge.Setup.Profile);
    private string _next = "";
    private CaptureRun? _run;
    private CaptureProgress? _progress;
    private string? _afterwards;
    private bool _resting;
    private TimeSpan _lastTold;

    public BayTask Task => task;

    public bool IsRunning => _run is not null;

    public BaySnapshot View
    {
        get
        {
            var (seconds, millimetres) = window.Since(TimeSpan.MinValue);
            return new(task, _progress, seconds.ToArray(), millimetres.ToArray());
        }
    }

    /// <summary>Begins to wait.</summary>
    /// <param name="comesFromAnother">Whether the gauge was at another point just now: what still moves there, or on the way, is no capture of this one.</param>
    public void Begin(bool comesFromAnother)
    {
        _resting = comesFromAnother;
        Await();
        BayLog.Assigned(logger, task.Job, task.Point, task.Gauge);
    }

    /// <summary>Takes the same point with another limit or setup. What a running capture has seen belongs to the setup that it began with.</summary>
    public void Renew(BayTask renewed)
    {
        if ((task.Job, task.Point) != (renewed.Job, renewed.Point))
        {
            return;   // the gauge was given something else in the meantime
        }

        if (_run is { } run && !Equals(run.Task.Setup, renewed.Setup))
        {
            Finish(run.SoFar.IsOnlyTouch ? CaptureEnding.StoodStill : CaptureEnding.ByHand);
        }

        task = renewed;
        if (_run is null)
        {
            Await();
        }
    }

    public void StandDown()
    {
        Finish(CaptureEnding.ByHand);
        Tell(CapturePhase.StoodDown);
    }

    public void StartNow()
    {
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
        Running().Mark(gauge.Note(JournalEntry.Mark));
    }

    /// <summary>Readings, which are in the window already.</summary>
    public void Hear(IReadOnlyList<Reading> readings)
    {
        if (_run is not { } run)
        {
            LookForStart();
            return;
        }

        foreach (var reading in readings)
        {
            run.Add(reading);
        }
    }

    /// <summary>An index pulse; one that came just before the capture is known to have started is in the window, and belongs to it too.</summary>
    public void Hear(TimeSpan pulse) => _run?.Pulse(pulse);

    /// <summary>Looks after what only time brings.</summary>
    /// <param name="running">How many captures run in the bay: they share the time in which the result so far is worked out.</param>
    public void Tick(int running)
    {
        if (_run is { } run)
        {
            if (EndingNow(run, running) is { } ending)
            {
                Finish(ending);
            }
        }
        else if (clock.Now - _lastTold >= WaitingEvery)
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
        var words = task.Method.Words;
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
            BayLog.Finished(logger, run.Id, task.Job, task.Gauge, ending, finding.Count, words.Counted, run.Readings);
            Tell(CapturePhase.Ended);
            outbox.Finished(finished);
            (_run, _afterwards) = (null, words.HowToRepeat);
        }

        Await();
    }

    private CaptureRun Running() => _run ?? throw Bay.NothingRuns(task);

    private void LookForStart()
    {
        var pace = task.Method.Pace;
        var moves = Moves(_resting ? pace.Rest : pace.StartWindow);
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

    private CaptureEnding? EndingNow(CaptureRun run, int running)
    {
        var now = clock.Now;
        LookForGauge(run, now);
        if (run.GaugeGoneSince is null)
        {
            run.IsMoving = Moves(task.Method.Pace.StandStill);
            run.HasMoved |= run.IsMoving;
            if (_live.Try(now, running, run.Look))
            {
                Tell(CapturePhase.Running);
            }
        }

        return EndingRule.For(run, now, settings);
    }

    private void LookForGauge(CaptureRun run, TimeSpan now)
    {
        if (gauge.State.Condition == GaugeCondition.Reading)
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

    private bool Moves(TimeSpan stretch)
    {
        var (seconds, millimetres) = window.Since(window.Newest - stretch);
        return task.Method.Moves(seconds.Span, millimetres.Span, _traits);
    }

    private void Start(TimeSpan from)
    {
        _run = new CaptureRun(_next, task, gauge, from < TimeSpan.Zero ? TimeSpan.Zero : from, gauge.Journal.Hold());
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
        _next = RecordName.New(time);
        Tell(CapturePhase.Waiting);
    }

    private void Tell(CapturePhase phase)
    {
        _lastTold = clock.Now;
        var newest = window.Newest;
        var progress = _run?.Report(phase, newest) ?? new CaptureProgress
        {
            Capture = _next,
            Task = task,
            Phase = phase,
            Now = newest,
            Live = task.Method.Nothing.Live(new CaptureSoFar(task.Wanted)),
            Sentence = phase == CapturePhase.Waiting ? _afterwards ?? task.Method.Words.HowToStart : "The point was let go.",
        };
        _progress = progress with { Warnings = [.. progress.Warnings, .. GaugeDoubt.Warnings(progress.Task.LastCheck, GaugeWords.DayOf(time.GetLocalNow()))] };
        outbox.Progress(_progress);
    }
}

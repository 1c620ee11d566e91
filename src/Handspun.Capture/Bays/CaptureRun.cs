using Handspun.Capture.Finishing;
using Handspun.Capture.Progress;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Records;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Bays;

/// <summary>One capture while it runs: its readings so far and what they say.</summary>
internal sealed class CaptureRun(string id, BayTask task, GaugeListener gauge, TimeSpan from, IDisposable journalHold)
{
    private readonly List<double> _seconds = [];
    private readonly List<double> _millimetres = [];
    private readonly List<double> _marks = [];
    private readonly long _unreadableBefore = gauge.State.Unreadable;
    private RunoutResult? _result;
    private int _measured = -1;

    public string Id { get; } = id;

    public BayTask Task { get; } = task;

    public TimeSpan From { get; } = from;

    public TimeSpan Newest { get; private set; } = from;

    public int Readings => _seconds.Count;

    /// <summary>What the readings said when they were last looked at; null before.</summary>
    public RunoutResult? SoFar => _result;

    /// <summary>Whether the shaft was turning when it was last looked at.</summary>
    public bool IsTurning { get; set; }

    /// <summary>Whether the shaft has been seen to turn; a capture that was started by hand may begin before that.</summary>
    public bool HasTurned { get; set; }

    /// <summary>Since when the gauge is gone; null while it is there.</summary>
    public TimeSpan? GaugeGoneSince { get; set; }

    public bool GaugeGap { get; set; }

    private double ReadingsPerSecond => Readings < 2 || Newest <= From ? 0 : (Readings - 1) / (_seconds[^1] - _seconds[0]);

    public void Add(Reading reading)
    {
        _seconds.Add((reading.At - From).TotalSeconds);
        _millimetres.Add(reading.Millimetres);
        Newest = reading.At;
    }

    /// <summary>Adds readings that came before the capture was known to have started.</summary>
    public void AddEarlier(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres)
    {
        for (var i = 0; i < seconds.Length; i++)
        {
            _seconds.Add(seconds[i] - From.TotalSeconds);
            _millimetres.Add(millimetres[i]);
        }

        if (seconds.Length > 0)
        {
            Newest = TimeSpan.FromSeconds(seconds[^1]);
        }
    }

    /// <summary>The reference mark passes the pointer at this moment.</summary>
    public void Mark(TimeSpan at)
    {
        _marks.Add((at - From).TotalSeconds);
        _measured = -1;   // what was worked out before counts its angles from somewhere else
    }

    /// <summary>Works out what the readings say, unless nothing has come since the last time.</summary>
    public RunoutResult Measure()
    {
        if (_result is null || _measured != Readings)
        {
            _result = RunoutMethod.Measure(Capture(), RecordMaking.TraitsOf(gauge.Setup.Profile), new RunoutSettings { TurnsWanted = Task.TurnsWanted });
            _measured = Readings;
        }

        return _result;
    }

    /// <summary>How far the capture has come, by what was last worked out.</summary>
    public CaptureProgress Report(CapturePhase phase, TimeSpan newest) => new()
    {
        Capture = Id,
        Task = Task,
        Phase = phase,
        Started = From,
        Now = newest,
        Turns = SoFar?.Turns ?? 0,
        TurnsPerSecond = SoFar?.TurnsPerSecond ?? 0,
        Readings = Readings,
        ReadingsPerTurn = SoFar is { TurnsPerSecond: > 0 and var speed } ? ReadingsPerSecond / speed : 0,
        Tir = SoFar?.Tir,
        TirU95 = SoFar?.TirU95,
        Sentence = phase == CapturePhase.Ended ? CaptureSentence.Ended
            : GaugeGoneSince is not null ? CaptureSentence.GaugeGone
            : CaptureSentence.Turning(Task, SoFar, ReadingsPerSecond, _marks.Count),
    };

    /// <summary>Ends the capture. The journal is still held; whoever files the record lets it go.</summary>
    public FinishedCapture Finish(CaptureEnding ending, GaugeClock clock) => new()
    {
        Id = Id,
        Task = Task,
        Gauge = gauge.Setup,
        At = clock.WallTime(From),
        From = From,
        To = Newest,
        Ending = ending,
        Readings = Capture(),
        Result = Measure(),
        GaugeGap = GaugeGap,
        Unreadable = gauge.State.Unreadable - _unreadableBefore,
        JournalHold = journalHold,
    };

    /// <summary>Drops the capture: it was no more than a touch.</summary>
    public void Drop() => journalHold.Dispose();

    private RotationCapture Capture() => new() { Seconds = _seconds.ToArray(), Millimetres = _millimetres.ToArray(), MarkSeconds = _marks.ToArray() };
}

using Handspun.Capture.Finishing;
using Handspun.Capture.Methods;
using Handspun.Capture.Methods.Runout;
using Handspun.Capture.Progress;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Records;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Capture.Bays;

/// <summary>One capture while it runs: its readings so far and what they say.</summary>
internal sealed class CaptureRun(string id, BayTask task, GaugeListener gauge, TimeSpan from, IDisposable journalHold)
{
    private readonly List<double> _seconds = [];
    private readonly List<double> _millimetres = [];
    private readonly List<double> _marks = [];
    private readonly List<TimeSpan> _pulses = [];
    private readonly long _unreadableBefore = gauge.State.Unreadable;
    private readonly Func<RotationCapture, CaptureFinding> _look = task.Method.Follow(RecordMaking.TraitsOf(gauge.Setup.Profile, task.LastCheck, task.Setup), task.Wish);
    private int _measured = -1;
    private (double Lowest, double Highest) _reach = (double.PositiveInfinity, double.NegativeInfinity);

    public string Id { get; } = id;

    public BayTask Task { get; } = task;

    public TimeSpan From { get; } = from;

    public TimeSpan Newest { get; private set; } = from;

    public int Readings => _seconds.Count;

    /// <summary>What the readings said when they were last looked at.</summary>
    public CaptureFinding SoFar { get; private set; } = task.Method.Nothing;

    /// <summary>Whether something moved when it was last looked at.</summary>
    public bool IsMoving { get; set; }

    /// <summary>Whether something has been seen to move; a capture that was started by hand may begin before that.</summary>
    public bool HasMoved { get; set; }

    /// <summary>Since when the gauge is gone; null while it is there.</summary>
    public TimeSpan? GaugeGoneSince { get; set; }

    public bool GaugeGap { get; set; }

    private double ReadingsPerSecond => Readings < 2 || Newest <= From ? 0 : (Readings - 1) / (_seconds[^1] - _seconds[0]);

    public void Add(Reading reading)
    {
        Add((reading.At - From).TotalSeconds, reading.Millimetres);
        Newest = reading.At;
    }

    /// <summary>Adds readings that came before the capture was known to have started.</summary>
    public void AddEarlier(ReadOnlySpan<double> seconds, ReadOnlySpan<double> millimetres)
    {
        for (var i = 0; i < seconds.Length; i++)
        {
            Add((TimeSpan.FromTicks((long)Math.Round(seconds[i] * TimeSpan.TicksPerSecond)) - From).TotalSeconds, millimetres[i]);   // to the last bit as a replay has it
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

    /// <summary>The index passed at this moment.</summary>
    public void Pulse(TimeSpan at)
    {
        _pulses.Add(at);
        _measured = -1;
    }

    /// <summary>Looks at what the readings say so far, unless nothing has come since the last time.</summary>
    public void Look()
    {
        if (_measured != Readings)
        {
            SoFar = _look(Capture());
            _measured = Readings;
        }
    }

    /// <summary>Works out what the readings say, from all of them at once.</summary>
    public CaptureFinding Measure()
    {
        SoFar = Task.Method.Measure(Capture(), RecordMaking.TraitsOf(gauge.Setup.Profile, Task.LastCheck, Task.Setup), Task.Wish);
        _measured = Readings;
        return SoFar;
    }

    /// <summary>How far the capture has come, by what was last worked out.</summary>
    public CaptureProgress Report(CapturePhase phase, TimeSpan newest)
    {
        var (value, u95) = SoFar.Headline;
        var soFar = new CaptureSoFar(Task.Wanted, ReadingsPerSecond, _marks.Count);
        return new()
        {
            Capture = Id,
            Task = Task,
            Phase = phase,
            Started = From,
            Now = newest,
            Readings = Readings,
            Count = SoFar.Count,
            Value = value,
            ValueU95 = u95,
            Warnings = [.. SoFar.LiveWarnings(soFar), .. IsTravelUsedUp ? [RecordWarning.TravelUsedUp] : Array.Empty<RecordWarning>()],
            Live = SoFar.Live(soFar),
            Sentence = phase == CapturePhase.Ended ? Task.Method.Words.Enough
                : GaugeGoneSince is not null ? Task.Method.Words.GaugeGone
                : SoFar.Advice(soFar),
        };
    }

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
        Finding = SoFar,
        GaugeGap = GaugeGap,
        Unreadable = gauge.State.Unreadable - _unreadableBefore,
        JournalHold = journalHold,
    };

    /// <summary>Drops the capture: it was no more than a touch.</summary>
    public void Drop() => journalHold.Dispose();

    private bool IsTravelUsedUp => Readings > 0
        && TravelRule.IsUsedUp(Length.FromMillimetres(_reach.Lowest), Length.FromMillimetres(_reach.Highest), gauge.Setup.Profile);

    private void Add(double seconds, double millimetres)
    {
        _seconds.Add(seconds);
        _millimetres.Add(millimetres);
        _reach = (Math.Min(_reach.Lowest, millimetres), Math.Max(_reach.Highest, millimetres));
    }

    // The record's journal ends with its last reading, and so do its pulses.
    private RotationCapture Capture() => IndicatorStand.Readings(AsShown(), Task.Setup);

    private RotationCapture AsShown() => new()
    {
        Seconds = ReplayedCapture.TimesOf([.. _seconds], gauge.Setup.Profile.SendsEvery),
        Millimetres = _millimetres.ToArray(),
        IndexSeconds = _pulses.Where(at => at <= Newest).Select(at => (at - From).TotalSeconds).ToArray(),
        TurnsPerIndex = gauge.Setup.Profile.Index?.Turns ?? 1,
        MarkSeconds = _marks.ToArray(),
    };
}

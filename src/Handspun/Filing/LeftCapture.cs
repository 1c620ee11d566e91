using Handspun.Capture.Bays;
using Handspun.Capture.Finishing;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;

namespace Handspun.Filing;

/// <summary>A capture that was running when the station was killed, made whole from its journal.</summary>
internal sealed class LeftCapture(CaptureNote note, string journals)
{
    /// <summary>The capture's name.</summary>
    public string Capture => note.Capture;

    /// <summary>The running journal that was left behind, oldest file first.</summary>
    public IReadOnlyList<string> Segments { get; } = RollingJournal.SegmentsOf(journals, note.Zero);

    /// <summary>The capture as it would have been handed on if the station had been stopped with notice; null where its journal holds no reading of it.</summary>
    /// <param name="journal">Where the capture's own journal is written.</param>
    public FinishedCapture? Reconstruct(string journal)
    {
        if (Segments.Count == 0)
        {
            return null;
        }

        var from = TimeSpan.FromSeconds(note.FromSeconds);
        var head = JournalReader.HeadOf(Segments[0]);
        var profile = ProfileReader.Read(head.Profile, head.ProfileText);
        new JournalCut { Segments = Segments, From = from, Ending = RecordCodes.Of(CaptureEnding.StationStopped), Header = head }.WriteTo(journal);
        var replay = JournalReplay.Read(journal);
        var readings = replay.Readings;
        if (readings.Count == 0 || !GaugePort.TryParse(head.Port, out var port))
        {
            return null;
        }

        var task = TaskOf(note);
        var capture = ReplayedCapture.Of(replay, from, task.Setup);
        return new FinishedCapture
        {
            Id = note.Capture,
            Task = task,
            Gauge = new GaugeSetup(task.Gauge, profile, port!),
            At = note.Zero + from,
            From = from,
            To = readings[^1].At,
            Ending = CaptureEnding.StationStopped,
            Readings = capture,
            Finding = task.Method.Measure(capture, RecordMaking.TraitsOf(profile, task.LastCheck, task.Setup), task.Wish),
        };
    }

    private static BayTask TaskOf(CaptureNote note) => new()
    {
        Job = note.Job,
        JobTitle = "",
        Bike = "",
        Point = note.Point,
        PointTitle = PointCatalogue.Find(note.Point)?.Title ?? note.Point,
        Kind = note.Kind,
        Gauge = GaugeName.Parse(note.Gauge),
        Limit = note.Limit,
        Setup = note.Setup,
        LastCheck = note.LastCheck,
        Wanted = note.Wanted,
    };
}

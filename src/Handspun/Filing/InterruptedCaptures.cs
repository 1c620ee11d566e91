using System.Text.Json;
using Handspun.Capture.Finishing;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.ShopGauges;
using Handspun.Station;

namespace Handspun.Filing;

/// <summary>Remembers on the disk which captures are running, so that one that a crash cut short is found again.</summary>
internal sealed class InterruptedCaptures(StationOptions options, GaugeClock clock)
{
    private const string Ending = ".running.json";

    // What is left is looked up once, before this run of the station notes any of its own.
    private readonly string[] _left = Directory.GetFiles(options.Data.Records, "*" + Ending);

    /// <summary>Notes that a capture runs.</summary>
    public void Note(StartedCapture capture)
    {
        var note = new CaptureNote
        {
            Capture = capture.Id,
            Job = capture.Task.Job,
            Point = capture.Task.Point,
            Gauge = capture.Task.Gauge.ToString(),
            Limit = capture.Task.Limit,
            Kind = capture.Task.Kind,
            Setup = capture.Task.Setup,
            LastCheck = capture.Task.LastCheck,
            Wanted = capture.Task.Wanted,
            Zero = clock.StartedAt,
            FromSeconds = capture.From.TotalSeconds,
        };
        File.WriteAllText(PathOf(capture.Id), JsonSerializer.Serialize(note));
    }

    /// <summary>Strikes a note: the capture is filed, or was none.</summary>
    public void Strike(string capture) => File.Delete(PathOf(capture));

    /// <summary>The captures that an earlier run of the station left unfinished.</summary>
    public IEnumerable<LeftCapture> Left() => _left
        .Select(path => JsonSerializer.Deserialize<CaptureNote>(File.ReadAllText(path)))
        .OfType<CaptureNote>()
        .Select(note => new LeftCapture(note, Path.Combine(options.Data.Journals, note.Gauge)));

    private string PathOf(string capture) => Path.Combine(options.Data.Records, capture + Ending);
}

/// <summary>What is noted of a running capture; the rest stands at the head of its gauge's running journal.</summary>
internal sealed record CaptureNote
{
    public required string Capture { get; init; }

    public required string Job { get; init; }

    public required string Point { get; init; }

    public required string Gauge { get; init; }

    public Limit? Limit { get; init; }

    public PointKind Kind { get; init; }

    public PointSetup? Setup { get; init; }

    public LastCheck? LastCheck { get; init; }

    public double Wanted { get; init; }

    public DateTimeOffset Zero { get; init; }

    public double FromSeconds { get; init; }
}

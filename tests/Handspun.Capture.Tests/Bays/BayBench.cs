using System.IO.Pipelines;
using System.Text;
using Handspun.Capture.Bays;
using Handspun.Capture.Finishing;
using Handspun.Capture.Progress;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Points;
using Handspun.Jobs.ShopGauges;
using Handspun.Metrology.Quantities;
using Handspun.Simulation;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Capture.Tests.Bays;

/// <summary>A bay with a real gauge listener on a scripted link, in a time that only the test moves.</summary>
internal sealed class BayBench : IAsyncDisposable
{
    private const double Hertz = 50;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly string _folder = Directory.CreateTempSubdirectory("bay-").FullName;
    private readonly CancellationTokenSource _stopping = new();
    private readonly FakeTimeProvider _time = new(new DateTimeOffset(2026, 3, 14, 9, 0, 0, TimeSpan.Zero));
    private readonly ScriptedOpener _opener = new();
    private readonly GaugeRoster _roster;
    private readonly Task _running;
    private long _sent;

    public const string UsualProfile = "[frame]\nkind = \"text-line\"\n[value]\nresolution_mm = 0.001\nerror_limit_mm = 0.002\n";

    /// <param name="profile">The gauge's profile.</param>
    /// <param name="more">Further gauges, which stay silent.</param>
    public BayBench(string profile = UsualProfile, params IEnumerable<string> more)
    {
        var clock = new GaugeClock(_time);
        var feed = new GaugeFeed();
        GaugeSetup Setup(string name) => new(GaugeName.Parse(name), ProfileReader.Read("bench", profile), new GaugePort.Serial("/dev/" + name));
        _roster = new GaugeRoster([Setup("pinion"), .. more.Select(Setup)], _folder, _opener, clock, feed, _time, NullLogger<GaugeListener>.Instance);
        Bay = new Bay(_roster, feed, clock, new BaySettings(), [Seen], _time, NullLogger<Bay>.Instance);
        _running = Task.WhenAll(Bay.RunAsync(_stopping.Token), _roster.RunAsync(_stopping.Token));
    }

    public static BayTask Point { get; } = new()
    {
        Job = "2026-0007",
        JobTitle = "Bench",
        Bike = "1974 Aldermoor Heron 650",
        Point = "pinion-runout",
        PointTitle = "Pinion shaft runout",
        Kind = PointKind.Runout,
        Wanted = 3,
        Gauge = GaugeName.Parse("pinion"),
        Limit = new Limit { UpperMillimetres = Length.FromInches(0.005).Millimetres, Source = "test", ConfirmedBy = "test" },
        LastCheck = Checked("good"),
    };

    /// <summary>A check of the gauge on the first day of the month, with an error of 1 µm, due at the end of that month.</summary>
    public static LastCheck Checked(string found, double errorMillimetres = 0.001) => new()
    {
        At = new DateTimeOffset(2026, 3, 1, 9, 0, 0, TimeSpan.Zero),
        DueOn = new DateOnly(2026, 3, 31),
        By = "test",
        Against = "block",
        ErrorMillimetres = errorMillimetres,
        ErrorU95Millimetres = 0.001,
        Found = found,
    };

    public Bay Bay { get; }

    public SeenCaptures Seen { get; } = new();

    public GaugeRoster Gauges => _roster;

    public GaugeState Gauge => _roster.Find(Point.Gauge)!.State;

    /// <summary>The journal of a capture that has ended, cut out as for its record, and decoded again.</summary>
    public JournalReplay Replay(FinishedCapture capture)
    {
        var gauge = _roster.Find(Point.Gauge)!;
        var journal = Path.Combine(_folder, capture.Id + ".jsonl.gz");
        new JournalCut { Segments = gauge.Journal.Segments(), From = capture.From, To = capture.To, Ending = "enough", Header = gauge.Journal.Header }.WriteTo(journal);
        return JournalReplay.Read(journal);
    }

    /// <summary>Waits until the link is open and one reading has come through.</summary>
    public async Task ConnectAsync()
    {
        await UntilAsync(() => _opener.Link is not null);
        await SendAsync("+0.000");   // right after the opening: taken for the tail of a frame
        await SendAsync("+0.000");
        await UntilAsync(() => Gauge.Condition == GaugeCondition.Reading);
    }

    /// <summary>Sends what an indicator shows of a shaft that is turned like this, at its pace.</summary>
    public async Task TurnAsync(ShaftShape shape, HandTurn hand, double standBefore = 1.5, double standAfter = 0, Action<double>? at = null)
    {
        var noise = new Random(3);
        var indicator = new Indicator { NoiseMicrometres = 0.5 };
        for (var t = -standBefore; t < hand.Seconds + standAfter; t += 1 / Hertz)
        {
            at?.Invoke(t);
            await SendAsync(IndicatorLine.Of(indicator.Show(shape.HeightAt(hand.TurnsAt(t) * 360), noise), inch: false));
        }
    }

    /// <summary>Sends what an indicator shows of something that moves like this, at its pace; before and after, it rests where it begins and ends.</summary>
    public async Task MoveAsync(Func<double, double> millimetresAt, double seconds, double standBefore = 1.5, double standAfter = 0)
    {
        var noise = new Random(5);
        var indicator = new Indicator { NoiseMicrometres = 0.5 };
        for (var t = -standBefore; t < seconds + standAfter; t += 1 / Hertz)
        {
            await SendAsync(IndicatorLine.Of(indicator.Show(millimetresAt(Math.Clamp(t, 0, seconds)), noise), inch: false));
        }
    }

    /// <summary>Moves time on by one reading and sends a line.</summary>
    public async Task SendAsync(string line)
    {
        _time.Advance(TimeSpan.FromSeconds(1 / Hertz));
        await _opener.Link!.WriteAsync(Encoding.ASCII.GetBytes(line + "\r\n"));
        _sent++;
        await UntilAsync(() => Gauge.Readings + Gauge.Unreadable + 1 >= _sent);   // one frame is passed over
    }

    /// <summary>Lets time pass without a reading.</summary>
    public async Task PassAsync(TimeSpan span)
    {
        for (var passed = TimeSpan.Zero; passed < span; passed += TimeSpan.FromMilliseconds(100))
        {
            _time.Advance(TimeSpan.FromMilliseconds(100));
            await Task.Delay(TimeSpan.FromMilliseconds(1), TimeProvider.System);   // lets what waits for the time go on
        }
    }

    /// <summary>Pulls the cable; the next opening finds it plugged in again.</summary>
    public async Task UnplugAsync()
    {
        await _opener.Link!.CompleteAsync();
        await UntilAsync(() => Gauge.Condition == GaugeCondition.Lost);
        _opener.Link = null;
        _sent = Gauge.Readings + Gauge.Unreadable;
    }

    public static async Task UntilAsync(Func<bool> condition)
    {
        using var patience = new CancellationTokenSource(Patience);
        while (!condition())
        {
            await Task.Delay(TimeSpan.FromMilliseconds(1), TimeProvider.System, patience.Token);
        }
    }

    /// <summary>Stops the station's work and waits for it.</summary>
    public async Task StopAsync()
    {
        await _stopping.CancelAsync();
        await _running;
    }

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        _roster.Dispose();
        _stopping.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private sealed class ScriptedOpener : ILinkOpener
    {
        public PipeWriter? Link { get; set; }

        public Task<IGaugeLink> OpenAsync(GaugePort port, LinkSettings settings, CancellationToken cancellationToken)
        {
            var pipe = new Pipe();
            Link = port.ToString() == "/dev/pinion" ? pipe.Writer : Link;
            return Task.FromResult<IGaugeLink>(new ScriptedLink(pipe.Reader));
        }
    }

    private sealed class ScriptedLink(PipeReader input) : IGaugeLink
    {
        public PipeReader Input => input;

        public ValueTask DisposeAsync() => default;
    }
}

/// <summary>Keeps all that a bay told.</summary>
internal sealed class SeenCaptures : ICaptureReceiver
{
    private readonly List<CaptureProgress> _progress = [];
    private readonly List<FinishedCapture> _finished = [];
    private readonly List<string> _dropped = [];

    public string Name => "the test";

    public IReadOnlyList<CaptureProgress> Progress => Copy(_progress);

    public IReadOnlyList<FinishedCapture> Finished => Copy(_finished);

    public IReadOnlyList<string> Dropped => Copy(_dropped);

    public ValueTask ProgressAsync(CaptureProgress progress, CancellationToken cancellationToken) => Add(_progress, progress);

    public ValueTask StartedAsync(StartedCapture capture, CancellationToken cancellationToken) => default;

    public ValueTask DroppedAsync(string capture, CancellationToken cancellationToken) => Add(_dropped, capture);

    public ValueTask FinishedAsync(FinishedCapture capture, CancellationToken cancellationToken) => Add(_finished, capture);

    private static ValueTask Add<T>(List<T> list, T item)
    {
        lock (list)
        {
            list.Add(item);
        }

        return default;
    }

    private static List<T> Copy<T>(List<T> list)
    {
        lock (list)
        {
            return [.. list];
        }
    }
}

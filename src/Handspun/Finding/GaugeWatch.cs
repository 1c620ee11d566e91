using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Records;
using Handspun.Station;
using Microsoft.Extensions.Logging.Abstractions;

namespace Handspun.Finding;

/// <summary>Listens to gauges without a station, for a look at what they send; the journals go when it is over, unless one is kept.</summary>
internal sealed class GaugeWatch : IDisposable
{
    private const int EventsWaiting = 4096;

    private readonly string _folder = Directory.CreateTempSubdirectory("handspun-watch-").FullName;
    private readonly GaugeFeed _feed = new();
    private readonly GaugeSubscription _subscription;
    private readonly GaugeRoster _roster;
    private readonly TimeProvider _time;
    private readonly Dictionary<GaugeName, double> _newest = [];

    /// <summary>A watch over gauges that has not started.</summary>
    public GaugeWatch(IReadOnlyList<GaugeSetup> gauges, TimeProvider time)
    {
        _time = time;
        Clock = new GaugeClock(time);
        _subscription = _feed.Subscribe("watch", EventsWaiting);
        _roster = new GaugeRoster(gauges, _folder, new LinkOpener(time), Clock, _feed, time, NullLogger<GaugeListener>.Instance);
    }

    /// <summary>The clock on which the gauges are heard.</summary>
    public GaugeClock Clock { get; }

    /// <summary>Listens until it is told to stop, and shows how the gauges are, again and again.</summary>
    /// <param name="every">How often.</param>
    /// <param name="show">Gets each gauge's state and its newest reading in millimetres, null before there is one.</param>
    /// <param name="stopping">Ends it.</param>
    public async Task RunAsync(TimeSpan every, Action<IReadOnlyList<(GaugeState State, double? Millimetres)>> show, CancellationToken stopping)
    {
        var listening = _roster.RunAsync(stopping);
        using var timer = new PeriodicTimer(every, _time);
        try
        {
            while (await timer.WaitForNextTickAsync(stopping))
            {
                Show(show);
            }
        }
        catch (OperationCanceledException)
        {
            // It was told to stop.
        }

        Show(show);
        await listening;
    }

    /// <summary>Keeps all that was heard of the only gauge as a journal; packed where the file's name ends in <c>.gz</c>.</summary>
    /// <exception cref="StationTroubleException">The file cannot be written.</exception>
    public void Record(string file)
    {
        var gauge = _roster.All.Single();
        try
        {
            new JournalCut
            {
                Segments = gauge.Journal.Segments(),
                Header = gauge.Journal.Header,
                From = TimeSpan.Zero,
                Ending = RecordCodes.Of(CaptureEnding.ByHand),
            }.WriteTo(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JournalException)
        {
            throw new StationTroubleException($"{file} cannot be written ({e.Message}): give another file with --record.");
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _subscription.Dispose();
        _roster.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private void Show(Action<IReadOnlyList<(GaugeState, double?)>> show)
    {
        while (_subscription.Events.TryRead(out var happened))
        {
            if (happened is GaugeEvent.Heard heard)
            {
                _newest[heard.Gauge] = heard.Readings[^1].Millimetres;
            }
        }

        show([.. _roster.All.Select(gauge => (gauge.State, _newest.TryGetValue(gauge.Setup.Name, out var newest) ? newest : (double?)null))]);
    }
}

using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Links;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;
using Handspun.Gauges.Tests.Journal;
using Handspun.Gauges.Tests.Links;
using Microsoft.Extensions.Logging.Abstractions;

namespace Handspun.Gauges.Tests.Listening;

/// <summary>Sixteen gauges at once, half of them on pseudo-terminals and half behind sockets, at the pace of real ones.</summary>
[Collection(Alone.Name)]
public sealed class ManyGaugesTests : IAsyncDisposable
{
    private const int Gauges = 16;
    private const int ReadingsEach = 300;
    private const int EventsWaiting = 8192;   // as many as the bay lets wait
    private static readonly TimeSpan Every = TimeSpan.FromMilliseconds(10);
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(300);   // so that no first line is taken for the tail of one

    private readonly TestFolder _folder = new();
    private readonly List<PairedTerminals> _pairs = [];
    private readonly List<TcpListener> _adapters = [];
    private readonly List<Stream> _outlets = [];

    [Fact]
    public async Task Gauges_AtAHundredReadingsASecond_LoseNone_LiveOrInTheirJournals()
    {
        var clock = new GaugeClock(TimeProvider.System);
        var feed = new GaugeFeed();
        using var subscription = feed.Subscribe("test", EventsWaiting);
        using var roster = new GaugeRoster(await SetUpAsync(), _folder.Path, new LinkOpener(TimeProvider.System), clock, feed, TimeProvider.System, NullLogger<GaugeListener>.Instance);
        using var stopping = new CancellationTokenSource();
        var listening = roster.RunAsync(stopping.Token);
        foreach (var adapter in _adapters)
        {
            _outlets.Add((await adapter.AcceptTcpClientAsync()).GetStream());
        }

        await Until.TrueAsync(() => roster.All.All(gauge => gauge.State.Condition == GaugeCondition.Silent));
        await Task.Delay(Quiet, TimeProvider.System);
        await SpeakAsync();
        await Until.TrueAsync(() => roster.All.Sum(gauge => gauge.State.Readings + gauge.State.Unreadable) >= Gauges * ReadingsEach);
        await stopping.CancelAsync();
        await listening.WaitAsync(Until.Cap);
        subscription.Dispose();

        var live = new Dictionary<GaugeName, List<Reading>>();
        await foreach (var heard in subscription.Events.ReadAllAsync().Where(happened => happened is GaugeEvent.Heard).Cast<GaugeEvent.Heard>())
        {
            live[heard.Gauge] = [.. live.GetValueOrDefault(heard.Gauge, []), .. heard.Readings];
        }

        var spoken = Enumerable.Range(1, ReadingsEach).ToList();
        Assert.Equal(0, subscription.Lost);
        Assert.Equal(Gauges, live.Count);
        Assert.All(live.Values, readings => Assert.Equal(spoken, readings.Select(reading => (int)Math.Round(reading.Millimetres * 1000))));
        Assert.All(roster.All, gauge => Assert.Equal(live[gauge.Setup.Name], JournalReplay.Read(Assert.Single(gauge.Journal.Segments())).Readings));
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var outlet in _outlets)
        {
            await outlet.DisposeAsync();
        }

        foreach (var adapter in _adapters)
        {
            adapter.Dispose();
        }

        foreach (var pair in _pairs)
        {
            await pair.DisposeAsync();
        }

        _folder.Dispose();
    }

    private async Task<List<GaugeSetup>> SetUpAsync()
    {
        var setups = new List<GaugeSetup>();
        var profile = ProfileReader.Read("bench", Journals.Header.ProfileText);
        for (var i = 0; i < Gauges; i++)
        {
            GaugePort port;
            if (i % 2 == 0)
            {
                var pair = await PairedTerminals.OpenAsync();
                _pairs.Add(pair);
                _outlets.Add(pair.OpenGauge());
                port = new GaugePort.Serial(pair.Station);
            }
            else
            {
                var adapter = new TcpListener(IPAddress.Loopback, 0);
                adapter.Start();
                _adapters.Add(adapter);
                port = new GaugePort.Tcp("127.0.0.1", ((IPEndPoint)adapter.LocalEndpoint).Port);
            }

            setups.Add(new(GaugeName.Parse(string.Create(CultureInfo.InvariantCulture, $"gauge-{i}")), profile, port));
        }

        return setups;
    }

    private async Task SpeakAsync()
    {
        using var timer = new PeriodicTimer(Every, TimeProvider.System);
        for (var n = 1; n <= ReadingsEach; n++)
        {
            var line = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"+{n / 1000.0:0.000} mm\r\n"));
            foreach (var outlet in _outlets)
            {
                await outlet.WriteAsync(line);
            }

            await timer.WaitForNextTickAsync();
        }
    }
}

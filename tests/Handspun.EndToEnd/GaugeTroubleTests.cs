using System.Text.Json;
using Handspun.EndToEnd.Parts;

namespace Handspun.EndToEnd;

/// <summary>Cables that go out, gauges that are not there, bytes that are no readings, and a station that is killed.</summary>
public sealed class GaugeTroubleTests
{
    [Fact]
    public async Task Gauge_NotThereAtTheStart_IsAStateAndComesUpByItself()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("absent");
        await using var listener = await Listener.SubscribeAsync(workshop.BrokerPort);
        await Until.TrueAsync(() => listener.Messages("gauges/pinion/state").Count > 0);
        var state = listener.Messages("gauges/pinion/state")[0];
        Assert.True(state.Retained);
        Assert.Contains("plug the gauge in", state.Payload.GetProperty("sentence").GetString(), StringComparison.Ordinal);

        await workshop.StartGaugeAsync();

        await workshop.UntilGaugeIsAsync("reading");
        await Until.TrueAsync(() => listener.Messages("gauges/pinion/readings").Count > 0);
    }

    [Fact]
    public async Task Gauge_BehindATcpLink_IsReadAsOneOnASerialPort()
    {
        await using var workshop = new Workshop();
        await using var gauge = RunningProgram.Start(Programs.VirtualGauge, "--tcp", "0", "--tir-mm", "0.0762", "--inch");
        var port = await gauge.LineAsync("port ");

        await workshop.StartStationAsync(more: ["--gauge", $"drive-side=text-line-inch@{port}"]);

        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/gauges"))[0].GetProperty("state").GetString() == "reading");
        Assert.Equal("drive-side", (await workshop.GetAsync("api/v1/gauges"))[0].GetProperty("gauge").GetString());
    }

    [Fact]
    public async Task Cable_PulledOutAndPutBack_IsToldAndReadingsGoOn()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        for (var round = 1; round <= 3; round++)
        {
            await workshop.TellGaugeAsync("unplug");
            await workshop.UntilGaugeIsAsync("lost");
            await workshop.TellGaugeAsync("plug");
            await workshop.UntilGaugeIsAsync("reading");
        }
    }

    [Fact]
    public async Task Line_ThatIsNoReading_IsCountedShownAndKeptInTheJournal()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");

        await workshop.TellGaugeAsync("noise");

        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/gauges"))[0].GetProperty("unreadable").GetInt64() == 1);
        var journal = Directory.GetFiles(Path.Combine(workshop.Data, "journal", "pinion")).SelectMany(File.ReadLines);
        Assert.Contains(journal, line => line.Contains("?#~ err 07", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Port_NotPermitted_IsAStateThatNamesTheGroup()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        var device = File.ResolveLinkTarget(workshop.Port, returnFinalTarget: true)!.FullName;
        await RunningProgram.RunAsync("chgrp", "dialout", device);   // as a serial port is: owner root, group dialout
        await RunningProgram.RunAsync("chmod", "0660", device);
        await RunningProgram.RunAsync("chmod", "0777", workshop.Folder);
        await using var station = RunningProgram.Start(
            "setpriv", "--reuid=65534", "--regid=65534", "--clear-groups", Programs.Handspun,
            "serve", "--data", workshop.Data, "--http", "http://127.0.0.1:0", "--mqtt-port", "0", "--gauge", $"pinion=text-line@{device}");
        using var http = new HttpClient { BaseAddress = new Uri(await station.LineAsync("Pages:")) };

        JsonElement gauge = default;
        await Until.TrueAsync(async () =>
        {
            gauge = JsonDocument.Parse(await http.GetStringAsync("api/v1/gauges")).RootElement[0];
            return gauge.GetProperty("state").GetString() == "not-permitted";
        });

        Assert.Contains("group 'dialout'", gauge.GetProperty("sentence").GetString(), StringComparison.Ordinal);
        Assert.Contains("usermod", gauge.GetProperty("sentence").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Station_KilledInMidCapture_FilesTheCaptureAtTheNextStart()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync(more: ["--turns", "8", "--turns-per-second", "0.4"]);
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.MeasureAsync(job, wanted: 7);   // a machine with much to do looks seldom, and must look before it is enough
        await workshop.TellGaugeAsync("turn");
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("progress").GetProperty("turns").GetDouble() > 2.2);   // well over one turn, and not yet enough

        await workshop.Station.KillAsync();
        await workshop.StartStationAsync();

        await Until.TrueAsync(async () => (await workshop.RecordsAsync(job)).Any(record => record.GetProperty("ended").GetString() == "station-stopped"));
        var record = (await workshop.RecordsAsync(job)).First(found => found.GetProperty("ended").GetString() == "station-stopped");
        Assert.Equal("ok", record.GetProperty("status").GetString());
        var (tir, uncertainty) = (record.GetProperty("tir_mm").GetDouble(), record.GetProperty("tir_u95_mm").GetDouble());
        Assert.InRange(Workshop.TrueTirMillimetres, tir - uncertainty, tir + uncertainty);
        Assert.False(File.Exists(Path.Combine(workshop.Data, "records", record.GetProperty("record").GetString() + ".running.json")));
    }

    [Fact]
    public async Task Station_ToldToStop_EndsWithGraceAndSaysThatItsGaugesAreOffline()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        await using var listener = await Listener.SubscribeAsync(workshop.BrokerPort);
        await Until.TrueAsync(() => listener.Messages("gauges/pinion/readings").Count > 0);

        Assert.Equal(0, await workshop.Station.StopAsync());

        await Until.TrueAsync(() => listener.Messages("gauges/pinion/state").Any(message => message.Payload.GetProperty("state").GetString() == "offline"));
    }
}

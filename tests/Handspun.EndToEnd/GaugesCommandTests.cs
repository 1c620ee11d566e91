using System.Text.Json;
using Handspun.EndToEnd.Parts;

namespace Handspun.EndToEnd;

/// <summary><c>handspun gauges</c> and <c>handspun check</c>, against the virtual gauge.</summary>
public sealed class GaugesCommandTests
{
    [Fact]
    public async Task Try_AtAGauge_ProposesItsProfileFirst_AndKeepsItsBytes()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        var journal = Path.Combine(workshop.Folder, "tried.jsonl");

        var (code, output, errors) = await RunningProgram.RunAsync(Programs.Handspun, "gauges", "--try", workshop.Port, "--seconds", "1", "--json", "--record", journal, "--data", workshop.Data);

        Assert.True(code == 0, output + errors);
        var found = JsonDocument.Parse(output).RootElement.GetProperty("proposals")[0];
        Assert.Equal("text-line", found.GetProperty("profile").GetString());
        Assert.True(found.GetProperty("readings").GetInt32() > 20);
        var (exported, csv, _) = await RunningProgram.RunAsync(Programs.Handspun, "export", journal);
        Assert.Equal(0, exported);
        Assert.Contains(",reading,", csv, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Watch_OfAGauge_ShowsItsReadings_AndRecordsThem()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        var journal = Path.Combine(workshop.Folder, "watched.jsonl.gz");

        var (code, output, errors) = await RunningProgram.RunAsync(
            Programs.Handspun, "gauges", "--watch", "--gauge", $"dial=text-line@{workshop.Port}", "--seconds", "3", "--json", "--record", journal, "--data", workshop.Data);

        Assert.True(code == 0, output + errors);
        var last = JsonDocument.Parse(output.Trim().Split('\n')[^1]).RootElement;
        Assert.Equal("dial", last.GetProperty("state").GetProperty("gauge").GetString());
        Assert.Equal(JsonValueKind.Number, last.GetProperty("mm").ValueKind);
        Assert.Equal(0, (await RunningProgram.RunAsync(Programs.Handspun, "export", journal, "--format", "json")).ExitCode);
    }

    [Fact]
    public async Task Try_WhereNothingIs_SaysSo_AndEndsWithOne()
    {
        var (code, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, "gauges", "--try", "/dev/ttyUSB77");

        Assert.Equal(1, code);
        Assert.Contains("There is no /dev/ttyUSB77", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_OfAFreshShop_EndsWithZero_AndOfAMissingGaugeWithOne()
    {
        await using var workshop = new Workshop();
        Directory.CreateDirectory(workshop.Data);
        string[] check = ["check", "--json", "--data", workshop.Data, "--http", "http://127.0.0.1:1", "--mqtt-port", "2"];
        var (sound, output, errors) = await RunningProgram.RunAsync(Programs.Handspun, check);
        Assert.True(sound == 0, output + errors);

        await File.WriteAllTextAsync(Path.Combine(workshop.Data, "gauges.toml"), "[[gauge]]\nname = \"pinion\"\nprofile = \"text-line\"\nport = \"/dev/ttyUSB77\"\n");
        (var failing, output, _) = await RunningProgram.RunAsync(Programs.Handspun, check);
        Assert.Equal(1, failing);
        var line = Assert.Single(output.Trim().Split('\n').Select(text => JsonDocument.Parse(text).RootElement), one => one.GetProperty("mark").GetString() == "failing");
        Assert.Equal("Gauge 'pinion'", line.GetProperty("subject").GetString());
    }

    [Fact]
    public async Task Pulse_OnTheBroker_IsTakenOnlyWhereAProfileAsksForIt()
    {
        await using var workshop = new Workshop();
        Directory.CreateDirectory(Path.Combine(workshop.Data, "profiles"));
        await File.WriteAllTextAsync(Path.Combine(workshop.Data, "profiles", "with-sensor.toml"), "[index]\nsource = \"mqtt\"\n");
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync(more: ["--gauge", "quiet=with-sensor@tcp://127.0.0.1:9"]);
        await workshop.UntilGaugeIsAsync("reading");

        foreach (var gauge in new[] { "pinion", "quiet" })
        {
            await RunningProgram.RunAsync("mosquitto_pub", "-h", "127.0.0.1", "-p", workshop.BrokerPort, "-i", $"sensor-of-{gauge}", "-q", "1", "-t", $"handspun/v1/gauges/{gauge}/index", "-n");
        }

        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/gauges"))[1].GetProperty("pulses").GetInt64() == 1);
        Assert.Equal(0, (await workshop.GetAsync("api/v1/gauges"))[0].GetProperty("pulses").GetInt64());
        Assert.Equal(System.Net.HttpStatusCode.Conflict, (await workshop.Http.PostAsync("api/v1/gauges/quiet/index", null)).StatusCode);
        Assert.Equal(System.Net.HttpStatusCode.Conflict, (await workshop.Http.PostAsync("api/v1/gauges/pinion/ask", null)).StatusCode);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await workshop.Http.PostAsync("api/v1/gauges/none/ask", null)).StatusCode);
    }
}

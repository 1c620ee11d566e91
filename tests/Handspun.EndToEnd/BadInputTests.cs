using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using System.Text;
using Handspun.EndToEnd.Parts;

namespace Handspun.EndToEnd;

/// <summary>What is wrong is said in one sentence that tells what to do; nothing is lost.</summary>
public sealed class BadInputTests
{
    [Theory]
    [InlineData("pinion=no-such@/dev/null", "no profile 'no-such'")]
    [InlineData("Pinion=text-line@/dev/null", "is no name for a gauge")]
    [InlineData("pinion", "NAME=PROFILE@PORT")]
    [InlineData("pinion=text-line@ftp://somewhere", "is no port")]
    public async Task Serve_WithAGaugeThatCannotBe_EndsWithASentence(string gauge, string sentence)
    {
        await using var workshop = new Workshop();

        var (code, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, "serve", "--data", workshop.Data, "--http", "http://127.0.0.1:0", "--mqtt-port", "0", "--gauge", gauge);

        Assert.Equal(2, code);
        Assert.Contains(sentence, errors, StringComparison.Ordinal);
        Assert.Single(errors.Trim().Split('\n'));
    }

    [Fact]
    public async Task Serve_WithAFolderThatCannotBeWritten_EndsWithASentence()
    {
        await using var workshop = new Workshop();
        var file = Path.Combine(workshop.Folder, "file");
        await File.WriteAllTextAsync(file, "");

        var (code, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, "serve", "--data", Path.Combine(file, "data"));

        Assert.Equal(1, code);
        Assert.Contains("cannot be written: give another with --data", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--http")]
    [InlineData("--mqtt-port")]
    public async Task Serve_OnAPortThatIsInUse_EndsWithASentence(string option)
    {
        await using var workshop = new Workshop();
        using var holder = new TcpListener(IPAddress.Loopback, 0);
        holder.Start();
        var port = ((IPEndPoint)holder.LocalEndpoint).Port.ToString(CultureInfo.InvariantCulture);
        string[] ports = option == "--http"
            ? ["--http", $"http://127.0.0.1:{port}", "--mqtt-port", "0"]
            : ["--http", "http://127.0.0.1:0", "--mqtt-port", port];

        var (code, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, ["serve", "--data", workshop.Data, .. ports]);

        Assert.Equal(1, code);
        Assert.Contains($"Port {port} is in use", errors, StringComparison.Ordinal);
        Assert.Contains($"start this one with {option}", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Serve_InTheFolderOfAnotherStation_EndsWithASentence()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();

        var (code, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, "serve", "--data", workshop.Data, "--http", "http://127.0.0.1:0", "--mqtt-port", "0");

        Assert.Equal(1, code);
        Assert.Contains("Another station works in", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Serve_WithAnUnknownOption_EndsWithWrongUsage()
    {
        var (code, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, "serve", "--no-such-option");

        Assert.Equal(2, code);
        Assert.Contains("--no-such-option", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Calls_ThatCannotBeMet_AnswerWithProblemDetails()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();
        var http = workshop.Http;

        await ProblemAsync(await http.PostAsJsonAsync("api/v1/bay/point", new { job = "1999-0001", point = "pinion-runout", cautions_read = true }), 404, "There is no job '1999-0001'");
        await ProblemAsync(await http.PostAsJsonAsync("api/v1/bay/point", new { job, point = "no-such", cautions_read = true }), 404, "has no point 'no-such'");
        await ProblemAsync(await http.PostAsJsonAsync("api/v1/bay/point", new { job, point = "pinion-runout" }), 409, "read its cautions");
        await ProblemAsync(await http.PostAsJsonAsync("api/v1/bay/point", new { job, point = "pinion-runout", gauge = "other", cautions_read = true }), 409, "There is no gauge 'other'");
        await ProblemAsync(await http.PostAsJsonAsync("api/v1/bay/point", new { job, point = "pinion-runout", cautions_read = true, wanted = 0.5 }), 400, "from 1 to 20");
        await ProblemAsync(await http.PostAsJsonAsync("api/v1/bay/point", new { jobb = job }), 400, "send JSON");
        await ProblemAsync(await http.PostAsync("api/v1/bay/point", new StringContent("{", Encoding.UTF8, "application/json")), 400, "send JSON");
        await ProblemAsync(await http.PostAsync("api/v1/bay/finish", null), 409, "No capture is running");
        await ProblemAsync(await http.PostAsync("api/v1/bay/mark", null), 409, "No capture is running");
        await ProblemAsync(await http.PutAsJsonAsync($"api/v1/jobs/{job}/points/pinion-runout/limit", new { at_most = "0.005", source = "manual, page 12" }), 400, "Give the length with its unit");
        await ProblemAsync(await http.PutAsJsonAsync($"api/v1/jobs/{job}/points/pinion-runout/limit", new { at_most = "0.005 in" }), 400, "Say where the limit comes from");
        await ProblemAsync(await http.PutAsJsonAsync($"api/v1/jobs/{job}/points/pinion-runout/limit", new { at_least = "0.2 mm", at_most = "0.005 in", source = "x" }), 400, "does not lie below");
        await ProblemAsync(await http.PostAsJsonAsync("api/v1/jobs", new { make = "Aldermoor" }), 400, "Say which model it is.");
        await ProblemAsync(await http.PostAsJsonAsync($"api/v1/jobs/{job}/points/pinion-runout/counting", new { record = "no-such" }), 404, "no record 'no-such'");
        await ProblemAsync(await http.GetAsync("api/v1/records/..%2f..%2fhandspun.db/journal.jsonl"), 404, "no record");
        await ProblemAsync(await http.GetAsync("api/v1/no-such"), 404, "nothing at this address");
    }

    [Fact]
    public async Task Limit_TypedWithItsUnitAndConfirmed_HoldsForTheNextRecord()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();
        await workshop.UntilGaugeIsAsync("reading");
        await workshop.MeasureAsync(job);

        var answer = await workshop.Http.PutAsJsonAsync(
            $"api/v1/jobs/{job}/points/pinion-runout/limit",
            new { at_most = "0,076 mm", source = "service manual, page 3-21", confirmed_by = "M." });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        await workshop.TellGaugeAsync("turn");
        await workshop.UntilRecordsAsync(job, 1);

        var record = (await workshop.RecordsAsync(job))[0];
        Assert.Equal("undecided", record.GetProperty("verdict").GetString());   // 0.0762 mm against 0.076 mm: too close to call
        Assert.DoesNotContain(record.GetProperty("warnings").EnumerateArray(), warning => warning.GetProperty("code").GetString() == "limit-unconfirmed");
    }

    [Fact]
    public async Task Station_DescribesItsCallsAndItsTopics()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();

        var calls = await workshop.GetAsync("api/v1/openapi.json");
        var topics = await workshop.GetAsync("api/v1/asyncapi.json");

        Assert.True(calls.GetProperty("paths").TryGetProperty("/api/v1/bay/point", out _));
        Assert.True(topics.GetProperty("channels").TryGetProperty("result", out _));
    }

    [Fact]
    public async Task ForeignPages_CannotTellTheStationAnything()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        using var foreign = new HttpRequestMessage(HttpMethod.Post, "api/v1/bay/finish");
        foreign.Headers.Add("Origin", "http://elsewhere.example");

        await ProblemAsync(await workshop.Http.SendAsync(foreign), 403, "another site's page");

        using var rebound = new HttpRequestMessage(HttpMethod.Get, "api/v1/bay");
        rebound.Headers.Host = "elsewhere.example";
        await ProblemAsync(await workshop.Http.SendAsync(rebound), 403, "this machine's own address");
    }

    [Fact]
    public async Task ForeignClients_CannotPublishBelowTheStationsTopics()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await using var listener = await Listener.SubscribeAsync(workshop.BrokerPort);

        await RunningProgram.RunAsync("mosquitto_pub", "-h", "127.0.0.1", "-p", workshop.BrokerPort, "-q", "1", "-r", "-t", "handspun/v1/jobs/x/points/y/result", "-m", "{}");
        await Until.TrueAsync(() => listener.Messages("gauges/pinion/readings").Count > 5);

        Assert.Empty(listener.Messages("jobs/x"));
    }

    private static Task ProblemAsync(HttpResponseMessage answer, int status, string sentence) => Problem.IsAsync(answer, status, sentence);
}

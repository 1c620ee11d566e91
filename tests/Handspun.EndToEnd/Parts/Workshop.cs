using System.Net;
using System.Net.Http.Json;
using System.Text.Json;

namespace Handspun.EndToEnd.Parts;

/// <summary>A folder for one test, a virtual gauge and a station that listens to it, all on loopback.</summary>
internal sealed class Workshop : IAsyncDisposable
{
    public const double TrueTirMillimetres = 0.0762;   // 0.003 in

    private RunningProgram? _gauge;
    private RunningProgram? _station;
    private HttpClient? _http;

    public string Folder { get; } = Directory.CreateTempSubdirectory("handspun-").FullName;

    public string Data => Path.Combine(Folder, "data");

    public string Port => Path.Combine(Folder, "gauge-port");

    /// <summary>The profile by which the station reads the gauge.</summary>
    public string Profile { get; init; } = "text-line";

    public Uri Pages { get; private set; } = null!;

    public string BrokerPort { get; private set; } = "";

    public RunningProgram Station => _station ?? throw new InvalidOperationException("The station has not been started.");

    public HttpClient Http => _http ?? throw new InvalidOperationException("The station has not been started.");

    public async Task StartGaugeAsync(double tirMillimetres = TrueTirMillimetres, params IEnumerable<string> more)
    {
        _gauge = RunningProgram.Start(Programs.VirtualGauge, ["--link", Port, "--tir-mm", tirMillimetres.ToString(System.Globalization.CultureInfo.InvariantCulture), .. more]);
        await _gauge.LineAsync("port ");
    }

    public async Task StartStationAsync(params IEnumerable<string> more)
    {
        _station = RunningProgram.Start(Programs.Handspun, ["serve", "--data", Data, "--http", "http://127.0.0.1:0", "--mqtt-port", "0", "--gauge", $"pinion={Profile}@{Port}", .. more]);
        Pages = new Uri(await _station.LineAsync("Pages:"));
        BrokerPort = new Uri(await _station.LineAsync("Broker:")).Port.ToString(System.Globalization.CultureInfo.InvariantCulture);
        _http?.Dispose();
        _http = new HttpClient { BaseAddress = Pages };
    }

    /// <summary>Does something to the virtual gauge: turn, unplug, plug, noise.</summary>
    public Task TellGaugeAsync(string word) => _gauge!.TellAsync(word);

    public async Task EndGaugeAsync()
    {
        await _gauge!.DisposeAsync();
        _gauge = null;
    }

    /// <summary>Opens a job by HTTP and returns its number.</summary>
    public async Task<string> OpenJobAsync()
    {
        var answer = await Http.PostAsJsonAsync("api/v1/jobs", new { make = "Aldermoor", model = "Corvid 1200", year = 2004, odometer = 18250, title = "Knock at idle" });
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("job").GetString()!;
    }

    /// <summary>Adds a point of the catalogue to a job.</summary>
    public async Task AddPointAsync(string job, string point)
    {
        var answer = await Http.PostAsJsonAsync($"api/v1/jobs/{job}/points", new { point });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    /// <summary>Gives the bay a point of a job, cautions read.</summary>
    public async Task MeasureAsync(string job, string point = "pinion-runout", double? wanted = null)
    {
        var answer = await Http.PostAsJsonAsync("api/v1/bay/point", new { job, point, cautions_read = true, wanted });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    public async Task<JsonElement> GetAsync(string path) => await Http.GetFromJsonAsync<JsonElement>(path);

    /// <summary>The records of a job's point, newest first.</summary>
    public async Task<IReadOnlyList<JsonElement>> RecordsAsync(string job, string point = "pinion-runout") =>
        [.. (await GetAsync($"api/v1/jobs/{job}")).GetProperty("points").EnumerateArray()
            .Single(p => p.GetProperty("point").GetString() == point).GetProperty("records").EnumerateArray()];

    public Task UntilGaugeIsAsync(string state) => Until.TrueAsync(
        async () => (await GetAsync("api/v1/gauges"))[0].GetProperty("state").GetString() == state,
        () => $"The gauge did not become {state}.");

    /// <summary>The capture of a record as a program elsewhere gets it: its journal, measured from the command line.</summary>
    public async Task<JsonElement> AnalyzeAsync(string record)
    {
        var journal = Path.Combine(Folder, $"{record}.jsonl");
        await File.WriteAllBytesAsync(journal, await Http.GetByteArrayAsync($"api/v1/records/{record}/journal.jsonl"));
        var (_, output, errors) = await RunningProgram.RunAsync(Programs.Handspun, "analyze", "--json", journal);
        Assert.Equal("", errors);
        return JsonDocument.Parse(output).RootElement;
    }

    public Task UntilRecordsAsync(string job, int count, string point = "pinion-runout") => Until.TrueAsync(
        async () => (await RecordsAsync(job, point)).Count == count,
        () => $"Job {job} did not get {count} records.\n{string.Join('\n', Station.Output)}\n{Station.Errors}");

    /// <summary>The shaft must rest for a moment before it may start another capture; the hand of the virtual gauge runs on a little.</summary>
    public Task UntilShaftRestsAsync()
    {
        var still = 0;
        return Until.TrueAsync(async () =>
        {
            var trace = (await GetAsync("api/v1/bay")).GetProperty("trace").GetProperty("mm").EnumerateArray().Select(mm => mm.GetDouble()).TakeLast(75).ToList();
            still = trace.Count > 0 && trace.Max() - trace.Min() < 0.006 ? still + 1 : 0;
            return still > 3;
        });
    }

    public async ValueTask DisposeAsync()
    {
        _http?.Dispose();
        if (_station is not null)
        {
            await _station.DisposeAsync();
        }

        if (_gauge is not null)
        {
            await _gauge.DisposeAsync();
        }

        Directory.Delete(Folder, recursive: true);
    }
}

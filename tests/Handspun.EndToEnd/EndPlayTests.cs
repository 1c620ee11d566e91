using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>End play through real parts: a hand pushes and pulls, the record is in the job with verdict and picture, and its journal says the same again.</summary>
public sealed class EndPlayTests(Browser browser) : IClassFixture<Browser>
{
    private const string Point = "cam-end-play";
    private const double TrueMillimetres = 0.12;

    [Fact]
    public async Task Shaft_PushedAndPulled_IsARecordWithVerdictOnThePageAndTheSameWhenItsJournalIsAnalyzed()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync(more: ["--end-play-mm", TrueMillimetres.ToString(CultureInfo.InvariantCulture)]);
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        await using var listener = await Listener.SubscribeAsync(workshop.BrokerPort);
        var job = await workshop.OpenJobAsync();
        await workshop.AddPointAsync(job, Point);
        var limit = await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/points/{Point}/limit", new { at_least = "0.002 in", at_most = "0.008 in", source = "invented manual, page 4", confirmed_by = "Ines" });
        Assert.Equal(HttpStatusCode.OK, limit.StatusCode);
        await workshop.MeasureAsync(job, Point);

        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "bay"));
        await Expect(screen.Place("bay-phase")).ToContainTextAsync("Waiting for a push");
        await Expect(screen.Place("bay-heed")).ToContainTextAsync("Keep fingers out of the gears");
        await workshop.TellGaugeAsync("push-pull");
        await Expect(screen.Place("bay-phase")).ToContainTextAsync("Pushing and pulling", new() { Timeout = 20_000 });
        await Expect(screen.Place("bay-finish")).ToBeVisibleAsync();
        await Expect(screen.Place("bay-mark")).ToBeHiddenAsync();
        await workshop.UntilRecordsAsync(job, 1, Point);

        var record = (await workshop.RecordsAsync(job, Point))[0];
        Assert.Equal(("ok", "within", "end-play"), (record.GetProperty("status").GetString(), record.GetProperty("verdict").GetString(), record.GetProperty("kind").GetString()));
        var (play, doubt) = (record.GetProperty("end_play_mm").GetDouble(), record.GetProperty("end_play_u95_mm").GetDouble());
        Assert.InRange(TrueMillimetres, play - doubt, play + doubt);
        Assert.True(record.GetProperty("cycles").GetInt32() >= 3);
        await Expect(screen.Place("bay-verdict")).ToContainTextAsync("Within", new() { Timeout = 20_000 });
        await Expect(screen.Place("bay-tir")).ToHaveTextAsync((play / 25.4).ToString("0.0000", CultureInfo.InvariantCulture));
        Assert.Contains(listener.Messages("/progress"), message => message.Payload.GetProperty("phase").GetString() == "running" && message.Payload.TryGetProperty("held_at", out _));

        // The same bytes, from the command line.
        var again = await workshop.AnalyzeAsync(record.GetProperty("record").GetString()!);
        Assert.Equal(("ok", Point, "within"), (again.GetProperty("status").GetString(), again.GetProperty("point").GetString(), again.GetProperty("verdict").GetString()));
        Assert.Equal(play, again.GetProperty("end_play_mm").GetDouble(), 1e-6);
        Assert.Equal(doubt, again.GetProperty("end_play_u95_mm").GetDouble(), 1e-6);
        Assert.Equal(record.GetProperty("cycles").GetInt32(), again.GetProperty("cycles").GetInt32());
        Assert.Equal(Codes(record), again.GetProperty("warnings").EnumerateArray().Select(warning => warning.GetString()));

        // The job's page, with the picture.
        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}").ToString());
        await Expect(screen.Place("record-verdict")).ToContainTextAsync("Within");
        await Expect(screen.Page.GetByText("Cycle by cycle")).ToBeVisibleAsync();
        var wide = await screen.Page.EvalOnSelectorAsync<int>(".record-picture img", "async image => { image.loading = 'eager'; await image.decode(); return image.naturalWidth; }");
        Assert.True(wide > 300, "the picture did not load");
        Assert.Empty(screen.Troubles);
    }

    [Fact]
    public async Task Shaft_PushedToOneStopOnly_IsNoRecordAndTheBaySaysWhatToDo()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.AddPointAsync(job, Point);
        await workshop.MeasureAsync(job, Point);

        await workshop.TellGaugeAsync("push-pull 1");   // there and back once: nothing shows that either end is a stop
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("phase").GetString() == "running");
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("phase").GetString() == "waiting");

        var records = await workshop.RecordsAsync(job, Point);
        Assert.All(records, record => Assert.Equal("incomplete", record.GetProperty("status").GetString()));
        var bay = await workshop.GetAsync("api/v1/bay");
        var said = records.Count > 0 ? records[0].GetProperty("missing").GetString() : bay.GetProperty("progress").GetProperty("sentence").GetString();
        Assert.Contains("hold", said, StringComparison.Ordinal);
    }

    private static IEnumerable<string?> Codes(JsonElement record) => record.GetProperty("warnings").EnumerateArray().Select(warning => warning.GetProperty("code").GetString());
}

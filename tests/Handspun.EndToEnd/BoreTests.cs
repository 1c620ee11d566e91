using System.Globalization;
using System.Net.Http.Json;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>A bore through real parts: the gauge is set to a ring, rocked at two places, and the job says size, taper and verdict.</summary>
public sealed class BoreTests(Browser browser) : IClassFixture<Browser>
{
    private const string Point = "lifter-bore-front-intake";
    private const double RingMillimetres = 21.4;
    private const double LargerMillimetres = 0.012;

    [Fact]
    public async Task Bore_RockedAtTwoDepths_IsTwoRecordsAndOneAnswerAndTheSameWhenTheirJournalsAreAnalyzed()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync(more: ["--bore-mm", Told(RingMillimetres + LargerMillimetres), "--bore-off-mm", Told(LargerMillimetres)]);
        await workshop.StartStationAsync("--unit", "mm");
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.AddPointAsync(job, Point);
        await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/points/{Point}/limit", new { at_least = "21.400 mm", at_most = "21.430 mm", source = "invented manual, page 4", confirmed_by = "Ines" });

        // The ring's size in inches, with the wrong unit at first: refused in a sentence, and what was typed stands where it was.
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}"));
        var form = screen.Page.Locator($"#{Point} [data-testid=setup-form]");
        await form.GetByLabel("Ring or micrometer").FillAsync("0.8425 mm");
        await form.GetByLabel("Known to within").FillAsync("0.001 mm");
        await form.GetByLabel("Depth from the mouth").FillAsync("10 mm");
        await form.GetByLabel("Across, clock position").SelectOptionAsync("12");
        await form.GetByRole(Microsoft.Playwright.AriaRole.Button).ClickAsync();
        await Expect(screen.Page.Locator($"#{Point} [data-testid=setup] [data-answer]")).ToContainTextAsync("but 0.8425 in would be");
        await Expect(form.GetByLabel("Depth from the mouth")).ToHaveValueAsync("10 mm");
        await form.GetByLabel("Ring or micrometer").FillAsync("21.4 mm");
        await form.GetByRole(Microsoft.Playwright.AriaRole.Button).ClickAsync();
        await Expect(screen.Page.Locator($"#{Point} [data-testid=setup-said]")).ToContainTextAsync("Next place: 10.0 mm deep, across 12 o'clock");

        await workshop.MeasureAsync(job, Point);
        await RockAsync(workshop, job, 1);

        // The next place is typed at the bay; the ring stays what it is.
        await screen.Page.GotoAsync(new Uri(workshop.Pages, "bay").ToString());
        await screen.Place("bay-place").GetByLabel("Depth from the mouth").FillAsync("30");
        await screen.Place("bay-place").GetByRole(Microsoft.Playwright.AriaRole.Button).ClickAsync();
        await Expect(screen.Place("bay-answer")).ToContainTextAsync("Give the length with its unit");
        await screen.Place("bay-place").GetByLabel("Depth from the mouth").FillAsync("30 mm");
        await screen.Place("bay-place").GetByRole(Microsoft.Playwright.AriaRole.Button).ClickAsync();
        await Expect(screen.Place("bay-setup")).ToContainTextAsync("Next place: 30.0 mm deep, across 12 o'clock");
        await RockAsync(workshop, job, 2);

        var records = await workshop.RecordsAsync(job, Point);
        Assert.Equal([30, 10], records.Select(record => record.GetProperty("depth_mm").GetDouble()));
        foreach (var record in records)
        {
            Assert.Equal(("ok", "within", "bore"), (record.GetProperty("status").GetString(), record.GetProperty("verdict").GetString(), record.GetProperty("kind").GetString()));
            var (size, doubt) = (record.GetProperty("size_mm").GetDouble(), record.GetProperty("size_u95_mm").GetDouble());
            Assert.InRange(RingMillimetres + LargerMillimetres, size - doubt, size + doubt);

            // The same bytes, from the command line, with the ring that the journal remembers.
            var again = await workshop.AnalyzeAsync(record.GetProperty("record").GetString()!);
            Assert.Equal(size, again.GetProperty("size_mm").GetDouble(), 1e-6);
            Assert.Equal(doubt, again.GetProperty("size_u95_mm").GetDouble(), 1e-6);
            Assert.Equal(record.GetProperty("passes").GetInt32(), again.GetProperty("passes").GetInt32());
            Assert.Equal("within", again.GetProperty("verdict").GetString());
            Assert.Equal(
                record.GetProperty("warnings").EnumerateArray().Select(warning => warning.GetProperty("code").GetString()),
                again.GetProperty("warnings").EnumerateArray().Select(warning => warning.GetString()));
        }

        var answer = await workshop.GetAsync($"api/v1/jobs/{job}/points/{Point}/bore");
        Assert.Equal((true, 2, "within"), (answer.GetProperty("has_size").GetBoolean(), answer.GetProperty("places").GetArrayLength(), answer.GetProperty("verdict").GetString()));
        Assert.True(Math.Abs(answer.GetProperty("taper_mm").GetDouble()) <= answer.GetProperty("taper_u95_mm").GetDouble() + 0.001);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("out_of_round_mm").ValueKind);

        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}").ToString());
        await Expect(screen.Place("bore-verdict")).ToContainTextAsync("Within");
        await Expect(screen.Page.Locator(".bore-places tbody tr")).ToHaveCountAsync(2);
        await Expect(screen.Page.Locator($"#{Point} [data-testid=job-record]")).ToHaveCountAsync(2);
        var wide = await screen.Page.EvalOnSelectorAsync<int>(".record-picture img", "async image => { image.loading = 'eager'; await image.decode(); return image.naturalWidth; }");
        Assert.True(wide > 300, "the picture did not load");
        Assert.DoesNotContain(screen.Troubles, trouble => !trouble.Contains("400", StringComparison.Ordinal));   // the browser tells of the refused form
    }

    [Fact]
    public async Task Bore_WithoutASetting_IsADeviationThatNoLimitIsHeldAgainst()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.AddPointAsync(job, Point);
        await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/points/{Point}/limit", new { at_least = "21.400 mm", at_most = "21.430 mm", source = "invented" });
        await workshop.MeasureAsync(job, Point);
        await RockAsync(workshop, job, 1);

        var record = (await workshop.RecordsAsync(job, Point))[0];
        Assert.Equal((JsonValueKind.Null, JsonValueKind.Null, "Deviation from the gauge's zero"), (record.GetProperty("verdict").ValueKind, record.GetProperty("size_mm").ValueKind, record.GetProperty("value_title").GetString()));
        Assert.Contains("type the size of the ring", record.GetProperty("sentence").GetString(), StringComparison.Ordinal);
        var answer = await workshop.GetAsync($"api/v1/jobs/{job}/points/{Point}/bore");
        Assert.Contains("type the depth and the clock position", answer.GetProperty("sentence").GetString(), StringComparison.Ordinal);
    }

    private static async Task RockAsync(Workshop workshop, string job, int records)
    {
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("phase").GetString() == "waiting");
        await UntilStillAsync(workshop);
        await workshop.TellGaugeAsync("rock");
        await workshop.UntilRecordsAsync(job, records, Point);
    }

    // A bay rests after a capture until nothing has moved for a moment; the hand of the virtual gauge runs on a little.
    private static async Task UntilStillAsync(Workshop workshop)
    {
        var still = 0;
        await Until.TrueAsync(async () =>
        {
            var trace = (await workshop.GetAsync("api/v1/bay")).GetProperty("trace").GetProperty("mm").EnumerateArray().Select(mm => mm.GetDouble()).TakeLast(100).ToList();
            still = trace.Count > 20 && trace.Max() - trace.Min() < 0.006 ? still + 1 : 0;
            return still > 3;
        });
    }

    private static string Told(double millimetres) => millimetres.ToString(CultureInfo.InvariantCulture);
}

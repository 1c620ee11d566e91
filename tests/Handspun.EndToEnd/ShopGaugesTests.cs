using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>Gauges are checked too, and what a check found goes with every record.</summary>
public sealed class ShopGaugesTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Gauge_NeverChecked_ThenGood_ThenFailed_IsToldOnEveryRecord_OnThePages_AndByReplay()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync("--unit", "mm");
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();

        // Never checked: said while the bay waits, on the record, and on the pages.
        var never = await TurnAsync(workshop, job, 1);
        Assert.Contains("gauge-never-checked", Codes(never));
        Assert.Equal(JsonValueKind.Null, never.GetProperty("gauge_check").ValueKind);
        Assert.Contains("gauge-never-checked", Codes((await workshop.GetAsync("api/v1/bay")).GetProperty("progress")));
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "gauges"));
        await Expect(screen.Place("gauge-standing")).ToContainTextAsync("Never checked");

        // Checked on the page: a size without its unit is refused and stays; the readings are taken from the gauge.
        await screen.Page.ClickAsync(".job-link");
        var shown = (await workshop.GetAsync("api/v1/gauges/pinion/shown")).GetProperty("mm").GetDouble();
        await screen.Page.FillAsync("#check-by", "A. Nobody");
        await screen.Page.FillAsync("#check-against", "invented block, certificate 17");
        await screen.Page.FillAsync("#check-size", "1.5");
        await screen.Page.FillAsync("#check-size_u95", "0.2 µm");
        for (var reading = 1; reading <= 4; reading++)
        {
            await screen.Place("take-reading").ClickAsync();
            await Expect(screen.Page.Locator("#check-readings")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex($@"^(-?[\d.]+ mm ?){{{reading}}}$"));
        }

        await screen.Page.ClickAsync("[data-testid=check-form] [type=submit]");
        await Expect(screen.Page.Locator("#check + ol + form + [data-answer]")).ToContainTextAsync("Give the length with its unit");
        await Expect(screen.Page.Locator("#check-size")).ToHaveValueAsync("1.5");
        await screen.Page.FillAsync("#check-size", $"{shown.ToString(CultureInfo.InvariantCulture)} mm");
        await screen.Page.ClickAsync("[data-testid=check-form] [type=submit]");
        await Expect(screen.Place("gauge-standing")).ToContainTextAsync("Good");
        await Expect(screen.Place("gauge-check")).ToHaveCountAsync(1);

        // Good: the bay knows at once, and the next record names the check.
        var good = await TurnAsync(workshop, job, 2);
        Assert.DoesNotContain(Codes(good), code => code.StartsWith("gauge-", StringComparison.Ordinal));
        Assert.Equal(("A. Nobody", "good"), (good.GetProperty("gauge_check").GetProperty("by").GetString(), good.GetProperty("gauge_check").GetProperty("found").GetString()));
        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}").ToString());
        await Expect(screen.Place("job-record").First).ToContainTextAsync("pinion, checked");
        await Expect(screen.Place("job-record").Nth(1)).ToContainTextAsync("pinion, never checked");

        // Failed, 20 µm off: the uncertainty counts with it.
        var far = (shown - 0.02).ToString(CultureInfo.InvariantCulture);
        var answer = await workshop.Http.PostAsJsonAsync("api/v1/gauges/pinion/checks", new { by = "A. Nobody", against = "invented block", size = $"{far} mm", size_u95 = "0.2 µm", readings = $"{shown.ToString(CultureInfo.InvariantCulture)} {shown.ToString(CultureInfo.InvariantCulture)} {shown.ToString(CultureInfo.InvariantCulture)} mm" });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("failed", (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("standing").GetString());
        Assert.Contains("gauge-check-failed", Codes((await workshop.GetAsync("api/v1/bay")).GetProperty("progress")));
        var failed = await TurnAsync(workshop, job, 3);
        Assert.Contains("gauge-check-failed", Codes(failed));
        Assert.True(failed.GetProperty("tir_u95_mm").GetDouble() > good.GetProperty("tir_u95_mm").GetDouble() + 0.01);
        Assert.All(screen.Troubles, trouble => Assert.Contains("400", trouble, StringComparison.Ordinal));   // the browser tells the refusal too

        // The records' journals say the same to who replays them.
        foreach (var record in new[] { never, good, failed })
        {
            var replayed = await workshop.AnalyzeAsync(record.GetProperty("record").GetString()!);
            Assert.Equal(Codes(record).Where(IsOfTheGauge), replayed.GetProperty("warnings").EnumerateArray().Select(code => code.GetString()!).Where(IsOfTheGauge));
            Assert.Equal(record.GetProperty("gauge_check").ToString(), replayed.GetProperty("gauge_check").ToString());
            Assert.Equal(record.GetProperty("tir_u95_mm").GetDouble(), replayed.GetProperty("tir_u95_mm").GetDouble(), 1e-5);
        }

        // And after a restart the book has both checks.
        Assert.Equal(0, await workshop.Station.StopAsync());
        await workshop.StartStationAsync("--unit", "mm");
        var kept = await workshop.GetAsync("api/v1/gauges/pinion");
        Assert.Equal(["failed", "good"], kept.GetProperty("checks").EnumerateArray().Select(check => check.GetProperty("found").GetString()!));
    }

    [Fact]
    public async Task Study_TypedOnThePage_IsShownInWordsAndTables()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "gauges"), 820, 1180);
        await screen.Page.ClickAsync("details.plate summary");
        await screen.Page.FillAsync("#name", "micrometer-25");
        await screen.Page.FillAsync("#description", "outside micrometer, 0 to 25 mm");
        await screen.Page.FillAsync("#error_limit", "0.004 mm");
        await screen.Page.FillAsync("#resolution", "0.001 mm");
        await screen.Page.ClickAsync("[data-testid=add-gauge] [type=submit]");
        await screen.Page.ClickAsync("[data-gauge=micrometer-25] .job-link");

        await screen.Page.ClickAsync("text=Type a study");
        await screen.Page.FillAsync("#study-lines", "A; 1; 20.000 20.001\nA; 2; 20.010 20.011 mm");
        await screen.Page.ClickAsync("[data-testid=study-form] [type=submit]");
        await Expect(screen.Page.GetByText("Line 1: The readings have no unit")).ToBeVisibleAsync();
        await screen.Page.FillAsync("#study-lines", "A; 1; 20.000 20.001 mm\nA; 2; 20.010 20.011 mm\nB; 1; 20.001 20.000 mm\nB; 2; 20.010 20.010 mm\n");
        await screen.Page.ClickAsync("[data-testid=study-form] [type=submit]");

        await Expect(screen.Place("study-sentence")).ToContainTextAsync("Gauge and hands make up");
        await Expect(screen.Place("gauge-study").GetByRole(Microsoft.Playwright.AriaRole.Table).First).ToContainTextAsync("Between the parts");
        var study = (await workshop.GetAsync("api/v1/gauges/micrometer-25")).GetProperty("studies")[0];
        Assert.Equal([1, 1, 1, 4], study.GetProperty("anova").EnumerateArray().Select(line => line.GetProperty("degrees_of_freedom").GetInt32()));
        Assert.True(study.GetProperty("categories").GetInt32() > 5);   // half a micrometre of scatter against ten between the parts
        Assert.All(screen.Troubles, trouble => Assert.Contains("400", trouble, StringComparison.Ordinal));   // the browser tells the refusal too
    }

    [Fact]
    public async Task ChecksAndStudies_ThatCannotBe_AreAnsweredWithASentence()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();   // its gauge is not plugged in
        var http = workshop.Http;

        Task<HttpResponseMessage> Check(string gauge, params (string Key, string Value)[] changed)
        {
            Dictionary<string, string> typed = new() { ["by"] = "A. Nobody", ["against"] = "block 17", ["size"] = "5 mm", ["size_u95"] = "0.2 µm", ["readings"] = "5.001 5.001 5.000 mm" };
            foreach (var (key, value) in changed)
            {
                typed[key] = value;
            }

            return http.PostAsJsonAsync($"api/v1/gauges/{gauge}/checks", typed);
        }

        await Problem.IsAsync(await Check("no-such"), 404, "There is no gauge 'no-such': the shop has 'pinion'");
        await Problem.IsAsync(await http.GetAsync("api/v1/gauges/no-such"), 404, "There is no gauge 'no-such'");
        await Problem.IsAsync(await http.GetAsync("api/v1/gauges/pinion/shown"), 409, "shows nothing now");
        await Problem.IsAsync(await Check("pinion", ("by", " ")), 400, "Say who checked the gauge");
        await Problem.IsAsync(await Check("pinion", ("against", "")), 400, "Say what the gauge was held against");
        await Problem.IsAsync(await Check("pinion", ("size", "5")), 400, "size '5' is no length. Give the length with its unit");
        await Problem.IsAsync(await Check("pinion", ("size_u95", "")), 400, "size_u95 is missing");
        await Problem.IsAsync(await Check("pinion", ("deviation", "1 mm")), 400, "take the deviation from its certificate");
        await Problem.IsAsync(await Check("pinion", ("readings", "5.001 5.001 5.000")), 400, "The readings have no unit");
        await Problem.IsAsync(await Check("pinion", ("readings", "5.001 mm")), 400, "A check takes 3 readings or more");
        await Problem.IsAsync(await Check("pinion", ("readings", "5.001 5.001 5.000 in")), 400, "look at their unit");
        await Problem.IsAsync(await Check("pinion", ("due_on", "soon")), 400, "due_on 'soon' is no day");
        await Problem.IsAsync(await Check("pinion", ("due_on", "2001-01-01")), 400, "has passed already");
        await Problem.IsAsync(await http.PostAsJsonAsync("api/v1/gauges", new { name = "Big One" }), 400, "'Big One' is no name for a gauge");
        await Problem.IsAsync(await http.PostAsJsonAsync("api/v1/gauges", new { name = "bench", check_every_days = "often" }), 400, "is no number of days");
        await Problem.IsAsync(await http.PutAsJsonAsync("api/v1/gauges/pinion", new { check_every_days = "0" }), 400, "whole number from 1 to");
        await Problem.IsAsync(await http.PostAsJsonAsync("api/v1/gauges/pinion/studies", new { lines = "A; 1" }), 400, "Line 1 does not name");
        await Problem.IsAsync(await http.PostAsJsonAsync("api/v1/gauges/pinion/studies", new { mechanics = new[] { "A" } }), 400, "Give lines, or mechanics, parts and values_mm");
        await Problem.IsAsync(await http.PostAsJsonAsync("api/v1/gauges/pinion/studies", new { mechanics = new[] { "A", "B" }, parts = new[] { "1" }, values_mm = new[] { new[] { new[] { 1.0, 2.0 } }, [[1.0, 2.0]] } }), 400, "A study takes two parts or more");

        // A gauge whose papers nobody knows cannot be judged.
        Assert.Equal(HttpStatusCode.OK, (await http.PostAsJsonAsync("api/v1/gauges", new { name = "bench" })).StatusCode);
        await Problem.IsAsync(await Check("bench"), 400, "type the error limit of its papers");
        await Problem.IsAsync(await http.GetAsync("api/v1/gauges/bench/shown"), 409, "is not plugged in here");

        Assert.Equal(0, (await workshop.GetAsync("api/v1/gauges/pinion")).GetProperty("checks").GetArrayLength());
        Assert.Equal("never-checked", (await workshop.GetAsync("api/v1/gauges/pinion")).GetProperty("standing").GetString());
    }

    private static bool IsOfTheGauge(string code) => code.StartsWith("gauge-", StringComparison.Ordinal);

    private static IEnumerable<string> Codes(JsonElement told) => told.GetProperty("warnings").EnumerateArray().Select(warning => warning.GetProperty("code").GetString()!);

    private static async Task<JsonElement> TurnAsync(Workshop workshop, string job, int records)
    {
        await workshop.MeasureAsync(job);
        await workshop.TellGaugeAsync("turn 4");
        await workshop.UntilRecordsAsync(job, records);
        var record = (await workshop.RecordsAsync(job))[0];
        Assert.Equal("ok", record.GetProperty("status").GetString());
        return record;
    }
}

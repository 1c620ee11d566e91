using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>Every page can be read and used by everybody: the rules of axe-core find nothing, and nothing sticks out of a phone.</summary>
public sealed class EveryPageTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Pages_OfADeskWithAStoppedJob_BreakNoRule()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();   // its gauge is not plugged in
        var screen = await browser.OpenAsync(workshop.Pages);
        var critic = new PageCritic(screen.Page);
        await critic.LookAsync("no jobs yet");

        var job = await OpenPlannedAsync(workshop);
        await PostAsync(workshop, $"jobs/{job}/steps/machine-ready", new { act = "tick", by = "A. Nobody" });
        await PostAsync(workshop, $"jobs/{job}/findings", new { by = "A. Nobody", signs = new[] { "debris" }, words = "two slivers", place = "oil filter", step = "magnet" });
        await TypeAsync(workshop, job, "0.0015 in", "-0.0015 in");
        await TypeAsync(workshop, job, "0.010 in", "-0.010 in");   // common practice, no source: no good
        await PostAsync(workshop, "gauges", new { name = "micrometer-25", description = "outside micrometer", error_limit = "0.004 mm", resolution = "0.001 mm" });
        await PostAsync(workshop, "gauges/micrometer-25/checks", new { by = "A. Nobody", against = "invented block", size = "5 mm", size_u95 = "0.2 µm", readings = "5.001 5.001 5.000 mm" });
        await PostAsync(workshop, "gauges/micrometer-25/studies", new { lines = "A; 1; 20.000 20.001 mm\nA; 2; 20.010 20.011 mm\nB; 1; 20.001 20.000 mm\nB; 2; 20.010 20.010 mm" });

        await PutAsync(workshop, "plans/ours", "title = \"Ours\"\n[[step]]\ncode = \"look\"\nkind = \"finding\"\ntitle = \"Look\"\n[[step]]\ncode = \"pinion-runout\"\nkind = \"point\"\n[[part]]\ncode = \"wheel\"\ntitle = \"Wheel\"\n");
        await File.WriteAllTextAsync(Path.Combine(workshop.Data, "plans", "broken.toml"), "title = \"Broken\"\n[[step]]\nkind = \"chek\"\n");
        await PutAsync(workshop, "settings", new { mechanics = new[] { "A. Nobody", "דנה לוי" } });
        var again = await OpenPlannedAsync(workshop);   // the bike came again
        await PostAsync(workshop, $"jobs/{again}/steps/machine-ready", new { act = "tick", by = "A. Nobody" });
        await TypeAsync(workshop, again, "0.0012 in", "-0.0012 in");
        var (before, after) = ((await workshop.RecordsAsync(job))[0].GetProperty("record").GetString(), (await workshop.RecordsAsync(again))[0].GetProperty("record").GetString());

        foreach (var path in new[]
        {
            "",
            "settings",
            "limits",
            "plans",
            "plans/cam-job",
            "plans/cam-job/text",
            "plans/ours",
            "plans/ours/steps/look",
            "plans/ours/steps/pinion-runout",
            "plans/ours/text",
            "plans/broken/text",
            "reckonings",
            $"compare?a={before}",
            $"compare?a={before}&b={after}",
            $"jobs/{job}/history",
            "jobs/new",
            $"jobs/{job}",
            $"jobs/{job}/steps/machine-ready",
            $"jobs/{job}/steps/magnet",
            $"jobs/{job}/steps/pinion-runout",
            $"jobs/{job}/findings/new",
            $"jobs/{job}/parts",
            $"jobs/{job}/parts/lifter-front-intake",
            $"jobs/{job}/labels",
            $"jobs/{job}/points/pinion-runout/limit",
            $"jobs/{job}/points/pinion-runout/entry",
            $"jobs/{job}/report",
            $"jobs/{job}/history",
            "intake",
            $"reckonings?job={job}",
            "gauges",
            "gauges/pinion",
            "gauges/micrometer-25",
            "jobs/1999-0001",
        })
        {
            await critic.OpenAsync(new Uri(workshop.Pages, path));
        }

        Assert.True(critic.Found.Count == 0, string.Join('\n', critic.Found));
    }

    [Fact]
    public async Task Bay_AtEveryStage_BreaksNoRule()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync(more: ["--turns", "30", "--turns-per-second", "0.5"]);
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var job = await OpenPlannedAsync(workshop);
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "bay"));
        var critic = new PageCritic(screen.Page);
        await Expect(screen.Place("bay-gauges")).ToBeVisibleAsync();
        await critic.LookAsync("bay without a point");

        await PostAsync(workshop, $"jobs/{job}/steps/machine-ready", new { act = "tick", by = "A. Nobody" });
        await PostAsync(workshop, "bay/point", new { job, point = "pinion-runout", cautions_read = true, wanted = 20 });
        await Expect(screen.Place("bay-phase")).ToContainTextAsync("Waiting");
        await critic.LookAsync("bay that waits");

        await workshop.TellGaugeAsync("turn");
        await Expect(screen.Place("bay-phase")).ToContainTextAsync("Turning", new() { Timeout = 20_000 });
        await critic.LookAsync("bay while the shaft turns");

        // Twenty turns leave time to look; the record need not wait for all of them.
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("progress").GetProperty("count").GetDouble() > 3);
        await PostAsync(workshop, "bay/finish", new { });
        await workshop.UntilRecordsAsync(job, 1);
        await Expect(screen.Place("bay-verdict")).ToContainTextAsync("Within", new() { Timeout = 20_000 });
        await critic.LookAsync("bay with a result");

        await TypeAsync(workshop, job, "0.010 in", "-0.010 in");
        await screen.Page.ReloadAsync();
        await Expect(screen.Place("bay-stop")).ToBeVisibleAsync(new() { Timeout = 20_000 });
        await critic.LookAsync("bay that says stop");

        // The station gives no point before its cautions were read; a screen still says them where they were not.
        await screen.Page.RouteAsync("**/api/v1/bay*", async route =>
        {
            var answer = await route.FetchAsync();
            await route.FulfillAsync(new() { Response = answer, Body = (await answer.TextAsync()).Replace("\"cautions_read\":true", "\"cautions_read\":false", StringComparison.Ordinal) });
        });
        await screen.Page.ReloadAsync();
        await Expect(screen.Place("bay-cautions")).ToContainTextAsync("battery is disconnected");
        await critic.LookAsync("bay with cautions");

        Assert.True(critic.Found.Count == 0, string.Join('\n', critic.Found));
    }

    [Fact]
    public async Task Bay_OfAJobWithNamesFromRightToLeft_ShowsThemInTheirPlaces()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        const string Make = "\u05d0\u05dc\u05d3\u05e8\u05de\u05d5\u05e8";
        const string Title = "\u0637\u0631\u0642 \"<b>\"";
        var answer = await workshop.Http.PostAsJsonAsync("api/v1/jobs", new { make = Make, model = "<i>Corvid</i>", year = 2004, title = Title });
        var job = (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("job").GetString()!;
        var limit = await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/points/pinion-runout/limit", new { at_most = "0.004 in", source = $"{Make}, 7", confirmed_by = Make });
        Assert.Equal(HttpStatusCode.OK, limit.StatusCode);
        await workshop.MeasureAsync(job);
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "bay"), 1280, 800);

        await Expect(screen.Place("bay-about")).ToContainTextAsync($"2004 {Make} <i>Corvid</i>");
        await Expect(screen.Place("bay-about")).ToContainTextAsync(Title);
        await Expect(screen.Place("bay-limit")).ToHaveTextAsync("Limit: at most 0.0040 in");
        var places = await screen.Page.EvaluateAsync<double[]>(
            """
            (parts) => {
              const text = document.querySelector('[data-testid=bay-about]').firstChild;
              return parts.map((part) => {
                const range = document.createRange();
                range.setStart(text, text.data.indexOf(part));
                range.setEnd(text, text.data.indexOf(part) + part.length);
                return range.getBoundingClientRect().left;
              });
            }
            """,
            new[] { "Job", Make, "\u0637\u0631\u0642" });
        Assert.Equal(places.Order(), places);   // the job's number, then the bike, then the work, as everywhere
        var critic = new PageCritic(screen.Page);
        await critic.LookAsync("bay with names from right to left");
        await critic.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}"));
        Assert.True(critic.Found.Count == 0, string.Join('\n', critic.Found));
        Assert.Empty(screen.Troubles);
    }

    [Fact]
    public async Task Pages_ThatPairScreens_BreakNoRule()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "screens"));
        var critic = new PageCritic(screen.Page);
        await critic.LookAsync("no screens let in");
        await workshop.Station.StopAsync();

        await workshop.StartStationAsync("--screens", "http://127.0.0.2:0");
        var door = new Uri(await workshop.Station.LineAsync("Screens:"));
        using var http = new HttpClient();
        var paired = await http.GetAsync((await workshop.GetAsync("api/v1/screens")).GetProperty("address").GetString());
        await screen.Page.RouteAsync("**/jobs/paired", async route => await route.FulfillAsync(new() { ContentType = "text/html", Body = (await paired.Content.ReadAsStringAsync()).Replace("http-equiv", "data-held", StringComparison.Ordinal) }));
        await critic.OpenAsync(new Uri(workshop.Pages, "screens"));
        await critic.OpenAsync(new Uri(workshop.Pages, "jobs/paired"));   // what a screen shows for a moment
        await critic.OpenAsync(new Uri(door, "jobs"));
        await critic.OpenAsync(new Uri(door, "pair/AAAAAAAA"));

        Assert.True(critic.Found.Count == 0, string.Join('\n', critic.Found));
    }

    [Fact]
    public async Task Critic_OfAPageThatBreaksRules_SaysWhich()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var screen = await browser.OpenAsync(workshop.Pages);
        var critic = new PageCritic(screen.Page);

        await screen.Page.SetContentAsync("<html lang='en'><title>Bad</title><main><h1>Bad</h1><p style='width: 500px; color: #999; background: #fff'>pale</p><img src='/mark.svg'></main>");
        await critic.LookAsync("bad page");

        Assert.Contains(critic.Found, found => found.StartsWith("bad page (360, Dark): image-alt", StringComparison.Ordinal));
        Assert.Contains(critic.Found, found => found.StartsWith("bad page (1280, Light): color-contrast", StringComparison.Ordinal));
        Assert.Contains(critic.Found, found => found.EndsWith("pixels wide on a phone of 360", StringComparison.Ordinal));
    }

    private static async Task<string> OpenPlannedAsync(Workshop workshop)
    {
        var answer = await workshop.Http.PostAsJsonAsync("api/v1/jobs", new { make = "Aldermoor", model = "Corvid 1200", year = 2004, odometer = 18250, title = "Cams", customer = "Somebody invented", plate = "AB 12", plan = "cam-job" });
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("job").GetString()!;
    }

    // A needle read by eye.
    private static Task TypeAsync(Workshop workshop, string job, string highest, string lowest) =>
        PostAsync(workshop, $"jobs/{job}/points/pinion-runout/entries", new { highest, lowest, tool = "dial indicator", division = "0.0005 in", by = "A. Nobody" });

    private static async Task PutAsync(Workshop workshop, string call, object body)
    {
        var answer = await workshop.Http.PutAsync($"api/v1/{call}", body is string text ? new StringContent(text) : JsonContent.Create(body));
        Assert.True(answer.IsSuccessStatusCode, $"{call}: {await answer.Content.ReadAsStringAsync()}");
    }

    private static async Task PostAsync(Workshop workshop, string call, object body)
    {
        var answer = await workshop.Http.PostAsJsonAsync($"api/v1/{call}", body);
        Assert.True(answer.IsSuccessStatusCode, $"{call}: {await answer.Content.ReadAsStringAsync()}");
    }
}

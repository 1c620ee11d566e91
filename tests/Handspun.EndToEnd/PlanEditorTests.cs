using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>The shop's own plans: copied, changed step by step or as text, never lost.</summary>
public sealed class PlanEditorTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Plan_CopiedAndChangedStepByStep_IsWhatTheNextJobTakes_AndNoJobBefore()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "plans"), 360, 740);

        await screen.Page.SelectOptionAsync("#from", "quick-runout");
        await screen.Page.FillAsync("#title", "Our \"quick\" look <1>");
        await screen.Page.GetByText("Make the copy").ClickAsync();
        await Expect(screen.Page.Locator("h1")).ToHaveTextAsync("Our \"quick\" look <1>");
        await Expect(screen.Place("edit-step")).ToHaveCountAsync(3);
        var plan = screen.Page.Url.Split('/')[^1];
        var before = await OpenAsync(workshop, plan);

        // A step that stays a step: words with quotes, and a limit with a comma.
        await screen.Page.GetByRole(AriaRole.Link, new() { Name = "Pinion shaft runout" }).ClickAsync();
        await screen.Page.FillAsync("#at_most", "0,004");
        await screen.Page.FillAsync("#source", "our \"red\" book, page 3");
        await screen.Page.GetByText("Keep this step").ClickAsync();
        await Expect(screen.Page.Locator(".field-error")).ToContainTextAsync("'0,004' is no length. Give the length with its unit");
        await Expect(screen.Page.Locator("#source")).ToHaveValueAsync("our \"red\" book, page 3");
        await screen.Page.FillAsync("#at_most", "0,004 in");
        await screen.Page.GetByText("Keep this step").ClickAsync();
        await Expect(screen.Place("edit-step").Nth(2)).ToContainTextAsync("Limit at most 0.0040 in");

        // A step more, in front, and one that cannot go above what it waits for.
        await screen.Page.GetByText("Look at something and note it").ClickAsync();
        await screen.Page.FillAsync("#step_title", "בדיקת שמן");
        await screen.Page.SelectOptionAsync("#after_step", "");
        await screen.Page.GetByText("Add it", new() { Exact = true }).ClickAsync();
        await Expect(screen.Page.Locator("h1")).ToHaveTextAsync("בדיקת שמן");
        await screen.Page.FillAsync("#places", "drain\nfilter");
        await screen.Page.GetByText("Keep this step").ClickAsync();
        await Expect(screen.Place("edit-step").First).ToContainTextAsync("בדיקת שמן");
        await screen.Page.GetByRole(AriaRole.Button, new() { Name = "Move down: Machine ready and safe" }).ClickAsync();
        await Expect(screen.Place("edit-step").Nth(2)).ToContainTextAsync("Machine ready and safe");
        await screen.Page.GetByRole(AriaRole.Button, new() { Name = "Move down: Machine ready and safe" }).ClickAsync();
        await Expect(screen.Place("answer")).ToContainTextAsync("waits for 'machine-ready', which stands below it");
        await Expect(screen.Place("edit-step").Nth(2)).ToContainTextAsync("Machine ready and safe");

        var after = await OpenAsync(workshop, plan);
        Assert.Equal(["machine-ready", "seen-on-the-way", "pinion-runout"], await StepsAsync(workshop, before));
        Assert.Equal(["step", "seen-on-the-way", "machine-ready", "pinion-runout"], await StepsAsync(workshop, after));
        Assert.Equal(0.1016, await LimitAsync(workshop, after), 1e-9);   // 0.004 in
        Assert.Equal(0.127, await LimitAsync(workshop, before), 1e-9);   // as the catalogue has it: common practice, no source
        Assert.DoesNotContain(screen.Troubles, trouble => !trouble.Contains("400", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Plan_ThatSomebodyElseChangedMeanwhile_IsNotOverwritten()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        await PutAsync(workshop, "ours", Plan("Ours", 2));
        var form = await browser.OpenAsync(new Uri(workshop.Pages, "plans/ours/steps/s1"));
        var text = await browser.OpenAsync(new Uri(workshop.Pages, "plans/ours/text"));
        var file = Path.Combine(workshop.Data, "plans", "ours.toml");
        var theirs = Plan("Theirs", 3);
        await PutAsync(workshop, "ours", theirs);

        await form.Page.FillAsync("#title", "mine");
        await form.Page.GetByText("Keep this step").ClickAsync();
        await Expect(form.Place("answer")).ToContainTextAsync("Somebody saved something else here meanwhile");
        await Expect(form.Page.Locator("#title")).ToHaveValueAsync("mine");
        await text.Page.FillAsync("#text", Plan("Mine", 1));
        await text.Page.GetByText("Check and save").ClickAsync();
        await Expect(text.Place("answer")).ToContainTextAsync("Somebody saved something else here meanwhile");
        await Expect(text.Place("text-now")).ToContainTextAsync("Theirs");
        await Expect(text.Page.Locator("#text")).ToHaveValueAsync(Plan("Mine", 1));
        Assert.Equal(theirs, await File.ReadAllTextAsync(file));

        await form.Page.GetByText("Keep mine in its place").ClickAsync();
        await Expect(form.Place("edit-step")).ToHaveCountAsync(3);   // their third step is still there
        await Expect(form.Place("edit-step").Nth(1)).ToContainTextAsync("mine");
        var read = await workshop.Http.GetAsync("api/v1/plans/ours/text");
        using var stale = new HttpRequestMessage(HttpMethod.Put, "api/v1/plans/ours") { Content = new StringContent(theirs, Encoding.UTF8, "application/toml") };
        stale.Headers.TryAddWithoutValidation("If-Match", "\"0\"");
        await Problem.IsAsync(await workshop.Http.SendAsync(stale), 412, "Somebody saved something else here meanwhile");
        Assert.NotNull(read.Headers.ETag);
    }

    [Fact]
    public async Task Text_ThatDoesNotHold_IsRefusedByItsLines_AndKept()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        await PutAsync(workshop, "ours", Plan("Ours", 2));
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "plans/ours/text"));
        var typed = Plan("Ours", 2).Replace("kind = \"check\"\ntitle = \"Look 1\"", "kind = \"chek\"\ntitel = \"Look 1\"", StringComparison.Ordinal);

        await screen.Page.FillAsync("#text", typed);
        await screen.Page.GetByText("Check and save").ClickAsync();

        await Expect(screen.Place("text-problems")).ToContainTextAsync("Line 12: 'chek' is no kind of step");
        await Expect(screen.Place("text-problems")).ToContainTextAsync("kind = \"chek\"");
        await Expect(screen.Place("text-problems")).ToContainTextAsync("Line 13: There is no key 'titel' here");
        await Expect(screen.Page.Locator("#text")).ToHaveValueAsync(typed);
        Assert.Equal(Plan("Ours", 2), await File.ReadAllTextAsync(Path.Combine(workshop.Data, "plans", "ours.toml")));
        await Problem.IsAsync(await workshop.Http.PutAsync("api/v1/plans/ours", new StringContent(typed)), 400, "line 12: 'chek' is no kind of step");
        await Problem.IsAsync(await workshop.Http.PutAsync("api/v1/plans/Not A Name", new StringContent(Plan("X", 1))), 400, "no name for a plan");

        // The shipped ones stay as they are, until the shop puts one of its own in their place.
        await screen.Page.GotoAsync(new Uri(workshop.Pages, "plans/cam-job").ToString());
        await Expect(screen.Page.GetByText("came along with the program and stays as it is")).ToBeVisibleAsync();
        await Expect(screen.Page.Locator(".move")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Plan_OfAHundredSteps_StaysUsable()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        await PutAsync(workshop, "long", Plan("A long one", 100));
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "plans/long"), 360, 740);

        await Expect(screen.Place("edit-step")).ToHaveCountAsync(100);
        await screen.Page.GotoAsync(new Uri(workshop.Pages, "plans/long/steps/s99").ToString());
        await screen.Page.FillAsync("#place", "3");
        await screen.Page.GetByText("Keep this step").ClickAsync();
        await Expect(screen.Place("edit-step").Nth(2)).ToContainTextAsync("Look 99");
        await Expect(screen.Page.Locator("#step-s99")).ToBeInViewportAsync();

        // A job with all of them, on a phone and on the bench.
        var job = await OpenAsync(workshop, "long");
        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}").ToString());
        await Expect(screen.Place("step-line")).ToHaveCountAsync(100);
        Assert.True(await screen.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth") <= 360);
        await screen.Place("next-step").ClickAsync();
        await screen.Page.FillAsync("#tick-by", "Ada");
        await screen.Page.GetByText("Done", new() { Exact = true }).ClickAsync();
        await Expect(screen.Page.GetByText("Step 2 of 100")).ToBeVisibleAsync();
        Assert.Empty(screen.Troubles);
    }

    [Fact]
    public async Task Plan_GetsAPartAndAnotherName_AndIsTakenOutOfUse_WithItsFileKept()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        await PutAsync(workshop, "ours", Plan("Ours", 1));

        Assert.Equal(HttpStatusCode.OK, await SendAsync(workshop, "plans/ours/parts", ("part_title", "Gasket \"A\""), ("part_place", "left")));
        Assert.Equal(HttpStatusCode.OK, await SendAsync(workshop, "plans/ours", ("title", "Ours, mended"), ("about", "")));
        Assert.Equal(HttpStatusCode.BadRequest, await SendAsync(workshop, "plans/ours", ("title", " "), ("about", "")));
        var plan = await workshop.GetAsync("api/v1/plans/ours");
        Assert.Equal("Ours, mended", plan.GetProperty("title").GetString());
        Assert.Equal(("gasket-a-left", "Gasket \"A\""), (plan.GetProperty("parts")[0].GetProperty("part").GetString(), plan.GetProperty("parts")[0].GetProperty("title").GetString()));
        Assert.Equal(HttpStatusCode.OK, await SendAsync(workshop, "plans/ours/parts/remove", ("part", "gasket-a-left")));
        Assert.Equal(0, (await workshop.GetAsync("api/v1/plans/ours")).GetProperty("parts").GetArrayLength());

        // The only step cannot go: a plan has one at least.
        Assert.Equal(HttpStatusCode.BadRequest, await SendAsync(workshop, "plans/ours/steps/s0", ("act", "remove")));
        Assert.Equal(HttpStatusCode.NotFound, await SendAsync(workshop, "plans/ours/steps/no-such", ("act", "remove")));
        Assert.Equal(HttpStatusCode.OK, await SendAsync(workshop, "plans/ours", ("act", "away")));
        Assert.Equal(HttpStatusCode.NotFound, (await workshop.Http.GetAsync("api/v1/plans/ours")).StatusCode);
        Assert.Contains("Ours, mended", await File.ReadAllTextAsync(Path.Combine(workshop.Data, "plans", "ours.toml.away")), StringComparison.Ordinal);
    }

    // A form as a browser sends it, with the tag of the text that stands there now.
    private static async Task<HttpStatusCode> SendAsync(Workshop workshop, string path, params IEnumerable<(string Field, string Value)> fields)
    {
        var seen = (await workshop.Http.GetAsync("api/v1/plans/ours/text")).Headers.ETag!.Tag.Trim('"');
        using var form = new FormUrlEncodedContent(fields.Append((Field: "seen", Value: seen)).Select(field => KeyValuePair.Create(field.Field, field.Value)));
        return (await workshop.Http.PostAsync(path, form)).StatusCode;
    }

    private static string Plan(string title, int steps) => $"title = \"{title}\"\n" + string.Concat(Enumerable.Range(0, steps).Select(number =>
        string.Create(CultureInfo.InvariantCulture, $"\n# look {number}\n[[step]]\ncode = \"s{number}\"\nkind = \"check\"\ntitle = \"Look {number}\"\n")));

    private static async Task PutAsync(Workshop workshop, string code, string toml)
    {
        var answer = await workshop.Http.PutAsync($"api/v1/plans/{code}", new StringContent(toml, Encoding.UTF8, "application/toml"));
        Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync());
    }

    private static async Task<string> OpenAsync(Workshop workshop, string plan)
    {
        var answer = await workshop.Http.PostAsJsonAsync("api/v1/jobs", new { make = "Aldermoor", model = "Corvid 1200", year = 2004, odometer = 18250, title = "Cams", plan });
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("job").GetString()!;
    }

    private static async Task<IReadOnlyList<string>> StepsAsync(Workshop workshop, string job) =>
        [.. (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("step").GetString()!)];

    private static async Task<double> LimitAsync(Workshop workshop, string job) =>
        (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("points").EnumerateArray().Single(point => point.GetProperty("point").GetString() == "pinion-runout").GetProperty("limit").GetProperty("upper_mm").GetDouble();
}

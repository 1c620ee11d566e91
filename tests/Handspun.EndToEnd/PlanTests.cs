using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>A job with a plan, through the real station: what a mechanic does on the pages, and what another program does over HTTP.</summary>
public sealed class PlanTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task BadShaft_StopsTheJob_UntilSomebodyDecides()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync(0.3302);   // 0.013 in: common practice, no source, no good
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");

        // The form offers the plans; the cam job is taken.
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "jobs/new"), 360, 740);
        foreach (var (field, text) in new[] { ("make", "Aldermoor"), ("model", "Corvid 1200"), ("year", "2004"), ("title", "Cams") })
        {
            await screen.Page.FillAsync($"#{field}", text);
        }

        await screen.Page.GetByText("Cam job", new() { Exact = true }).ClickAsync();
        await screen.Page.GetByText("Open the job").ClickAsync();
        await Expect(screen.Place("step-line")).ToHaveCountAsync(24);

        // The first step; what comes after begins when it is ticked with a name.
        await screen.Place("next-step").ClickAsync();
        await Expect(screen.Page.GetByText("battery is disconnected")).ToBeVisibleAsync();
        await screen.Page.FillAsync("#tick-by", "A. Nobody");
        await screen.Page.GetByText("Done", new() { Exact = true }).ClickAsync();
        await Expect(screen.Place("step")).ToHaveAttributeAsync("data-state", "open");
        var job = screen.Page.Url.Split('/')[4];

        // The gate is measured from its own page.
        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}/steps/pinion-runout").ToString());
        await screen.Place("measure-point").ClickAsync();
        await screen.Page.WaitForURLAsync("**/bay");
        await workshop.TellGaugeAsync("turn");
        await workshop.UntilRecordsAsync(job, 1);

        // The bay's screen says stop where the wheel was turned.
        await Expect(screen.Place("bay-stop")).ToBeVisibleAsync(new() { Timeout = 20_000 });
        await Expect(screen.Place("bay-tell")).ToContainTextAsync("crank specialist");

        // Everywhere the screen says stop, and what to tell the customer.
        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}").ToString());
        await Expect(screen.Place("stop")).ToContainTextAsync("over the limit");
        await Expect(screen.Place("stop")).ToContainTextAsync("Nobody has confirmed the limit");
        await Expect(screen.Place("to-customer")).ToContainTextAsync("looked at by a crank specialist first");
        await ProblemAsync(await workshop.Http.PostAsJsonAsync("api/v1/bay/point", new { job, point = "cam-end-play" }), 409, "'Pinion shaft runout' is over its limit");

        // A decision without a reason comes back with what was typed; with one, the job goes on.
        await screen.Page.GetByText("Decide", new() { Exact = true }).ClickAsync();
        await screen.Page.FillAsync("#gate-by", "A. Nobody");
        await screen.Page.FillAsync("#gate-why", "   ");
        await screen.Page.GetByText("Go on all the same").ClickAsync();
        await Expect(screen.Place("answer")).ToContainTextAsync("Say why");
        await Expect(screen.Page.Locator("#gate-by")).ToHaveValueAsync("A. Nobody");
        await screen.Page.FillAsync("#gate-why", "customer rides it to the crank shop");
        await screen.Page.GetByText("Go on all the same").ClickAsync();
        await Expect(screen.Place("stop")).ToHaveCountAsync(0);
        var gate = (await StepAsync(workshop, job, "pinion-runout")).GetProperty("gate");
        Assert.Equal(("gone-on", "over", true), (gate.GetProperty("reason").GetString(), gate.GetProperty("verdict").GetString(), gate.GetProperty("open").GetBoolean()));
        Assert.Contains("A. Nobody", gate.GetProperty("decision").GetProperty("by").GetString(), StringComparison.Ordinal);
        Assert.Equal("open", (await StepAsync(workshop, job, "tensioners")).GetProperty("state").GetString());
        Assert.DoesNotContain(screen.Troubles, trouble => !trouble.Contains("400", StringComparison.Ordinal));   // the browser notes the answer to the empty reason
    }

    [Fact]
    public async Task Finding_WithAPhoto_IsNotedFromAPhone_AndWhatIsNoPictureTakesNoWordsWithIt()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await OpenAsync(workshop, "cam-job");
        var (picture, torn) = (Path.Combine(workshop.Folder, "worn.png"), Path.Combine(workshop.Folder, "torn.jpg"));
        await File.WriteAllBytesAsync(picture, Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNkYAAAAAYAAjCB0C8AAAAASUVORK5CYII="));
        await File.WriteAllTextAsync(torn, "no picture");

        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}/steps/magnet"), 360, 740);
        await screen.Page.GetByText("Debris", new() { Exact = true }).ClickAsync();
        await screen.Page.GetByText("oil filter", new() { Exact = true }).ClickAsync();
        await screen.Page.FillAsync("#finding-words", "two slivers");
        await screen.Page.FillAsync("#finding-by", "A. Nobody");
        await screen.Page.SetInputFilesAsync("#finding-photos", [picture, torn]);
        await screen.Page.GetByText("Note it").ClickAsync();

        await Expect(screen.Place("answer")).ToContainTextAsync("The finding is noted. 'torn.jpg' was not kept: it is no JPEG or PNG picture");
        await Expect(screen.Place("finding")).ToContainTextAsync("two slivers");
        var wide = await screen.Page.EvalOnSelectorAsync<int>("[data-testid=photos] img", "async image => { image.loading = 'eager'; await image.decode(); return image.naturalWidth; }");
        Assert.Equal(1, wide);
        var finding = (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("findings")[0];
        Assert.Equal("oil filter: Debris: two slivers", finding.GetProperty("sentence").GetString());
        Assert.Equal("done", (await StepAsync(workshop, job, "magnet")).GetProperty("state").GetString());
    }

    [Fact]
    public async Task Photo_ThatCannotBe_IsRefusedWithASentence()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await OpenAsync(workshop, "cam-job");

        await ProblemAsync(await SendAsync(workshop, job, "step/magnet", new byte[26 * 1024 * 1024]), 400, "25 MB are the most");
        await ProblemAsync(await SendAsync(workshop, job, "step/magnet", "GIF89a"u8.ToArray()), 400, "it is no JPEG or PNG picture");
        await ProblemAsync(await SendAsync(workshop, job, "step/no-such", Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNkYAAAAAYAAjCB0C8AAAAASUVORK5CYII=")), 404, "that a photo could belong to");
        await ProblemAsync(await workshop.Http.GetAsync($"api/v1/jobs/{job}/photos/..%2f..%2fhandspun.db"), 404, "has no photo");
        Assert.False(Directory.Exists(Path.Combine(workshop.Data, "jobs", job, "photos")) && Directory.EnumerateFiles(Path.Combine(workshop.Data, "jobs", job, "photos")).Any());
    }

    [Fact]
    public async Task TwoPeople_OnTheSameStep_TheSecondIsTold_AndWhatTheyTypedIsStillThere()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await OpenAsync(workshop, "cam-job");
        var address = new Uri(workshop.Pages, $"jobs/{job}/steps/machine-ready");
        var (first, second) = (await browser.OpenAsync(address), await browser.OpenAsync(address));
        foreach (var (screen, words, name) in new[] { (first, "strapped in front", "First"), (second, "strapped behind", "Second") })
        {
            await screen.Page.FillAsync("#tick-words", words);
            await screen.Page.FillAsync("#tick-by", name);
        }

        await first.Page.GetByText("Done", new() { Exact = true }).ClickAsync();
        await first.Page.WaitForURLAsync("**/magnet");
        await second.Page.GetByText("Done", new() { Exact = true }).ClickAsync();

        await Expect(second.Place("answer")).ToContainTextAsync("First wrote in this job meanwhile (ticked it: strapped in front)");
        await Expect(second.Place("typed")).ToContainTextAsync("strapped behind");
        var unmatched = new HttpRequestMessage(HttpMethod.Post, $"api/v1/jobs/{job}/steps/magnet") { Content = JsonContent.Create(new { act = "tick", by = "Third" }) };
        unmatched.Headers.Add("If-Match", "\"0\"");
        await ProblemAsync(await workshop.Http.SendAsync(unmatched), 412, "First wrote in this job meanwhile");
        Assert.Equal(1, (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("version").GetInt32());
    }

    [Fact]
    public async Task Limit_IsSaidToBeUnconfirmed_UntilSomebodyTypesManualAndPage()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var job = await OpenAsync(workshop, "quick-runout");
        await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/steps/machine-ready", new { act = "tick", by = "A. Nobody" });
        await workshop.MeasureAsync(job);
        await workshop.TellGaugeAsync("turn");
        await workshop.UntilRecordsAsync(job, 1);

        var screen = await browser.OpenAsync(workshop.Pages);
        await Expect(screen.Place("job-line")).ToContainTextAsync("Within the limit, limit not confirmed");
        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}/steps/pinion-runout").ToString());
        await Expect(screen.Place("gate-open")).ToContainTextAsync("Nobody has confirmed the limit");
        await screen.Place("to-limit").ClickAsync();

        // A page is asked for; what was typed stays.
        await screen.Page.FillAsync("#at_most", "0.005 in");
        await screen.Page.GetByText("Parts in service").ClickAsync();
        await screen.Page.FillAsync("#limit-source", "service manual");
        await screen.Page.FillAsync("#limit-by", "A. Nobody");
        await screen.Page.GetByText("I looked it up: confirm").ClickAsync();
        await Expect(screen.Place("answer")).ToContainTextAsync("on which page");
        await Expect(screen.Page.Locator("#limit-source")).ToHaveValueAsync("service manual");
        await screen.Page.FillAsync("#limit-source", "service manual, page 3-21");
        await screen.Page.GetByText("I looked it up: confirm").ClickAsync();

        await Expect(screen.Place("gate-open")).Not.ToContainTextAsync("Nobody has confirmed");
        await Expect(screen.Page.GetByText("Nobody has confirmed")).ToHaveCountAsync(0);
        var limit = (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("points")[0].GetProperty("limit");
        Assert.Equal(("A. Nobody", "service"), (limit.GetProperty("confirmed_by").GetString(), limit.GetProperty("age").GetString()));
        await screen.Page.GotoAsync(workshop.Pages.ToString());
        await Expect(screen.Place("job-line")).Not.ToContainTextAsync("not confirmed");
    }

    [Fact]
    public async Task Labels_AreReadByAnotherDecoder_AndOpenTheirPart()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await OpenAsync(workshop, "cam-job");
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}/labels"));
        await Expect(screen.Place("label")).ToHaveCountAsync(8);

        var read = await QrPhoto.ReadAsync(screen.Place("label").First);

        Assert.Equal(new Uri(workshop.Pages, $"jobs/{job}/parts/lifter-front-intake").ToString(), read);
        await screen.Page.GotoAsync(read!);
        await Expect(screen.Place("part-place")).ToHaveTextAsync("front intake");
        await screen.Page.FillAsync("#faced", "oil hole to the front");
        await screen.Page.FillAsync("#faced-by", "A. Nobody");
        await screen.Page.GetByText("Note it", new() { Exact = true }).ClickAsync();
        await Expect(screen.Place("part-faced")).ToHaveTextAsync("oil hole to the front");
        Assert.Empty(screen.Troubles);
    }

    [Fact]
    public async Task Job_IsClosedWithPointsOpen_OnlyWhenSomebodySaysWhy()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await OpenAsync(workshop, "quick-runout");

        await ProblemAsync(await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/close", new { by = "A. Nobody" }), 400, "3 things are still open");
        Assert.Equal(HttpStatusCode.OK, (await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/close", new { by = "A. Nobody", why = "customer took it home" })).StatusCode);
        await ProblemAsync(await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/steps/machine-ready", new { act = "tick", by = "A. Nobody" }), 409, "is closed: take it up again first");
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}"));
        await Expect(screen.Place("closed")).ToContainTextAsync("customer took it home");
    }

    [Fact]
    public async Task Commands_ListAndOpenJobs_BesideAStationThatRuns()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var (code, output, _) = await RunningProgram.RunAsync(Programs.Handspun, "jobs", "open", "--data", workshop.Data, "--make", "Aldermoor", "--model", "Heron", "--year", "1974", "--title", "Seal", "--plan", "quick-runout", "--json");

        Assert.Equal(0, code);
        var job = JsonDocument.Parse(output).RootElement.GetProperty("job").GetString();
        Assert.Equal("quick-runout", (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("plan").GetString());
        Assert.Contains("0 of 3 steps done", (await RunningProgram.RunAsync(Programs.Handspun, "jobs", "--data", workshop.Data)).Output, StringComparison.Ordinal);
        var wrong = await RunningProgram.RunAsync(Programs.Handspun, "jobs", "open", "--data", workshop.Data, "--plan", "no-such");
        Assert.Equal(2, wrong.ExitCode);
        Assert.Contains("There is no plan 'no-such'", wrong.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plans_OfTheShop_AreCheckedWithTheirLine()
    {
        await using var workshop = new Workshop();
        var file = Path.Combine(workshop.Folder, "ours.toml");
        await File.WriteAllTextAsync(file, "title = \"Ours\"\n[[step]]\ncode = \"a\"\nkind = \"check\"\ntitle = \"A\"\nafter = [\"a\"]\n");

        var (code, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, "plans", file);

        Assert.Equal(1, code);
        Assert.Contains("Plan 'ours', line 6: these steps wait for each other in a circle", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_ThatTheReadMeShows_Holds()
    {
        await using var workshop = new Workshop();
        var text = await File.ReadAllTextAsync(Path.Combine(Programs.SampleCaptures, "..", "README.md"));
        var shown = text.Split("```toml").Skip(1).Select(block => block.Split("```")[0]).Single(block => block.Contains("[[step]]", StringComparison.Ordinal));
        var file = Path.Combine(workshop.Folder, "shown.toml");
        await File.WriteAllTextAsync(file, shown);

        Assert.Equal(0, (await RunningProgram.RunAsync(Programs.Handspun, "plans", file)).ExitCode);
    }

    private static async Task<string> OpenAsync(Workshop workshop, string plan)
    {
        var answer = await workshop.Http.PostAsJsonAsync("api/v1/jobs", new { make = "Aldermoor", model = "Corvid 1200", year = 2004, title = "Cams", plan });
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("job").GetString()!;
    }

    private static async Task<JsonElement> StepAsync(Workshop workshop, string job, string step) =>
        (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("steps").EnumerateArray().First(s => s.GetProperty("step").GetString() == step);

    private static async Task<HttpResponseMessage> SendAsync(Workshop workshop, string job, string about, byte[] photo)
    {
        using var form = new MultipartFormDataContent { { new StringContent(about), "about" }, { new StringContent("A. Nobody"), "by" }, { new ByteArrayContent(photo), "photo", "photo.jpg" } };
        return await workshop.Http.PostAsync($"api/v1/jobs/{job}/photos", form);
    }

    private static async Task ProblemAsync(HttpResponseMessage answer, int status, string sentence)
    {
        var body = await answer.Content.ReadAsStringAsync();
        Assert.True(status == (int)answer.StatusCode, $"{(int)answer.StatusCode} instead of {status}: {body}");
        Assert.Contains(sentence, JsonDocument.Parse(body).RootElement.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }
}

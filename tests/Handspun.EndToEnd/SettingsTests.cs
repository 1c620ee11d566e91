using System.Net;
using System.Net.Http.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>The shop's settings: typed on a page, sent by a program, held at once.</summary>
public sealed class SettingsTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Settings_SavedOnThePage_HoldOnEveryScreen_WithoutARestart()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();
        await TypeAsync(workshop, job);
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}"));
        await Expect(screen.Place("record-tir").First).ToHaveTextAsync("0.0030 in");

        await screen.Page.GotoAsync(new Uri(workshop.Pages, "settings").ToString());
        await screen.Page.GetByText("Millimetres, to hundredths").ClickAsync();
        await screen.Page.FillAsync("#step_after_s", "20");
        await screen.Page.FillAsync("#mechanics", "Ada \"Sparks\" O'Hara\n<b>Bo</b>\nדנה לוי\n");
        await screen.Page.GetByText("Save", new() { Exact = true }).ClickAsync();

        await Expect(screen.Place("saved")).ToBeVisibleAsync();
        await Expect(screen.Page.Locator("#mechanics")).ToHaveValueAsync("Ada \"Sparks\" O'Hara\n<b>Bo</b>\nדנה לוי");
        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}").ToString());
        await Expect(screen.Place("record-tir").First).ToHaveTextAsync("0.08 mm");
        await Expect(screen.Page.Locator("b")).ToHaveCountAsync(0);   // a name is a name
        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}/points/pinion-runout/limit").ToString());
        var offered = await screen.Page.Locator("#limit-by").EvaluateAsync<string[]>("field => [...field.list.options].map(one => one.value)");
        Assert.Equal(["Ada \"Sparks\" O'Hara", "<b>Bo</b>", "דנה לוי"], offered);
        Assert.Empty(screen.Troubles);
    }

    [Fact]
    public async Task Settings_ThatCannotBe_AreRefusedByTheField_AndWhatWasTypedIsKept()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "settings"), 360, 740);

        await screen.Page.FillAsync("#step_after_s", "8,5");
        await screen.Page.FillAsync("#mechanics", "Ada\nada");
        await screen.Page.GetByText("Save", new() { Exact = true }).ClickAsync();

        await Expect(screen.Page.GetByText("Type whole seconds, from 0 to 600")).ToBeVisibleAsync();
        await Expect(screen.Page.GetByText("'Ada' stands twice")).ToBeVisibleAsync();
        await Expect(screen.Page.Locator("#step_after_s")).ToHaveValueAsync("8,5");
        await Expect(screen.Page.Locator("#mechanics")).ToHaveValueAsync("Ada\nada");
        Assert.False(File.Exists(Path.Combine(workshop.Data, "shop.toml")));
    }

    [Fact]
    public async Task Settings_OfTwoPeople_TellTheSecondWhatTheFirstSaved()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var second = await browser.OpenAsync(new Uri(workshop.Pages, "settings"));
        Assert.Equal(HttpStatusCode.OK, (await workshop.Http.PutAsJsonAsync("api/v1/settings", new { mechanics = new[] { "Ada" } })).StatusCode);

        await second.Page.FillAsync("#step_after_s", "0");
        await second.Page.GetByText("Save", new() { Exact = true }).ClickAsync();

        await Expect(second.Place("answer")).ToContainTextAsync("Somebody saved something else here meanwhile");
        await Expect(second.Place("meanwhile")).ToContainTextAsync("Ada");
        await Expect(second.Page.Locator("#step_after_s")).ToHaveValueAsync("0");
        Assert.Equal(8, (await workshop.GetAsync("api/v1/settings")).GetProperty("step_after_s").GetInt32());
        await second.Page.GetByText("Save mine in its place").ClickAsync();
        await Expect(second.Place("saved")).ToBeVisibleAsync();
        Assert.Equal(0, (await workshop.GetAsync("api/v1/settings")).GetProperty("step_after_s").GetInt32());
    }

    [Fact]
    public async Task Settings_OverHttp_MindTheirTag()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var read = await workshop.Http.GetAsync("api/v1/settings");

        var taken = await PutAsync(workshop, read.Headers.ETag!.Tag, new { unit = "mm", step_after_s = 15 });
        Assert.Equal(HttpStatusCode.OK, taken.StatusCode);
        var settings = await workshop.GetAsync("api/v1/settings");
        Assert.Equal(("mm", 3, 15), (settings.GetProperty("unit").GetString(), settings.GetProperty("places").GetInt32(), settings.GetProperty("step_after_s").GetInt32()));
        await Problem.IsAsync(await PutAsync(workshop, read.Headers.ETag.Tag, new { step_after_s = 1 }), 412, "Somebody saved something else here meanwhile");
        await Problem.IsAsync(await PutAsync(workshop, taken.Headers.ETag!.Tag, new { places = 4 }), 400, "millimetres with 3 or 2");
        await Problem.IsAsync(await PutAsync(workshop, taken.Headers.ETag.Tag, new { unitt = "mm" }), 400, "send JSON");
    }

    private static async Task<HttpResponseMessage> PutAsync(Workshop workshop, string tag, object body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Put, "api/v1/settings") { Content = JsonContent.Create(body) };
        request.Headers.TryAddWithoutValidation("If-Match", tag);
        return await workshop.Http.SendAsync(request);
    }

    private static async Task TypeAsync(Workshop workshop, string job) => Assert.Equal(HttpStatusCode.Created, (await workshop.Http.PostAsJsonAsync(
        $"api/v1/jobs/{job}/points/pinion-runout/entries",
        new { highest = "0.0015 in", lowest = "-0.0015 in", tool = "dial indicator", division = "0.0005 in", by = "A. Nobody" })).StatusCode);
}

using System.Net;
using System.Net.Http.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>The list of all limits: who stands by which.</summary>
public sealed class LimitListTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Limit_NotConfirmed_StandsFirst_UntilItIsLookedUp()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();
        Assert.Equal(HttpStatusCode.OK, (await workshop.Http.PutAsJsonAsync(
            $"api/v1/jobs/{job}/points/drive-side-runout/limit",
            new { at_most = "0.004 in", source = "invented manual, page 7", confirmed_by = "Ada", drive = "gear", age = "service" })).StatusCode);
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "limits"), 360, 740);

        var lines = screen.Place("limit-in-use");
        await Expect(lines).ToHaveCountAsync(2);
        await Expect(lines.Nth(0)).ToContainTextAsync("Pinion shaft runout");
        await Expect(lines.Nth(0)).ToContainTextAsync("Not confirmed");
        await Expect(lines.Nth(1)).ToContainTextAsync("service limit, gear drive");
        await Expect(lines.Nth(1)).ToContainTextAsync("Ada, ");
        await Expect(screen.Place("limits-summary")).ToHaveTextAsync("2 limits in the open jobs, 1 of them not confirmed.");
        await Expect(screen.Place("limit-shipped").First).ToContainTextAsync("common practice, no source");

        // The comma is as good as the point.
        await lines.Nth(0).GetByText("Look it up and confirm").ClickAsync();
        await screen.Page.FillAsync("#at_most", "0,005 in");
        await screen.Page.FillAsync("#limit-source", "invented manual, page 9");
        await screen.Page.FillAsync("#limit-by", "Bo");
        await screen.Page.GetByText("I looked it up: confirm").ClickAsync();
        await Expect(screen.Page.GetByText("Confirmed by Bo")).ToBeVisibleAsync();
        var told = await workshop.GetAsync("api/v1/limits");
        Assert.Equal((2, 0), (told.GetProperty("count").GetInt32(), told.GetProperty("unconfirmed").GetInt32()));
        Assert.Contains(told.GetProperty("shipped").EnumerateArray(), one => one.GetProperty("point").GetString() == "pinion-runout");
        await Problem.IsAsync(await workshop.Http.GetAsync("api/v1/limits?page=0"), 400, "There is no page 0");
        Assert.Empty(screen.Troubles);
    }
}

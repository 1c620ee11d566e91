using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>Two records side by side: before and after, one end and the other.</summary>
public sealed class CompareTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Runouts_BeforeAndAfter_StandOnTheSameScale_WithWhatTheyTell()
    {
        await using var workshop = new Workshop();
        var job = await MeasuredAsync(workshop, 0.0762);   // 0.003 in
        await workshop.EndGaugeAsync();
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/gauges"))[0].GetProperty("state").GetString() != "reading");   // else the next wait may still see the first gauge
        await workshop.StartGaugeAsync(0.0254);            // trued to 0.001 in
        await workshop.UntilGaugeIsAsync("reading");
        await workshop.MeasureAsync(job);
        await workshop.TellGaugeAsync("turn");
        await workshop.UntilRecordsAsync(job, 2);
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}"));

        // From the older record to the newer one.
        await screen.Place("compare-record").Nth(1).ClickAsync();
        await screen.Place("pick").GetByRole(AriaRole.Link).ClickAsync();

        await Expect(screen.Place("compare")).ToHaveAttributeAsync("data-same-scale", "yes");
        await Expect(screen.Place("difference")).ToContainTextAsync("smaller than A: more than both can be wrong by");
        var told = (await screen.Place("difference").TextContentAsync())!;
        Assert.Equal(0.002, double.Parse(told.Split(' ')[2], CultureInfo.InvariantCulture), 0.0003);   // as the gauge was told to turn
        foreach (var picture in await screen.Page.Locator(".record-picture img").AllAsync())
        {
            await Until.TrueAsync(() => picture.EvaluateAsync<bool>("one => { one.scrollIntoView(); return one.complete && one.naturalWidth > 0; }"));
        }

        // At the width of a phone they stand under each other.
        await screen.Page.SetViewportSizeAsync(360, 740);
        var (upper, lower) = (await screen.Place("compared-A").BoundingBoxAsync(), await screen.Place("compared-B").BoundingBoxAsync());
        Assert.True(lower!.Y >= upper!.Y + upper.Height);
        await screen.Page.GetByText("Swap A and B").ClickAsync();
        await Expect(screen.Place("difference")).ToContainTextAsync("larger than A");
        Assert.Empty(screen.Troubles);
    }

    [Fact]
    public async Task Results_TooCloseToTellApart_AreSaidToShowNothing()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();
        var first = await TypeAsync(workshop, job, "pinion-runout", "0.0015 in", "-0.0015 in");
        var second = await TypeAsync(workshop, job, "drive-side-runout", "0.0015 in", "-0.0016 in");

        var told = await workshop.GetAsync($"api/v1/records/{first}/beside/{second}");

        Assert.False(told.GetProperty("told").GetBoolean());
        Assert.Equal(0.00254, told.GetProperty("difference_mm").GetDouble(), 1e-6);   // 0.0001 in
        var (ua, ub) = (told.GetProperty("first").GetProperty("value_u95_mm").GetDouble(), told.GetProperty("second").GetProperty("value_u95_mm").GetDouble());
        Assert.Equal(Math.Sqrt(ua * ua + ub * ub), told.GetProperty("difference_u95_mm").GetDouble(), 2e-6);   // JCGM 100:2008, 5.1.2, from memory
        Assert.Contains("does not prove that there is none", told.GetProperty("sentence").GetString(), StringComparison.Ordinal);
        await Problem.IsAsync(await workshop.Http.GetAsync($"api/v1/records/{first}/beside/{second}/picture.svg"), 404, "have their journals");
        await Problem.IsAsync(await workshop.Http.GetAsync($"api/v1/records/{first}/beside/no-such"), 404, "no record 'no-such'");
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"compare?a={first}&b={second}"));
        await Expect(screen.Page.GetByText("No difference shown")).ToBeVisibleAsync();
    }

    private static async Task<string> MeasuredAsync(Workshop workshop, double tir)
    {
        await workshop.StartGaugeAsync(tir);
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();
        await workshop.UntilGaugeIsAsync("reading");
        await workshop.MeasureAsync(job);
        await workshop.TellGaugeAsync("turn");
        await workshop.UntilRecordsAsync(job, 1);
        return job;
    }

    private static async Task<string> TypeAsync(Workshop workshop, string job, string point, string highest, string lowest)
    {
        var answer = await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points/{point}/entries", new { highest, lowest, tool = "dial indicator", division = "0.0005 in", by = "A. Nobody" });
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("record").GetString()!;
    }
}

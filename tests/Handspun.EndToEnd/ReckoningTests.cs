using System.Net;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>The reckonings of the trade, on their page and over HTTP.</summary>
public sealed class ReckoningTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Springs_TypedOnThePage_ShowTheFormulaWithItsNumbers()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();

        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}"), 360, 740);
        await screen.Place("to-reckonings").ClickAsync();
        await screen.Page.GetByText("Room in the valve springs").ClickAsync();
        var springs = screen.Page.Locator("#spring-room");
        await springs.Locator("[name=installed_height]").FillAsync("2.050");
        await springs.Locator("[name=valve_lift]").FillAsync("0.573");
        await springs.Locator("[name=known]").FillAsync("0.005");
        await springs.GetByText("Work it out").ClickAsync();
        await Expect(springs.GetByTestId("reckoning-missing")).ToContainTextAsync("coil bind is missing");
        await Expect(springs.Locator("[name=installed_height]")).ToHaveValueAsync("2.050");

        await springs.Locator("[name=coil_bind]").FillAsync("1.440");
        await springs.GetByText("Work it out").ClickAsync();

        await Expect(springs.GetByTestId("reckoning-line")).ToContainTextAsync("= 0.0370 in ± 0.0087 in");
        await Expect(springs.GetByText("Valve springs are under load")).ToBeVisibleAsync();
        Assert.Empty(screen.Troubles);

        var answer = await workshop.GetAsync("api/v1/reckonings/spring-room?installed_height=52.07%20mm&coil_bind=36.576%20mm&valve_lift=14.554%20mm&known=0.1%20mm&unit=mm");
        Assert.Equal(0.94, answer.GetProperty("lines")[0].GetProperty("value").GetDouble(), 6);
        Assert.Equal("mm", answer.GetProperty("lines")[0].GetProperty("unit").GetString());
        Assert.Equal(HttpStatusCode.NotFound, (await workshop.Http.GetAsync("api/v1/reckonings/no-such")).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await workshop.Http.GetAsync("api/v1/reckonings/spring-room?height=2")).StatusCode);
    }
}

using System.Net.Http.Json;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>The bay goes on to the plan's next point by itself, and any key takes that back.</summary>
public sealed class NextPointTests(Browser browser) : IClassFixture<Browser>
{
    private const string Plan =
        """
        title = "Two points"
        [[step]]
        code = "pinion"
        kind = "point"
        point = "pinion-runout"
        [[step]]
        code = "cam"
        kind = "point"
        point = "cam-end-play"
        """;

    [Fact]
    public async Task Result_WithAnotherPointNext_StepsThere_AndAKeyGoesBackForGood()
    {
        await using var workshop = new Workshop();
        Directory.CreateDirectory(Path.Combine(workshop.Data, "plans"));
        await File.WriteAllTextAsync(Path.Combine(workshop.Data, "plans", "two-points.toml"), Plan);
        await File.WriteAllTextAsync(Path.Combine(workshop.Data, "shop.toml"), "step_after_s = 5\n");
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var answer = await workshop.Http.PostAsJsonAsync("api/v1/jobs", new { make = "Aldermoor", model = "Corvid 1200", year = 2004, title = "Two", plan = "two-points" });
        var job = (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("job").GetString()!;
        await workshop.MeasureAsync(job);
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "bay"), 360, 740);
        await Expect(screen.Place("bay-point")).ToHaveTextAsync("Pinion shaft runout");
        await Expect(screen.Place("bay-back")).ToBeHiddenAsync();

        await workshop.TellGaugeAsync("turn");

        await Expect(screen.Place("bay-next")).ToContainTextAsync("Next: Cam end play", new() { Timeout = 40_000 });
        await Expect(screen.Place("bay-back")).ToHaveTextAsync("Stay at this point");
        await Expect(screen.Place("bay-point")).ToHaveTextAsync("Cam end play", new() { Timeout = 20_000 });
        Assert.Equal("pinion", (await workshop.GetAsync("api/v1/bay")).GetProperty("gauge").GetString());

        await Expect(screen.Place("bay-back")).ToHaveTextAsync("Back to Pinion shaft runout");
        await screen.Page.Keyboard.PressAsync("b");

        await Expect(screen.Place("bay-point")).ToHaveTextAsync("Pinion shaft runout");
        await Expect(screen.Place("bay-verdict")).ToContainTextAsync("Within");
        Assert.Equal(JsonValueKind.Null, (await workshop.GetAsync("api/v1/bay")).GetProperty("next").ValueKind);
        await Problem.IsAsync(await workshop.Http.PostAsync("api/v1/bay/back", null), 409, "There is no point to go back to");
        Assert.Empty(screen.Troubles);
    }
}

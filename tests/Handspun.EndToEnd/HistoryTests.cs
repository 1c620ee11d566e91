using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using System.Xml.Linq;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>A bike that came again, among others of its kind: over HTTP, on its page, and from the command line.</summary>
public sealed class HistoryTests(Browser browser) : IClassFixture<Browser>
{
    private const string Point = "pinion-runout";

    [Fact]
    public async Task Bike_ThatCameAgain_IsToldOverTheYearsAndAmongItsKind()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var first = await MeasuredAsync(workshop, "NN 71 204", 0.0010);
        var second = await MeasuredAsync(workshop, "nn71204", 0.0025);   // the same plate, written otherwise
        foreach (var (other, inches) in new[] { 0.0010, 0.0015, 0.0020, 0.0030, 0.0040 }.Index())
        {
            await MeasuredAsync(workshop, $"QX {other}", inches);
        }

        // As data: what counted in each job, oldest first, and where the newest lies. Median and quartiles of five are their third, second and fourth.
        var history = await workshop.GetAsync($"api/v1/jobs/{first}/history");
        Assert.Equal([first, second], history.GetProperty("jobs").EnumerateArray().Select(job => job.GetProperty("job").GetString()));
        var point = Assert.Single(history.GetProperty("points").EnumerateArray());
        Assert.Equal([0.0010, 0.0025], point.GetProperty("results").EnumerateArray().Select(result => Math.Round(result.GetProperty("value_mm").GetDouble() / 25.4, 6)));
        var kind = point.GetProperty("kind");
        Assert.Equal(
            [0.0015, 0.0020, 0.0030],
            new[] { "lower_quartile_mm", "median_mm", "upper_quartile_mm" }.Select(name => Math.Round(kind.GetProperty(name).GetDouble() / 25.4, 6)));
        Assert.Equal((5, 3, 2), (kind.GetProperty("bikes").GetInt32(), kind.GetProperty("below").GetInt32(), kind.GetProperty("above").GetInt32()));

        // As pictures, which say in words what they show.
        foreach (var (name, said) in new[] { ("history", "0.0025 in"), ("kind", "5 other bikes: half of them at most 0.0020 in") })
        {
            var answer = await workshop.Http.GetAsync($"api/v1/jobs/{second}/points/{Point}/{name}.svg");
            Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType?.MediaType);
            var picture = XDocument.Parse(await answer.Content.ReadAsStringAsync()).Root!;
            Assert.Contains(said, picture.Elements().Single(element => element.Name.LocalName == "desc").Value, StringComparison.Ordinal);
        }

        // On the page that the job leads to, on a desk and on a phone.
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{second}"));
        await screen.Place("to-history").ClickAsync();
        await Expect(screen.Place("point-history")).ToHaveCountAsync(1);
        await Expect(screen.Place("point-history").Locator(".past-results li").First).ToContainTextAsync("0.0025 in");
        await Expect(screen.Place("kind")).ToContainTextAsync("3 lie below this one, 2 above.");
        var wide = await screen.Page.EvalOnSelectorAllAsync<int[]>(".past-picture", "images => Promise.all(images.map(async image => { image.loading = 'eager'; await image.decode(); return image.naturalWidth; }))");
        Assert.Equal(2, wide.Length);
        Assert.All(wide, width => Assert.True(width > 300, "a picture did not load"));
        var critic = new PageCritic(screen.Page);
        await critic.LookAsync("history");
        Assert.True(critic.Found.Count == 0, string.Join('\n', critic.Found));
        Assert.Empty(screen.Troubles);

        // From the command line, beside the station.
        var (code, lines, _) = await RunningProgram.RunAsync(Programs.Handspun, "history", first, "--data", workshop.Data);
        Assert.Equal(0, code);
        Assert.Contains("5 other bikes: half of them at most 0.0020 in", lines, StringComparison.Ordinal);
        Assert.Contains($"(job {first})", lines, StringComparison.Ordinal);
        var (_, json, _) = await RunningProgram.RunAsync(Programs.Handspun, "history", first, "--data", workshop.Data, "--json");
        Assert.True(JsonElement.DeepEquals(history, JsonDocument.Parse(json).RootElement), json);
    }

    [Fact]
    public async Task History_ThatIsNotThere_IsASentence()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();

        await Problem.IsAsync(await workshop.Http.GetAsync("api/v1/jobs/1999-0001/history"), 404, "There is no job '1999-0001'");
        await Problem.IsAsync(await workshop.Http.GetAsync($"api/v1/jobs/{job}/points/{Point}/history.svg"), 404, $"has no result at point '{Point}'");
        await TypeAsync(workshop, job, 0.001);
        await Problem.IsAsync(await workshop.Http.GetAsync($"api/v1/jobs/{job}/points/{Point}/kind.svg"), 404, "Fewer than 5 other bikes of this make and model were measured");

        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}/history"));
        await Expect(screen.Page.GetByText("with a VIN or a plate, the bike's jobs come together here")).ToBeVisibleAsync();
        await Expect(screen.Place("kind")).ToHaveCountAsync(0);
        var (code, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, "history", "1999-0001", "--data", workshop.Data);
        Assert.Equal(1, code);
        Assert.StartsWith("There is no job '1999-0001'", errors, StringComparison.Ordinal);
    }

    private static async Task<string> MeasuredAsync(Workshop workshop, string plate, double inches)
    {
        var answer = await workshop.Http.PostAsJsonAsync("api/v1/jobs", new { make = "Aldermoor", model = "Corvid 1200", year = 2004, plate, title = "Cams" });
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var job = (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("job").GetString()!;
        await TypeAsync(workshop, job, inches);
        return job;
    }

    private static async Task TypeAsync(Workshop workshop, string job, double inches)
    {
        var highest = inches.ToString("0.0000", CultureInfo.InvariantCulture) + " in";
        var answer = await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points/{Point}/entries", new { highest, lowest = "0 in", tool = "dial indicator", division = "0.0005 in", by = "A. Nobody" });
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
    }
}

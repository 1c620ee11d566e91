using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>A crank that is measured at both ends, each with a gauge and an index of its own.</summary>
public sealed class BothEndsTests(Browser browser) : IClassFixture<Browser>
{
    private static readonly object Measures = new
    {
        drive_side_from_bearing = "60 mm",
        pinion_side_from_bearing = "40 mm",
        between_bearings = "120 mm",
        division = "1 mm",
        crankpin_deg = "30",
        crankpin_division_deg = "5",
    };

    // Both shafts are off toward the crankpin, by 0.03 mm at 60 mm and 0.02 mm at 40 mm from their bearings: by similar triangles their
    // lines stand at 1 mm in a metre to each other.
    [Fact]
    public async Task BothEnds_MeasuredFromOneIndex_SayOnTheJobsPageHowTheFlywheelsStand()
    {
        await using var workshop = new Workshop { Profile = "labelled-index" };
        Directory.CreateDirectory(Path.Combine(workshop.Data, "profiles"));
        await File.WriteAllTextAsync(Path.Combine(workshop.Data, "profiles", "labelled-index.toml"), IndexedProfile.Text);
        var drivePort = Path.Combine(workshop.Folder, "drive-port");
        await workshop.StartGaugeAsync(more: Shaft(0.02));
        await using var drive = RunningProgram.Start(Programs.VirtualGauge, ["--link", drivePort, "--seed", "2", .. Shaft(0.03)]);
        await drive.LineAsync("port ");
        await workshop.StartStationAsync("--unit", "mm", "--gauge", $"drive=labelled-index@{drivePort}");
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/gauges")).EnumerateArray().All(gauge => gauge.GetProperty("state").GetString() == "reading"));
        var job = await workshop.OpenJobAsync();
        Assert.StartsWith("Measure the runout of both shaft ends", await ReasonAsync(workshop, job), StringComparison.Ordinal);

        await MeasureAsync(workshop, job, "pinion-runout", "pinion", () => workshop.TellGaugeAsync("turn 4"));
        Assert.StartsWith("The drive side is still to be measured", await ReasonAsync(workshop, job), StringComparison.Ordinal);
        await MeasureAsync(workshop, job, "drive-side-runout", "drive", () => drive.TellAsync("turn 4"));
        Assert.StartsWith("Type where the indicators stood", await ReasonAsync(workshop, job), StringComparison.Ordinal);

        // A length without its unit is refused on the page, and what was typed stays.
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}"));
        await screen.Page.FillAsync("#drive_side_from_bearing", "60 mm");
        await screen.Page.FillAsync("#pinion_side_from_bearing", "40 mm");
        await screen.Page.FillAsync("#between_bearings", "120");
        await screen.Page.FillAsync("#division", "1 mm");
        await screen.Page.ClickAsync("#crank button[type=submit]");
        await Expect(screen.Page.Locator("#crank [data-answer]")).ToContainTextAsync("Give the length with its unit");
        await Expect(screen.Page.Locator("#between_bearings")).ToHaveValueAsync("120");

        var answer = await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/crank", Measures);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var crank = await answer.Content.ReadFromJsonAsync<JsonElement>();
        Assert.Equal(JsonValueKind.Null, crank.GetProperty("reason").ValueKind);
        var (kink, u95) = (crank.GetProperty("kink_mm_per_m").GetDouble(), crank.GetProperty("kink_u95_mm_per_m").GetDouble());
        Assert.InRange(1.0, kink - u95, kink + u95);
        Assert.InRange(u95, 0, 0.3);
        Assert.InRange(crank.GetProperty("kink_toward_deg").GetDouble(), 20, 40);

        await screen.Page.ReloadAsync();
        await Expect(screen.Place("crank-sentence")).ToContainTextAsync("the flywheels stand open");
        await Expect(screen.Place("crank-sentence")).ToContainTextAsync("Truing a crank is work for a specialist");
        await Expect(screen.Page.Locator("#between_bearings")).ToHaveValueAsync("120.0 mm");

        // After a restart all of it is there.
        Assert.Equal(0, await workshop.Station.StopAsync());
        await workshop.StartStationAsync("--unit", "mm", "--gauge", $"drive=labelled-index@{drivePort}");
        Assert.Equal(kink, (await workshop.GetAsync($"api/v1/jobs/{job}/crank")).GetProperty("kink_mm_per_m").GetDouble());
    }

    [Fact]
    public async Task CrankAndPoints_ThatCannotBe_AreAnsweredWithASentence()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();

        Task<HttpResponseMessage> Put(string to, params (string Key, string Value)[] changed)
        {
            var measures = JsonSerializer.SerializeToElement(Measures).EnumerateObject().ToDictionary(key => key.Name, key => key.Value.GetString()!);
            foreach (var (key, value) in changed)
            {
                measures[key] = value;
            }

            return workshop.Http.PutAsJsonAsync($"api/v1/jobs/{to}/crank", measures);
        }

        await Problem.IsAsync(await Put("1999-0001"), 404, "There is no job '1999-0001'");
        await Problem.IsAsync(await workshop.Http.GetAsync("api/v1/jobs/1999-0001/crank"), 404, "There is no job '1999-0001'");
        await Problem.IsAsync(await Put(job, ("between_bearings", "120")), 400, "between_bearings '120' is no length. Give the length with its unit");
        await Problem.IsAsync(await Put(job, ("between_bearings", "-120 mm")), 400, "is no length");
        await Problem.IsAsync(await Put(job, ("between_bearings", "2000 mm")), 400, "less than a metre");
        await Problem.IsAsync(await Put(job, ("division", "0 mm")), 400, "Give the division of the tool");
        await Problem.IsAsync(await Put(job, ("pinion_side_from_bearing", "0 mm")), 400, "Give the distance of the plunger from the middle of the bearing");
        await Problem.IsAsync(await Put(job, ("crankpin_deg", "up")), 400, "is no angle");
        await Problem.IsAsync(await Put(job, ("crankpin_deg", "360")), 400, "from 0 to less than 360");
        await Problem.IsAsync(await Put(job, ("crankpin_division_deg", "")), 400, "division of the degree wheel");
        await Problem.IsAsync(await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/crank", new { between_bearings = "120 mm" }), 400, "division is missing. Give the length with its unit");
        await Problem.IsAsync(await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points", new { point = "fork-seal" }), 400, "There is no point 'fork-seal' that can be measured: give one of pinion-runout");
        await Problem.IsAsync(await workshop.Http.PostAsJsonAsync("api/v1/jobs/1999-0001/points", new { point = "pinion-runout" }), 404, "There is no job '1999-0001'");

        // Nothing of all that was kept; a point that is there already stays as it is.
        Assert.Equal(JsonValueKind.Null, (await workshop.GetAsync($"api/v1/jobs/{job}/crank")).GetProperty("between_bearings_mm").ValueKind);
        var same = await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points", new { point = "pinion-runout" });
        Assert.Equal(2, (await same.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("points").GetArrayLength());
        Assert.Contains((await workshop.GetAsync("api/v1/points")).EnumerateArray(), point => point.GetProperty("point").GetString() == "drive-side-runout");
    }

    private static string[] Shaft(double offCentre) =>
        ["--speak", "text-labelled", "--index", "--off-centre-mm", offCentre.ToString(System.Globalization.CultureInfo.InvariantCulture), "--toward-deg", "30"];

    private static async Task<string?> ReasonAsync(Workshop workshop, string job) =>
        (await workshop.GetAsync($"api/v1/jobs/{job}/crank")).GetProperty("reason").GetString();

    private static async Task MeasureAsync(Workshop workshop, string job, string point, string gauge, Func<Task> turn)
    {
        var answer = await workshop.Http.PostAsJsonAsync("api/v1/bay/point", new { job, point, gauge, cautions_read = true });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        await turn();
        await Until.TrueAsync(
            async () => (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("points").EnumerateArray()
                .Single(each => each.GetProperty("point").GetString() == point).GetProperty("records").GetArrayLength() == 1,
            () => $"{point} got no record.\n{workshop.Station.Errors}");
    }
}

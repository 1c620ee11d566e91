using System.Net;
using System.Net.Http.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>Two gauges on the two ends of one shaft, turned once.</summary>
public sealed class SeveralGaugesTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task ShaftWithAGaugeOnEachEnd_TurnedOnce_GivesARecordOfEachEndWithTheSameMark()
    {
        await using var workshop = new Workshop();
        var drivePort = Path.Combine(workshop.Folder, "drive-port");
        await workshop.StartGaugeAsync(more: ["--turns", "7", "--turns-per-second", "0.5"]);
        await using var driveGauge = RunningProgram.Start(Programs.VirtualGauge, ["--link", drivePort, "--tir-mm", "0.04", "--seed", "5", "--turns", "7", "--turns-per-second", "0.5"]);
        await driveGauge.LineAsync("port ");
        await workshop.StartStationAsync("--gauge", $"drive=text-line@{drivePort}");
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();

        // Which of two gauges sits on a point has to be said.
        var unsaid = await workshop.Http.PostAsJsonAsync("api/v1/bay/point", new { job, point = "pinion-runout", cautions_read = true });
        Assert.Equal(HttpStatusCode.Conflict, unsaid.StatusCode);
        Assert.Contains("'drive', 'pinion'", await unsaid.Content.ReadAsStringAsync(), StringComparison.Ordinal);

        // On the job's page it is chosen beside the button.
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}"));
        await screen.Place("measure-gauge").First.SelectOptionAsync("pinion");
        await screen.Place("measure-point").First.ClickAsync();
        await screen.Page.WaitForURLAsync("**/bay");
        Assert.Equal(HttpStatusCode.OK, (await workshop.Http.PostAsJsonAsync("api/v1/bay/point", new { job, point = "drive-side-runout", gauge = "drive" })).StatusCode);

        // The bay's screen goes to the point that was given last, and shows the other one beside it.
        await Expect(screen.Place("bay-point")).ToHaveTextAsync("Drive-side shaft runout");
        await Expect(screen.Place("bay-places").GetByRole(Microsoft.Playwright.AriaRole.Link)).ToHaveCountAsync(2);
        await screen.Place("bay-places").GetByText("Pinion shaft runout").ClickAsync();
        await Expect(screen.Place("bay-point")).ToHaveTextAsync("Pinion shaft runout");

        await Task.WhenAll(workshop.TellGaugeAsync("turn"), driveGauge.TellAsync("turn"));
        foreach (var gauge in new[] { "pinion", "drive" })
        {
            await Until.TrueAsync(async () => (await workshop.GetAsync($"api/v1/bay?gauge={gauge}")).GetProperty("phase").GetString() == "running");
        }

        await screen.Place("bay-mark").ClickAsync();
        await Until.TrueAsync(async () => (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("points").EnumerateArray().All(point => point.GetProperty("records").GetArrayLength() == 1));

        var points = (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("points").EnumerateArray().ToDictionary(
            point => point.GetProperty("point").GetString()!,
            point => point.GetProperty("records")[0]);
        foreach (var (point, gauge, tir) in new[] { ("pinion-runout", "pinion", Workshop.TrueTirMillimetres), ("drive-side-runout", "drive", 0.04) })
        {
            var record = points[point];
            Assert.Equal(gauge, record.GetProperty("gauge").GetString());
            Assert.Equal("mark", record.GetProperty("angle_reference").GetString());
            Assert.InRange(tir, record.GetProperty("tir_mm").GetDouble() - record.GetProperty("tir_u95_mm").GetDouble(), record.GetProperty("tir_mm").GetDouble() + record.GetProperty("tir_u95_mm").GetDouble());
        }

        // Both gauges have their points again after a restart.
        Assert.Equal(0, await workshop.Station.StopAsync());
        await workshop.StartStationAsync("--gauge", $"drive=text-line@{drivePort}");
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("at_work").GetArrayLength() == 2);
    }
}

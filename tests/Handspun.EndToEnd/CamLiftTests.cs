using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>Both lobes of a cylinder measured with an indicator on the lifter and a toothed disc on the crank, and laid beside the cam's card.</summary>
/// <remarks>Alone on the machine: a gauge that gets no time for a third of a second lets several teeth pass unseen, and nothing can tell how the crank turned meanwhile.</remarks>
[Collection(AloneOnTheMachine.Name)]
public sealed class CamLiftTests(Browser browser) : IClassFixture<Browser>
{
    private const int Teeth = 12;
    private const double LiftMillimetres = 8.5;
    private const double IntakeCamDegrees = 54 + 90; // after top dead centre, which is at 180 degrees of the crank here
    private const double ExhaustCamDegrees = -56 + 90;

    [Fact]
    public async Task Lobes_TurnedByHand_AreRecordedAndLaidBesideTheCard()
    {
        await using var workshop = new Workshop();
        Directory.CreateDirectory(Path.Combine(workshop.Data, "profiles"));
        await File.WriteAllTextAsync(Path.Combine(workshop.Data, "profiles", "labelled-disc.toml"), IndexedProfile.Text);
        var (intakePort, exhaustPort) = (Path.Combine(workshop.Folder, "intake"), Path.Combine(workshop.Folder, "exhaust"));
        await using var intake = await LifterAsync(intakePort, IntakeCamDegrees, 3);
        await using var exhaust = await LifterAsync(exhaustPort, ExhaustCamDegrees, 4);
        await workshop.StartStationAsync("--gauge", $"intake=labelled-disc@{intakePort}", "--gauge", $"exhaust=labelled-disc@{exhaustPort}");
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/gauges")).EnumerateArray().Count(gauge => gauge.GetProperty("state").GetString() == "reading") == 2);
        await RestOnTheCamAsync(workshop, intake, exhaust);
        var job = await workshop.OpenJobAsync();
        foreach (var point in new[] { "cam-lift-front-intake", "cam-lift-front-exhaust" })
        {
            Assert.Equal(HttpStatusCode.OK, (await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points", new { point })).StatusCode);
            var setup = await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/points/{point}/setup", new { rocker_ratio = "1.6", rocker_ratio_u95 = "0.02", angle_of = "crank", pulses = "12", tooth = "missing", stop = "150", other_stop = "210", angle_u95 = "0.5" });
            Assert.True(setup.StatusCode == HttpStatusCode.OK, await setup.Content.ReadAsStringAsync());
        }

        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "bay"));
        var first = await MeasureAsync(workshop, job, "cam-lift-front-intake", "intake", intake);
        await MeasureAsync(workshop, job, "cam-lift-front-exhaust", "exhaust", exhaust);

        Assert.Equal("lift-curve", first.GetProperty("kind").GetString());
        var (lift, doubt) = (first.GetProperty("lobe_lift_mm").GetDouble(), first.GetProperty("lobe_lift_u95_mm").GetDouble());
        Assert.InRange(LiftMillimetres, lift - doubt, lift + doubt);
        Assert.Equal(1.6 * lift, first.GetProperty("valve_lift_mm").GetDouble(), 4);

        // The journal, replayed, says the same.
        var id = first.GetProperty("record").GetString()!;
        var journal = Path.Combine(workshop.Folder, "journal.jsonl");
        await File.WriteAllBytesAsync(journal, await workshop.Http.GetByteArrayAsync($"api/v1/records/{id}/journal.jsonl"));
        var (code, output, errors) = await RunningProgram.RunAsync(Programs.Handspun, "analyze", "--json", journal);
        Assert.True(code == 0, errors);
        var replayed = JsonDocument.Parse(output).RootElement;
        Assert.Equal(lift, replayed.GetProperty("max_lift_mm").GetDouble(), 1e-5);
        Assert.Equal(first.GetProperty("duration_crank_deg").GetDouble(), replayed.GetProperty("duration_deg").GetDouble(), 0.01);

        // What both do together is there without another touch; the card beside it when it is typed.
        var timing = await NewestAsync(workshop, job, "cam-timing-front");
        Assert.True(timing.GetProperty("separation_cam_deg").ValueKind == JsonValueKind.Number, timing.GetRawText());
        Assert.Equal(110, timing.GetProperty("separation_cam_deg").GetDouble(), 2 + timing.GetProperty("separation_cam_u95_deg").GetDouble());
        Assert.Equal(108, timing.GetProperty("intake_centreline_deg").GetDouble(), 2 + timing.GetProperty("intake_centreline_u95_deg").GetDouble());
        Assert.Equal(JsonValueKind.Null, timing.GetProperty("verdict").ValueKind);
        var card = await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/points/cam-timing-front/setup", new { intake_centreline = "108", exhaust_centreline = "112", separation = "110", intake_opens = "60", allowed = "4" });
        Assert.True(card.StatusCode == HttpStatusCode.OK, await card.Content.ReadAsStringAsync());
        timing = await NewestAsync(workshop, job, "cam-timing-front");
        Assert.Equal("over", timing.GetProperty("verdict").GetString());   // the intake does not open 60 degrees before the top
        Assert.Contains("Intake opens before top dead centre: card 60.0°", timing.GetProperty("sentence").GetString(), StringComparison.Ordinal);
        Assert.StartsWith("<?xml", await workshop.Http.GetStringAsync($"api/v1/records/{timing.GetProperty("record").GetString()}/picture.svg"), StringComparison.Ordinal);

        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}").ToString());
        var section = screen.Page.Locator("#cam-timing-front");
        await Expect(section.GetByTestId("record-tir").First).ToContainTextAsync("°");
        await Expect(section.GetByTestId("record-verdict").First).ToHaveAttributeAsync("data-verdict", "over");
        await Expect(screen.Page.Locator("#cam-lift-front-intake").GetByTestId("record-tir")).ToHaveTextAsync((lift / 25.4).ToString("0.0000", CultureInfo.InvariantCulture) + " in");
        Assert.Empty(screen.Troubles);
    }

    [Fact]
    public async Task Lift_WithoutAnyAngle_IsARecordThatSaysWhatToFit()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points", new { point = "cam-lift-rear-intake" });
        var refused = await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/points/cam-lift-rear-intake/setup", new { rocker_ratio = "16" });
        Assert.Contains("mostly 1.5 to 1.8", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);

        await AssignAsync(workshop, job, "cam-lift-rear-intake", "pinion");
        await workshop.TellGaugeAsync("cam 4");
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("phase").GetString() == "running");
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("progress").GetProperty("readings").GetInt32() > 150);
        Assert.Contains("Nothing tells the angle yet", (await workshop.GetAsync("api/v1/bay")).GetProperty("progress").GetProperty("sentence").GetString(), StringComparison.Ordinal);
        await workshop.Http.PostAsync("api/v1/bay/finish", null);

        await Until.TrueAsync(async () => (await RecordsAsync(workshop, job, "cam-lift-rear-intake")).Count == 1);
        var record = (await RecordsAsync(workshop, job, "cam-lift-rear-intake"))[0];
        Assert.Equal("incomplete", record.GetProperty("status").GetString());
        Assert.Contains("fit an index or an encoder", record.GetProperty("missing").GetString(), StringComparison.Ordinal);
    }

    private static async Task<RunningProgram> LifterAsync(string port, double camDegrees, int seed)
    {
        var gauge = RunningProgram.Start(Programs.VirtualGauge, [
            "--link", port, "--speak", "text-labelled", "--index", "--teeth", Teeth.ToString(CultureInfo.InvariantCulture), "--seed", seed.ToString(CultureInfo.InvariantCulture),
            "--cam-lift-mm", LiftMillimetres.ToString(CultureInfo.InvariantCulture), "--cam-centre-deg", camDegrees.ToString(CultureInfo.InvariantCulture), "--rate", "100", "--turns-per-second", "0.5",
        ]);
        await gauge.LineAsync("port ");
        return gauge;
    }

    // The plungers are set on the lifters before anything is captured.
    private static async Task RestOnTheCamAsync(Workshop workshop, params RunningProgram[] lifters)
    {
        foreach (var lifter in lifters)
        {
            await lifter.TellAsync("cam 0.2");
        }

        var before = await CountAsync();
        await Until.TrueAsync(async () => await CountAsync() > before + 500);

        async Task<long> CountAsync() => (await workshop.GetAsync("api/v1/gauges")).EnumerateArray().Where(gauge => gauge.GetProperty("gauge").GetString() != "pinion").Min(gauge => gauge.GetProperty("readings").GetInt64());
    }

    private static async Task AssignAsync(Workshop workshop, string job, string point, string gauge)
    {
        var answer = await workshop.Http.PostAsJsonAsync("api/v1/bay/point", new { job, point, gauge, cautions_read = true });
        Assert.True(answer.StatusCode == HttpStatusCode.OK, await answer.Content.ReadAsStringAsync());
    }

    private static async Task<JsonElement> MeasureAsync(Workshop workshop, string job, string point, string gauge, RunningProgram lifter)
    {
        await AssignAsync(workshop, job, point, gauge);
        await lifter.TellAsync("cam 8");
        await Until.TrueAsync(async () => (await RecordsAsync(workshop, job, point)).Count == 1, () => $"{point} was not recorded.\n{string.Join('\n', workshop.Station.Output)}\n{workshop.Station.Errors}");
        var record = (await RecordsAsync(workshop, job, point))[0];
        Assert.True(record.GetProperty("status").GetString() == "ok", record.GetProperty("sentence").GetString());
        return record;
    }

    private static async Task<JsonElement> NewestAsync(Workshop workshop, string job, string point)
    {
        await Until.TrueAsync(async () => (await RecordsAsync(workshop, job, point)).Count > 0);
        return (await RecordsAsync(workshop, job, point))[0];
    }

    private static async Task<IReadOnlyList<JsonElement>> RecordsAsync(Workshop workshop, string job, string point) =>
    [
        .. (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("points").EnumerateArray()
            .Where(found => found.GetProperty("point").GetString() == point).SelectMany(found => found.GetProperty("records").EnumerateArray()),
    ];
}

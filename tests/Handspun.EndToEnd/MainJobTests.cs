using System.Globalization;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>The main job through real parts: virtual gauge, pseudo-terminal, station, foreign MQTT client, Chromium, and the store after a restart.</summary>
public sealed class MainJobTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task ShaftTurnedOnce_IsOnTheBrokerOnThePageAndInTheStoreAfterARestart()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        await using var listener = await Listener.SubscribeAsync(workshop.BrokerPort);
        var job = await workshop.OpenJobAsync();

        // The mechanic: read the cautions on the job's page, press the button, turn the wheel.
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}"));
        await Expect(screen.Page.GetByText("battery is disconnected")).ToBeVisibleAsync();
        await screen.Place("measure-point").First.ClickAsync();
        await screen.Page.WaitForURLAsync("**/bay");
        await Expect(screen.Place("bay-phase")).ToContainTextAsync("Waiting");
        await workshop.TellGaugeAsync("turn");
        await Expect(screen.Place("bay-phase")).ToContainTextAsync("Turning", new() { Timeout = 20_000 });
        await workshop.UntilRecordsAsync(job, 1);

        // The record.
        var record = (await workshop.RecordsAsync(job))[0];
        Assert.Equal("ok", record.GetProperty("status").GetString());
        Assert.Equal("within", record.GetProperty("verdict").GetString());   // 0.003 in: common practice, no source
        var (tir, uncertainty) = (record.GetProperty("tir_mm").GetDouble(), record.GetProperty("tir_u95_mm").GetDouble());
        Assert.InRange(Workshop.TrueTirMillimetres, tir - uncertainty, tir + uncertainty);
        Assert.True(record.GetProperty("turns").GetDouble() >= 3);

        // The page says the same.
        await Expect(screen.Place("bay-verdict")).ToContainTextAsync("Within", new() { Timeout = 20_000 });
        await Expect(screen.Place("bay-tir")).ToHaveTextAsync((tir / 25.4).ToString("0.0000", CultureInfo.InvariantCulture));

        // The foreign client saw the readings, the progress and the result, the last one retained for who comes later.
        await Until.TrueAsync(() => listener.Messages("/result").Count > 0);
        Assert.NotEmpty(listener.Messages("gauges/pinion/readings"));
        Assert.Contains(listener.Messages("/progress"), message => message.Payload.GetProperty("phase").GetString() == "running");
        await using var later = await Listener.SubscribeAsync(workshop.BrokerPort, "mqttv311");
        await Until.TrueAsync(() => later.Messages($"jobs/{job}/points/pinion-runout/result").Any(message => message.Retained));
        var retained = later.Messages($"jobs/{job}/points/pinion-runout/result").First(message => message.Retained).Payload;
        Assert.Equal(tir, retained.GetProperty("tir_mm").GetDouble());
        Assert.True(later.Messages("gauges/pinion/state")[0].Retained);

        // The job's page shows the record with its picture.
        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}").ToString());
        await Expect(screen.Place("job-record")).ToHaveCountAsync(1);
        await Expect(screen.Place("record-verdict")).ToContainTextAsync("Within");
        var id = record.GetProperty("record").GetString();
        Assert.StartsWith("<?xml", await workshop.Http.GetStringAsync($"api/v1/records/{id}/picture.svg"), StringComparison.Ordinal);
        var wide = await screen.Page.EvalOnSelectorAsync<int>(".record-picture img", "async image => { image.loading = 'eager'; await image.decode(); return image.naturalWidth; }");
        Assert.True(wide > 300, "the picture did not load");
        Assert.Empty(screen.Troubles);

        // After a restart the record is there, in the store and on the broker.
        Assert.Equal(0, await workshop.Station.StopAsync());
        await workshop.StartStationAsync();
        Assert.Equal(tir, (await workshop.RecordsAsync(job))[0].GetProperty("tir_mm").GetDouble());
        await using var afterRestart = await Listener.SubscribeAsync(workshop.BrokerPort);
        await Until.TrueAsync(() => afterRestart.Messages($"jobs/{job}/points/pinion-runout/result").Any(message => message.Retained));
    }

    [Fact]
    public async Task BayScreen_OpenedInMidCapture_ShowsTheCapture()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync(more: ["--turns", "6", "--turns-per-second", "0.35"]);
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.MeasureAsync(job);
        await workshop.TellGaugeAsync("turn");
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("progress").GetProperty("turns").GetDouble() > 1);

        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "bay"), 360, 740);

        await Expect(screen.Place("bay-phase")).ToContainTextAsync("Turning");
        await Expect(screen.Place("bay-tir")).ToContainTextAsync("0.00");
        await Expect(screen.Place("bay-turns")).ToContainTextAsync("of 3");
        var trace = (await workshop.GetAsync("api/v1/bay")).GetProperty("trace");
        Assert.True(trace.GetProperty("t").GetArrayLength() > 100);
        await workshop.UntilRecordsAsync(job, 1);
        await Expect(screen.Place("bay-verdict")).ToContainTextAsync("Within", new() { Timeout = 20_000 });
        Assert.Empty(screen.Troubles);
    }

    [Fact]
    public async Task SecondSpin_MakesASecondRecord_TheNewestCounts_AndAnotherCanBePicked()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync(0.3302);   // 0.013 in: common practice, no source, no good
        await workshop.StartStationAsync("--unit", "mm");
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.MeasureAsync(job);
        for (var spin = 1; spin <= 2; spin++)
        {
            await workshop.TellGaugeAsync("turn");
            await workshop.UntilRecordsAsync(job, spin);
            await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/gauges"))[0].GetProperty("readings").GetInt64() > 0);
            await workshop.UntilShaftRestsAsync();
        }

        var records = await workshop.RecordsAsync(job);
        Assert.All(records, record => Assert.Equal("over", record.GetProperty("verdict").GetString()));
        Assert.Equal(records[0].GetProperty("record").GetString(), await CountingAsync(workshop, job));

        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}"), 820, 1180);
        await Expect(screen.Place("record-verdict").First).ToContainTextAsync("Over");
        await screen.Place("make-count").ClickAsync();
        await Until.TrueAsync(async () => await CountingAsync(workshop, job) == records[1].GetProperty("record").GetString());
    }

    private static async Task<string?> CountingAsync(Workshop workshop, string job) =>
        (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("points")[0].GetProperty("counting").GetString();
}

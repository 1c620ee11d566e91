using System.Net.Http.Json;
using System.Text.RegularExpressions;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>Screens that lose the station in the middle of a capture say how old what they show is, and come back by themselves.</summary>
public sealed partial class NeverLostTests(Browser browser) : IClassFixture<Browser>
{
    private static readonly string[] Same = ["bay-point", "bay-about", "bay-tir", "bay-tir-u", "bay-limit", "bay-verdict", "bay-sentence", "bay-turns", "bay-gauge-title"];

    [Fact]
    public async Task Wifi_CutInMidCapture_IsToldWithItsAge_AndTheCaptureIsThereAgainWithIt()
    {
        await using var workshop = new Workshop();
        var job = await BeginAsync(workshop, wanted: 20, "--turns", "60", "--turns-per-second", "0.2");
        await using var wifi = new Wifi(workshop.Pages);
        var screen = await browser.OpenAsync(new Uri(wifi.Pages, "bay"), 820, 1180);
        await workshop.TellGaugeAsync("turn");
        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-stage", "running", new() { Timeout = 20_000 });
        await UntilTurnedAsync(workshop, 1.5);

        await wifi.CutAsync();

        await Expect(screen.Place("bay-contact")).ToContainTextAsync(LostFor(), new() { Timeout = 20_000 });
        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-contact", "lost");
        var shown = await TurnsAsync(screen);
        await UntilTurnedAsync(workshop, shown + 0.5);   // the station goes on meanwhile
        Assert.Equal(shown, await TurnsAsync(screen));

        wifi.Mend();

        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-contact", "live", new() { Timeout = 20_000 });
        await Expect(screen.Place("bay-contact")).ToBeEmptyAsync();
        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-stage", "running");
        Assert.True(await TurnsAsync(screen) > shown + 0.4);
        var back = await TurnsAsync(screen);
        await Until.TrueAsync(async () => await TurnsAsync(screen) > back + 0.5);   // live again, not only once
        await workshop.Http.PostAsync("api/v1/bay/finish", null);
        await workshop.UntilRecordsAsync(job, 1);
        await Expect(screen.Place("bay-verdict")).ToContainTextAsync("Within", new() { Timeout = 20_000 });
    }

    [Fact]
    public async Task Browser_ThatSaysItIsOffline_ComesBackWithTheResultItMissed()
    {
        await using var workshop = new Workshop();
        var job = await BeginAsync(workshop, wanted: null);
        await using var wifi = new Wifi(workshop.Pages);
        var screen = await browser.OpenAsync(new Uri(wifi.Pages, "bay"), 390, 844);
        await Expect(screen.Place("bay-phase")).ToContainTextAsync("Waiting");

        // A browser that is told so still keeps the lines that are open; the wifi takes them from it.
        await screen.Page.Context.SetOfflineAsync(true);
        await wifi.CutAsync();
        await workshop.TellGaugeAsync("turn");
        await workshop.UntilRecordsAsync(job, 1);
        await Expect(screen.Place("bay-contact")).ToContainTextAsync(LostFor(), new() { Timeout = 20_000 });
        await Expect(screen.Place("bay-verdict")).ToBeEmptyAsync();
        wifi.Mend();
        await screen.Page.Context.SetOfflineAsync(false);

        await Expect(screen.Place("bay-verdict")).ToContainTextAsync("Within", new() { Timeout = 20_000 });
        await Expect(screen.Place("bay-contact")).ToBeEmptyAsync();
    }

    [Fact]
    public async Task Station_KilledInMidCapture_IsTold_AndTheScreenGoesOnWithTheNextOne()
    {
        await using var workshop = new Workshop();
        var job = await BeginAsync(workshop, wanted: 9, "--turns", "10", "--turns-per-second", "0.25");
        await using var wifi = new Wifi(workshop.Pages);   // only so that the address stays the same
        var screen = await browser.OpenAsync(new Uri(wifi.Pages, "bay"), 820, 1180);
        await workshop.TellGaugeAsync("turn");
        await UntilTurnedAsync(workshop, 2.2);
        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-stage", "running");

        await workshop.Station.KillAsync();

        await Expect(screen.Place("bay-contact")).ToContainTextAsync(LostFor(), new() { Timeout = 20_000 });
        await workshop.StartStationAsync();
        wifi.Station = workshop.Pages;

        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-contact", "live", new() { Timeout = 20_000 });
        await Until.TrueAsync(async () => (await workshop.RecordsAsync(job)).Any(record => record.GetProperty("ended").GetString() == "station-stopped"));
        await Expect(screen.Place("bay-point")).ToHaveTextAsync("Pinion shaft runout");

        // A shaft that still turns may have begun another capture; once it rests, the screen shows the newest record.
        await workshop.UntilShaftRestsAsync();
        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-stage", "result", new() { Timeout = 30_000 });
        var records = (await workshop.RecordsAsync(job)).Count;

        // The same page follows the next spin, and shows its record.
        await workshop.TellGaugeAsync("turn");
        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-stage", "running", new() { Timeout = 30_000 });
        await UntilTurnedAsync(workshop, 2);   // a shaft that has only just left its rest would begin another capture at once
        await workshop.Http.PostAsync("api/v1/bay/finish", null);
        await workshop.UntilRecordsAsync(job, records + 1);
        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-stage", "result", new() { Timeout = 20_000 });
    }

    [Fact]
    public async Task TwoScreens_AndOneReloadedInMidCapture_ShowTheSame()
    {
        await using var workshop = new Workshop();
        var job = await BeginAsync(workshop, wanted: null, "--turns", "6", "--turns-per-second", "0.4");
        var wall = await browser.OpenAsync(new Uri(workshop.Pages, "bay"), 1440, 900);
        var phone = await browser.OpenAsync(new Uri(workshop.Pages, "bay"), 360, 740);
        await UntilSameAsync(wall, phone, "waiting");

        await workshop.TellGaugeAsync("turn");
        await UntilTurnedAsync(workshop, 1);
        await phone.Page.ReloadAsync();
        foreach (var screen in new[] { wall, phone })
        {
            await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-stage", "running");
            await Until.TrueAsync(async () => await TurnsAsync(screen) >= 1);
        }

        await workshop.UntilRecordsAsync(job, 1);
        await UntilSameAsync(wall, phone, "result");
        var tir = (await workshop.RecordsAsync(job))[0].GetProperty("tir_mm").GetDouble();
        await Expect(wall.Place("bay-tir")).ToHaveTextAsync((tir / 25.4).ToString("0.0000", System.Globalization.CultureInfo.InvariantCulture));

        // What one of them does, the other one shows.
        await phone.Place("bay-leave").ClickAsync();
        await UntilSameAsync(wall, phone, "idle");
        Assert.Empty(wall.Troubles.Concat(phone.Troubles));
    }

    [Fact]
    public async Task Phone_FromNewBikeToVerdict_ShowsTargetsThatAGloveHits_AndNothingSticksOut()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync(more: ["--turns", "30", "--turns-per-second", "0.3"]);
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var screen = await browser.OpenAsync(workshop.Pages, 360, 640);
        await FitsAsync(screen);
        await screen.Page.GotoAsync(new Uri(workshop.Pages, "jobs/new").ToString());
        await FitsAsync(screen);
        await screen.Page.FillAsync("[name=make]", "Aldermoor");
        await screen.Page.FillAsync("[name=model]", "Corvid 1200");
        await screen.Page.FillAsync("[name=year]", "2004");
        await screen.Page.FillAsync("[name=odometer]", "18250");
        await screen.Page.FillAsync("[name=title]", "Knock at idle");
        await screen.Page.Locator("label:has([value=quick-runout])").ClickAsync();
        await screen.Page.GetByText("Open the job").ClickAsync();
        await screen.Page.WaitForURLAsync("**/jobs/2*");
        var job = screen.Page.Url.Split('/')[^1];
        await FitsAsync(screen);

        Assert.True((await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/steps/machine-ready", new { act = "tick", by = "A. Nobody" })).IsSuccessStatusCode);
        await workshop.MeasureAsync(job, wanted: 12);
        await screen.Page.GotoAsync(new Uri(workshop.Pages, "bay").ToString());
        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-stage", "waiting");
        await FitsAsync(screen);
        await workshop.TellGaugeAsync("turn");
        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-stage", "running", new() { Timeout = 20_000 });
        await UntilTurnedAsync(workshop, 3.2);
        await FitsAsync(screen);
        await screen.Place("bay-finish").ClickAsync();
        await Expect(screen.Place("bay")).ToHaveAttributeAsync("data-stage", "result", new() { Timeout = 20_000 });
        await Expect(screen.Place("bay-verdict")).ToBeInViewportAsync();
        await Expect(screen.Place("bay-tir")).ToBeInViewportAsync();
        await FitsAsync(screen);
        Assert.Empty(screen.Troubles);
    }

    // A bay that waits for the shaft of a new job to turn.
    private static async Task<string> BeginAsync(Workshop workshop, double? wanted, params string[] gauge)
    {
        await workshop.StartGaugeAsync(more: gauge);
        await workshop.StartStationAsync();
        await workshop.UntilGaugeIsAsync("reading");
        var job = await workshop.OpenJobAsync();
        await workshop.MeasureAsync(job, wanted: wanted);
        return job;
    }

    // WCAG 2.2, success criterion 2.5.5 (Target Size, Enhanced): 44 by 44 CSS pixels, links within a sentence excepted.
    private static async Task FitsAsync(PageWithTroubles screen)
    {
        var found = await screen.Page.EvaluateAsync<string[]>(
            """
            () => {
              const wide = document.documentElement.scrollWidth > innerWidth ? [`${document.documentElement.scrollWidth} pixels wide`] : [];
              const shown = [...document.querySelectorAll('button, a.button, select, input:not([type=hidden]), summary, nav a')].filter((one) => one.checkVisibility({ visibilityProperty: true }));
              const boxOf = (one) => (['checkbox', 'radio', 'file'].includes(one.type) ? (one.closest('label') ?? one) : one).getBoundingClientRect();
              return [...wide, ...shown.filter((one) => Math.min(boxOf(one).width, boxOf(one).height) < 44).map((one) => `${boxOf(one).width} by ${boxOf(one).height}: ${one.outerHTML.slice(0, 120)}`)];
            }
            """);
        Assert.True(found.Length == 0, $"{screen.Page.Url}: {string.Join('\n', found)}");
    }

    private static Task UntilTurnedAsync(Workshop workshop, double turns) => Until.TrueAsync(
        async () => (await workshop.GetAsync("api/v1/bay")).GetProperty("progress").GetProperty("count").GetDouble() > turns,
        () => $"The shaft did not make {turns} turns.");

    private static async Task<double> TurnsAsync(PageWithTroubles screen)
    {
        var words = await screen.Place("bay-turns").TextContentAsync();
        return double.TryParse(words?.Split(' ')[0], System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out var turns) ? turns : 0;
    }

    private static Task UntilSameAsync(PageWithTroubles one, PageWithTroubles other, string stage)
    {
        (string First, string Second) seen = default;
        return Until.TrueAsync(
            async () =>
            {
                seen = (await FaceAsync(one), await FaceAsync(other));
                return seen.First == seen.Second && seen.First.StartsWith($"{stage}:", StringComparison.Ordinal);
            },
            () => $"The screens differ, or are not at '{stage}':\n{seen.First}\n{seen.Second}");
    }

    private static async Task<string> FaceAsync(PageWithTroubles screen) => await screen.Page.EvaluateAsync<string>(
        "(names) => { const at = (name) => document.querySelector(`[data-testid=${name}]`); return `${at('bay').dataset.stage}: ${names.map((name) => at(name).textContent).join(' | ')}`; }",
        Same);

    [GeneratedRegex("^No contact with the station for \\d+ s\\. What stands here is that old\\.$")]
    private static partial Regex LostFor();
}

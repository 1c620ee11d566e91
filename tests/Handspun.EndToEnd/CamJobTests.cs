using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Handspun.EndToEnd.Parts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>The shipped plan of a cam job, from a new bike to the printed report, through the browser, the bay and two virtual gauges; nobody helps.</summary>
public sealed partial class CamJobTests(Browser browser) : IClassFixture<Browser>
{
    private const string Plan = "cam-job";
    private const string Name = "A. Nobody";
    private const double EndPlayMillimetres = 0.12;
    private const double RingMillimetres = 21.4;
    private const double BoreMillimetres = RingMillimetres + 0.012;
    private const double BodyInches = 0.8420;

    private static readonly string[] Cylinders = ["front-intake", "front-exhaust", "rear-intake", "rear-exhaust"];

    [Fact]
    public async Task CamJob_FromANewBikeToThePrintedReport_GoesThroughWithEveryPointMeasured()
    {
        await using var workshop = new Workshop();
        Directory.CreateDirectory(workshop.Data);
        await File.WriteAllTextAsync(Path.Combine(workshop.Data, "shop.toml"), "step_after_s = 2\n");
        await workshop.StartGaugeAsync(more: ["--end-play-mm", Told(EndPlayMillimetres)]);
        var borePort = Path.Combine(workshop.Folder, "bore-port");
        await using var bore = RunningProgram.Start(Programs.VirtualGauge, ["--link", borePort, "--seed", "2", "--bore-mm", Told(BoreMillimetres), "--bore-off-mm", Told(BoreMillimetres - RingMillimetres)]);
        await bore.LineAsync("port ");
        await workshop.StartStationAsync("--gauge", $"bore=text-line@{borePort}");
        await Until.TrueAsync(async () => (await workshop.GetAsync("api/v1/gauges")).EnumerateArray().All(gauge => gauge.GetProperty("state").GetString() == "reading"));

        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "jobs/new"));
        var job = await OpenTheJobAsync(screen);
        var hand = new Hand(workshop, screen, job, bore);

        // The pinion waits for the machine to be made safe: the page says so and has no button.
        await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}/steps/pinion-runout").ToString());
        await Expect(screen.Place("waits-for")).ToContainTextAsync("Held back until 'Machine ready and safe' is done");
        await Expect(screen.Place("measure-point")).ToHaveCountAsync(0);

        // The page names the next step until nothing is left; each is done where it leads.
        var done = new List<string>();
        for (var step = await NextAsync(hand); step is not null; step = await NextAsync(hand))
        {
            Assert.DoesNotContain(step, done);
            done.Add(step);
            await DoAsync(hand, step);
        }

        // Every step of the plan was led to, but for the three bores that the bay went on to by itself, and every point has a result.
        var told = await workshop.GetAsync($"api/v1/jobs/{job}");
        var steps = told.GetProperty("steps").EnumerateArray().ToList();
        Assert.All(steps, step => Assert.Equal("done", step.GetProperty("state").GetString()));
        Assert.Equal(Cylinders[1..].Select(cylinder => $"lifter-bore-{cylinder}"), steps.Select(step => step.GetProperty("step").GetString()!).Except(done));
        Assert.Equal("within", steps.Single(step => step.GetProperty("step").GetString() == "pinion-runout").GetProperty("gate").GetProperty("reason").GetString());
        Assert.All(told.GetProperty("points").EnumerateArray(), point => Assert.NotEqual(JsonValueKind.Null, point.GetProperty("counting").ValueKind));
        await EveryResultIsTrueAsync(workshop, job);

        // What goes back where, and the job is closed with nothing left to explain.
        await NoteAPartAsync(hand);
        await hand.GoAsync("");
        await screen.Page.GetByText("Close the job").First.ClickAsync();
        await screen.Page.FillAsync("#close-by", Name);
        await screen.Page.GetByRole(AriaRole.Button, new() { Name = "Close the job" }).ClickAsync();
        await Expect(screen.Place("closed")).ToContainTextAsync("Closed");

        // The report, on the screen and on paper.
        await screen.Place("report").ClickAsync();
        await Expect(screen.Place("report-front")).ToContainTextAsync("Aldermoor Corvid 1200");
        await Expect(screen.Place("report-front")).ToContainTextAsync("R. Invented");
        await Expect(screen.Place("report-result")).ToHaveCountAsync(16);
        await Expect(screen.Page.GetByText("oil hole to the front")).ToBeVisibleAsync();
        var pdf = Path.Combine(workshop.Folder, "report.pdf");
        var address = await screen.Place("report-pdf").GetAttributeAsync("href");
        await File.WriteAllBytesAsync(pdf, await workshop.Http.GetByteArrayAsync(address![1..]));
        await PaperIsWholeAsync(pdf);
        Assert.Empty(screen.Troubles);
    }

    private static async Task<string> OpenTheJobAsync(PageWithTroubles screen)
    {
        foreach (var (field, text) in new[] { ("make", "Aldermoor"), ("model", "Corvid 1200"), ("year", "2004"), ("odometer", "18250"), ("plate", "NN 71 204"), ("title", "Cams and tensioners"), ("customer", "R. Invented") })
        {
            await screen.Page.FillAsync($"#{field}", text);
        }

        await screen.Page.CheckAsync($"[name=plan][value={Plan}]");
        await screen.Page.GetByText("Open the job").ClickAsync();
        await Expect(screen.Place("step-line")).ToHaveCountAsync(24);
        return screen.Page.Url.Split('/')[4];
    }

    // Goes to where the job's page leads next; null where the plan is through.
    private static async Task<string?> NextAsync(Hand hand)
    {
        await hand.GoAsync("");
        var link = hand.Screen.Place("next-step");
        if (await link.CountAsync() == 0)
        {
            return null;
        }

        await link.ClickAsync();
        await Expect(hand.Screen.Place("step")).ToBeVisibleAsync();
        return hand.Screen.Page.Url.Split('/')[^1];
    }

    private static Task DoAsync(Hand hand, string step) => step switch
    {
        "machine-ready" or "pushrods-free" or "timing-marks-before" or "cam-drive-off" or "timing-marks-after" or "fasteners" or "pushrods-set" => TickAsync(hand),
        "magnet" => NoteAsync(hand, "Debris", "engine drain", "grey paste, no slivers"),
        "tensioners" => NoteAsync(hand, "Wear", "outer", "grooves a nail catches in"),
        "lifters" or "cam-bearings" or "oil-pump" => NoteAsync(hand, "As it should be", null, null),
        "pinion-runout" => MeasureAsync(hand, step, "pinion", "turn"),
        "cam-end-play" => MeasureAsync(hand, step, "pinion", "push-pull"),
        "lifter-bore-front-intake" => RockTheBoresAsync(hand),
        "tensioner-shoe-thickness" => TypeAsync(hand, step, ("value", "0.118"), ("tool", "depth gauge"), ("division", "0.001")),
        "pump-rotor-tip" => TypeAsync(hand, step, ("goes", "0.002"), ("does_not_go", "0.003"), ("tool", "feeler gauge")),
        _ when step.StartsWith("lifter-body-", StringComparison.Ordinal) => TypeAsync(hand, step, ("value", Told(BodyInches)), ("tool", "micrometer"), ("division", "0.0001")),
        _ => throw new InvalidOperationException($"The plan leads to '{step}', and nobody said what to do there."),
    };

    private static async Task TickAsync(Hand hand)
    {
        await hand.Screen.Page.FillAsync("#tick-by", Name);
        await hand.SendAsync(hand.Screen.Page.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }));
    }

    private static async Task NoteAsync(Hand hand, string sign, string? place, string? words)
    {
        var page = hand.Screen.Page;
        await page.GetByText(sign, new() { Exact = true }).ClickAsync();
        if (place is not null)
        {
            await page.GetByText(place, new() { Exact = true }).ClickAsync();
            await page.FillAsync("#finding-words", words!);
        }

        await page.FillAsync("#finding-by", Name);
        await hand.SendAsync(page.GetByRole(AriaRole.Button, new() { Name = "Note it", Exact = true }));
        await Expect(hand.Screen.Place("finding")).ToContainTextAsync(words ?? sign);
    }

    private static async Task TypeAsync(Hand hand, string point, params (string Field, string Text)[] typed)
    {
        var page = hand.Screen.Page;
        await hand.Screen.Place("type-point").ClickAsync();
        await page.CheckAsync("[name=unit][value=in]");
        foreach (var (field, text) in typed.Append(("by", Name)))
        {
            await page.FillAsync($"[name={field}]", text);
        }

        await page.GetByText("Record it").ClickAsync();
        await page.WaitForURLAsync($"**/jobs/{hand.Job}#{point}");
    }

    private static async Task MeasureAsync(Hand hand, string point, string gauge, string move)
    {
        await hand.ToTheBayAsync(gauge);
        await hand.RestedAsync(gauge);
        await hand.Workshop.TellGaugeAsync(move);
        await hand.MeasuredAsync(point);
        await Expect(hand.Screen.Place("bay-recorded")).Not.ToBeEmptyAsync(new() { Timeout = 20_000 });
    }

    // The gauge is set to its ring once; after each bore the bay goes on to the next, and nobody touches the screen.
    private static async Task RockTheBoresAsync(Hand hand)
    {
        var form = hand.Screen.Place("setup-form");
        await form.GetByLabel("Ring or micrometer").FillAsync($"{Told(RingMillimetres)} mm");
        await form.GetByLabel("Known to within").FillAsync("0.001 mm");
        await form.GetByLabel("Depth from the mouth").FillAsync("12 mm");
        await form.GetByLabel("Across, clock position").SelectOptionAsync("12");
        await form.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(hand.Screen.Place("setup-said")).ToContainTextAsync("Next place");
        await hand.ToTheBayAsync("bore");
        foreach (var cylinder in Cylinders)
        {
            await Expect(hand.Screen.Place("bay-point")).ToContainTextAsync(cylinder.Replace('-', ' '), new() { Timeout = 20_000 });
            await Expect(hand.Screen.Place("bay-setup")).ToContainTextAsync("across 12 o'clock");
            await hand.RestedAsync("bore");
            await hand.Bore.TellAsync("rock");
            await hand.MeasuredAsync($"lifter-bore-{cylinder}");
        }
    }

    private static async Task NoteAPartAsync(Hand hand)
    {
        await hand.GoAsync("/parts/lifter-front-intake");
        await hand.Screen.Page.FillAsync("#faced", "oil hole to the front");
        await hand.Screen.Page.FillAsync("#faced-by", Name);
        await hand.SendAsync(hand.Screen.Page.GetByRole(AriaRole.Button, new() { Name = "Note it", Exact = true }));
        await Expect(hand.Screen.Place("part-faced")).ToHaveTextAsync("oil hole to the front");
        await hand.Screen.Page.GetByText("Keep", new() { Exact = true }).ClickAsync();
        await hand.Screen.Page.FillAsync("#decision-why", "roller turns freely");
        await hand.Screen.Page.FillAsync("#decision-by", Name);
        await hand.SendAsync(hand.Screen.Page.GetByRole(AriaRole.Button, new() { Name = "Decide", Exact = true }));
        await Expect(hand.Screen.Place("part-choice")).ToContainTextAsync("Keep");
    }

    // The gauges are virtual, so the truth is known; each result with its uncertainty holds it.
    private static async Task EveryResultIsTrueAsync(Workshop workshop, string job)
    {
        var truths = Cylinders.ToDictionary(cylinder => $"lifter-bore-{cylinder}", _ => ("size_mm", "size_u95_mm", BoreMillimetres));
        truths["pinion-runout"] = ("tir_mm", "tir_u95_mm", Workshop.TrueTirMillimetres);
        truths["cam-end-play"] = ("end_play_mm", "end_play_u95_mm", EndPlayMillimetres);
        foreach (var (point, (value, u95, truth)) in truths)
        {
            var record = Assert.Single(await workshop.RecordsAsync(job, point));
            Assert.Equal("ok", record.GetProperty("status").GetString());
            var (found, doubt) = (record.GetProperty(value).GetDouble(), record.GetProperty(u95).GetDouble());
            Assert.InRange(found, truth - (1.5 * doubt), truth + (1.5 * doubt));   // U95 leaves one in twenty outside; half as much again leaves three in a thousand of a normal spread
        }

        foreach (var cylinder in Cylinders)
        {
            var clearance = Assert.Single(await workshop.RecordsAsync(job, $"lifter-clearance-{cylinder}"));
            Assert.Equal(BoreMillimetres - (BodyInches * 25.4), clearance.GetProperty("clearance_mm").GetDouble(), 0.005);
        }
    }

    // Opened by poppler, which is not what wrote it.
    private static async Task PaperIsWholeAsync(string pdf)
    {
        var (exit, about, errors) = await RunningProgram.RunAsync("pdfinfo", pdf);
        Assert.True(exit == 0, errors);
        Assert.InRange(int.Parse(Pages().Match(about).Groups[1].Value, CultureInfo.InvariantCulture), 3, 20);
        Assert.InRange(new FileInfo(pdf).Length, 1, 2_000_000);
        var (_, text, _) = await RunningProgram.RunAsync("pdftotext", "-raw", pdf, "-");
        var flat = Blank().Replace(text, "");
        foreach (var sentence in new[]
        {
            "Aldermoor Corvid 1200", "R. Invented", "Pinion shaft runout", "Cam end play", "Lifter bore, rear exhaust", "Lifter clearance, front intake", "Tensioner shoe thickness", "Pump rotor tip clearance",
            "grooves a nail catches in", "oil hole to the front", "roller turns freely", "Machine ready and safe", "LIMIT NOT CONFIRMED",
            "The service manual of this machine and the judgement of a licensed mechanic come before this report.",
        })
        {
            Assert.Contains(Blank().Replace(sentence, ""), flat, StringComparison.Ordinal);
        }
    }

    private static string Told(double value) => value.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(@"Pages:\s+(\d+)")]
    private static partial Regex Pages();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();

    /// <summary>Who works: at one screen, in one job, with a gauge in the hand.</summary>
    private sealed record Hand(Workshop Workshop, PageWithTroubles Screen, string Job, RunningProgram Bore)
    {
        public async Task GoAsync(string where) => await Screen.Page.GotoAsync(new Uri(Workshop.Pages, $"jobs/{Job}{where}").ToString());

        // What a form writes stands in the job's book before the browser goes on.
        public async Task SendAsync(ILocator button)
        {
            var before = await VersionAsync();
            await button.ClickAsync();
            await Until.TrueAsync(async () => await VersionAsync() > before, () => $"Nothing was written from {Screen.Page.Url}.");
        }

        private async Task<int> VersionAsync() => (await Workshop.GetAsync($"api/v1/jobs/{Job}")).GetProperty("version").GetInt32();

        public async Task ToTheBayAsync(string gauge)
        {
            await Screen.Place("measure-gauge").First.SelectOptionAsync(gauge);
            await Screen.Place("measure-point").First.ClickAsync();
            await Screen.Page.WaitForURLAsync("**/bay");
        }

        // The bay waits for what is to be measured, and nothing has moved for a moment: the hand of the virtual gauge runs on a little.
        public async Task RestedAsync(string gauge)
        {
            var still = 0;
            await Until.TrueAsync(async () =>
            {
                var bay = await Workshop.GetAsync($"api/v1/bay?gauge={gauge}");
                var trace = bay.GetProperty("trace").GetProperty("mm").EnumerateArray().Select(mm => mm.GetDouble()).TakeLast(100).ToList();
                still = bay.GetProperty("phase").GetString() == "waiting" && trace.Count > 20 && trace.Max() - trace.Min() < 0.006 ? still + 1 : 0;
                return still > 3;
            });
        }

        public Task MeasuredAsync(string point) => Workshop.UntilRecordsAsync(Job, 1, point);
    }
}

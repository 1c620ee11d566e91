using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>Whatever people type is shown as they typed it: quotes, angle brackets, scripts that run the other way, commas.</summary>
public sealed class AnyWordsTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Names_OfAnyKind_AreShownAsTheyWereTyped_OnEveryPage()
    {
        const string Customer = "O'Hara & \"Söhne\" <script>document.title = 'gone'</script>";
        const string Work = "רעש בסרק <b>bold</b> \"2. gear\"";
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "jobs/new"), 360, 740);
        foreach (var (field, text) in new[] { ("make", "<Aldermoor>"), ("model", "\"Corvid\" 1200"), ("year", "2004"), ("odometer", "18,250"), ("title", Work), ("customer", Customer) })
        {
            await screen.Page.FillAsync($"#{field}", text);
        }

        // A comma in a count of miles is refused by the field, and nothing of the rest is lost.
        await screen.Page.GetByText("No plan", new() { Exact = true }).ClickAsync();
        await screen.Page.GetByText("Open the job").ClickAsync();
        await Expect(screen.Page.Locator("#odometer-error")).ToBeVisibleAsync();
        await Expect(screen.Page.Locator("#customer")).ToHaveValueAsync(Customer);
        await Expect(screen.Page.Locator("#title")).ToHaveValueAsync(Work);
        await screen.Page.FillAsync("#odometer", "18 250");
        await screen.Page.GetByText("Open the job").ClickAsync();

        await Expect(screen.Page.Locator("h1")).ToHaveTextAsync("2004 <Aldermoor> \"Corvid\" 1200");
        var job = screen.Page.Url.Split('/')[^1];
        foreach (var path in new[] { $"jobs/{job}", "", $"jobs/{job}/report", $"jobs/{job}/history", "limits" })
        {
            await screen.Page.GotoAsync(new Uri(workshop.Pages, path).ToString());
            await Expect(screen.Page.GetByText("<Aldermoor>").First).ToBeVisibleAsync();
            await Expect(screen.Page.Locator("main b, main script")).ToHaveCountAsync(0);
            Assert.DoesNotContain("gone", await screen.Page.TitleAsync(), StringComparison.Ordinal);
            Assert.True(await screen.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth") <= 360, path);
        }

        await Expect(screen.Page.GetByText("<Aldermoor>").First).ToBeVisibleAsync();
        Assert.DoesNotContain(screen.Troubles, trouble => !trouble.Contains("400", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Lengths_WithACommaOrAPoint_AreTheSame()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}/points/pinion-runout/entry"));
        foreach (var (highest, lowest) in new[] { ("0,0381", "-0,0381"), ("0.0381", "−0.0381 mm") })
        {
            await screen.Page.GotoAsync(new Uri(workshop.Pages, $"jobs/{job}/points/pinion-runout/entry").ToString());
            await screen.Page.CheckAsync("input[name=unit][value=mm]");
            foreach (var (field, text) in new[] { ("highest", highest), ("lowest", lowest), ("tool", "dial indicator"), ("division", "0,01 mm"), ("by", "ד. לוי <Ada>") })
            {
                await screen.Page.FillAsync($"#{field}", text);
            }

            await screen.Page.GetByText("Record it").ClickAsync();
            await screen.Page.WaitForURLAsync($"**/jobs/{job}#pinion-runout");
        }

        var records = await workshop.RecordsAsync(job);
        Assert.Equal(2, records.Count);
        Assert.All(records, record => Assert.Equal(0.0762, record.GetProperty("value_mm").GetDouble(), 1e-9));
        await Expect(screen.Page.GetByText("ד. לוי <Ada>").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Job_WithoutAPoint_CanBeReadOnEveryPage()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var put = await workshop.Http.PutAsync("api/v1/plans/no-points", new StringContent("title = \"Only looks\"\n[[step]]\ncode = \"look\"\nkind = \"check\"\ntitle = \"Look\"\n"));
        Assert.True(put.IsSuccessStatusCode, await put.Content.ReadAsStringAsync());
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, "jobs/new"));
        foreach (var (field, text) in new[] { ("make", "Aldermoor"), ("model", "Corvid 1200"), ("year", "2004"), ("odometer", "0"), ("title", "Only look") })
        {
            await screen.Page.FillAsync($"#{field}", text);
        }

        await screen.Page.GetByText("Only looks", new() { Exact = true }).ClickAsync();
        await screen.Page.GetByText("Open the job").ClickAsync();
        await Expect(screen.Place("step-line")).ToHaveCountAsync(1);
        var job = screen.Page.Url.Split('/')[^1];
        foreach (var path in new[] { $"jobs/{job}", "", $"jobs/{job}/report", $"jobs/{job}/history", "limits" })
        {
            var answer = await screen.Page.GotoAsync(new Uri(workshop.Pages, path).ToString());
            Assert.Equal(200, answer!.Status);
        }

        await Expect(screen.Page.GetByText("No open job has a limit yet.")).ToBeVisibleAsync();
        Assert.Empty(screen.Troubles);
    }
}

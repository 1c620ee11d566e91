using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>What a tool shows, typed with gloves on or sent by a program, becomes a record; two sizes become a clearance.</summary>
public sealed class TypedEntryTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Sizes_TypedOnThePage_BecomeRecords_AndTheirClearanceToo()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();
        await AddAsync(workshop, job, "lifter-bore-front-intake", "lifter-body-front-intake");

        // Inches typed where millimetres are chosen: refused, and all that was typed is still there.
        var screen = await browser.OpenAsync(new Uri(workshop.Pages, $"jobs/{job}/points/lifter-body-front-intake/entry"), 360, 740);
        await screen.Page.CheckAsync("[name=unit][value=mm]");
        await screen.Page.FillAsync("[name=value]", "0.8420");
        await screen.Page.FillAsync("[name=tool]", "micrometer");
        await screen.Page.FillAsync("[name=division]", "0.001");
        await screen.Page.FillAsync("[name=by]", "Ines");
        await screen.Page.GetByText("Record it").ClickAsync();
        await Expect(screen.Page.GetByText("too small for a lifter body, but 0.842 in would be 21.387 mm")).ToBeVisibleAsync();
        await Expect(screen.Page.Locator("[name=value]")).ToHaveValueAsync("0.8420");
        await Expect(screen.Page.Locator("[name=by]")).ToHaveValueAsync("Ines");
        Assert.Empty((await PointAsync(workshop, job, "lifter-body-front-intake")).GetProperty("records").EnumerateArray());

        await screen.Page.FillAsync("[name=value]", "21.387");
        await screen.Page.GetByText("Record it").ClickAsync();
        await screen.Page.WaitForURLAsync($"**/jobs/{job}#lifter-body-front-intake");
        await Expect(screen.Page.Locator("#lifter-body-front-intake").GetByTestId("record-tir")).ToHaveTextAsync("0.8420 in");

        await using var listener = await Listener.SubscribeAsync(workshop.BrokerPort);
        await CreatedAsync(workshop, job, "lifter-bore-front-intake", new { value = "0.8433 in", tool = "inside micrometer", division = "0.0001 in", error_limit = "0.0001 in", by = "Ines" });

        var clearance = (await PointAsync(workshop, job, "lifter-clearance-front-intake")).GetProperty("records")[0];
        Assert.Equal("clearance", clearance.GetProperty("kind").GetString());
        Assert.Equal("worked-out", clearance.GetProperty("ended").GetString());
        Assert.Equal(0.8433 * 25.4 - 21.387, clearance.GetProperty("clearance_mm").GetDouble(), 6);
        await Until.TrueAsync(() => listener.Messages("lifter-clearance-front-intake/result").Count > 0);

        // Another size that counts makes another clearance, and one below zero says so.
        await CreatedAsync(workshop, job, "lifter-bore-front-intake", new { value = "0.8410 in", tool = "inside micrometer", division = "0.0001 in", by = "Ines" });
        await screen.Page.ReloadAsync();
        var section = screen.Page.Locator("#lifter-clearance-front-intake");
        await Expect(section.GetByTestId("job-record")).ToHaveCountAsync(2);
        await Expect(section.GetByText("The body is larger than the bore")).ToBeVisibleAsync();

        // A limit that is typed afterwards is held against it at once.
        await workshop.Http.PutAsJsonAsync($"api/v1/jobs/{job}/points/lifter-clearance-front-intake/limit", new { at_least = "0.0008 in", at_most = "0.003 in", source = "invented manual, page 4" });
        Assert.Equal("over", (await PointAsync(workshop, job, "lifter-clearance-front-intake")).GetProperty("records")[0].GetProperty("verdict").GetString());
        Assert.All(screen.Troubles, trouble => Assert.Contains("400", trouble, StringComparison.Ordinal));   // the refused form
    }

    [Fact]
    public async Task Needle_ReadByEyeAtARunout_IsARecordThatCounts()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();

        var record = await CreatedAsync(workshop, job, "pinion-runout", new { highest = "0.0015 in", lowest = "-0.0015 in", tool = "dial indicator", division = "0.0005 in", by = "Ines" });

        Assert.Equal("within", record.GetProperty("verdict").GetString());   // 0.003 in: common practice, no source
        Assert.Equal("by-hand", record.GetProperty("kind").GetString());
        Assert.Contains(record.GetProperty("warnings").EnumerateArray(), warning => warning.GetProperty("code").GetString() == "read-by-eye");
        var point = await PointAsync(workshop, job, "pinion-runout");
        Assert.Equal(record.GetProperty("record").GetString(), point.GetProperty("counting").GetString());
        var journal = await workshop.Http.GetAsync($"api/v1/records/{record.GetProperty("record").GetString()}/journal.jsonl");
        Assert.Equal(HttpStatusCode.NotFound, journal.StatusCode);
        Assert.Contains("comes from no capture", await journal.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Entries_ThatCannotBe_AnswerByField()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var job = await workshop.OpenJobAsync();
        await AddAsync(workshop, job, "lifter-body-front-intake", "lifter-clearance-front-intake");

        var answer = await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points/lifter-body-front-intake/entries", new { value = "0.9 mm", tool = "micrometer", division = "0.01 mm" });

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var problem = await answer.Content.ReadFromJsonAsync<JsonElement>();
        Assert.Contains("Say who read it.", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal("Say who read it.", problem.GetProperty("errors").GetProperty("by")[0].GetString());
        await RefusedAsync(workshop, job, "lifter-clearance-front-intake", "worked out from other points");
        await RefusedAsync(workshop, job, "pinion-runout", "the needle's highest and lowest place");
        await RefusedAsync(workshop, job, "no-such", "has no point 'no-such'");
    }

    private static async Task AddAsync(Workshop workshop, string job, params IEnumerable<string> points)
    {
        foreach (var point in points)
        {
            Assert.Equal(HttpStatusCode.OK, (await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points", new { point })).StatusCode);
        }
    }

    private static async Task<JsonElement> CreatedAsync(Workshop workshop, string job, string point, object entry)
    {
        var answer = await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points/{point}/entries", entry);
        var told = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.Created, told);
        return JsonDocument.Parse(told).RootElement;
    }

    private static async Task RefusedAsync(Workshop workshop, string job, string point, string sentence)
    {
        var answer = await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points/{point}/entries", new { value = "1 mm", tool = "micrometer", division = "0.01 mm", by = "Ines" });
        Assert.Contains(sentence, JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    private static async Task<JsonElement> PointAsync(Workshop workshop, string job, string point) =>
        (await workshop.GetAsync($"api/v1/jobs/{job}")).GetProperty("points").EnumerateArray().First(found => found.GetProperty("point").GetString() == point);
}

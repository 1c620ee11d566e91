using System.Net;
using System.Net.Http.Json;
using System.Net.WebSockets;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>Screens of the shop's network: paired by a code, kept out without. Another address of this machine stands for the network.</summary>
public sealed class PairingTests(Browser browser) : IClassFixture<Browser>
{
    private static readonly string[] Door = ["--screens", "http://127.0.0.2:0"];

    [Fact]
    public async Task Phone_ThatScansTheCode_LandsOnTheBay_AndIsOutAgainWhenItIsUnpaired()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        var door = await StartAsync(workshop);
        await workshop.UntilGaugeIsAsync("reading");
        await workshop.MeasureAsync(await workshop.OpenJobAsync());
        var station = await browser.OpenAsync(new Uri(workshop.Pages, "screens"));
        await Expect(station.Page.GetByText("not encrypted")).ToBeVisibleAsync();
        var scanned = await QrPhoto.ReadAsync(station.Place("pair-code"));
        Assert.StartsWith($"{door}pair/", scanned, StringComparison.Ordinal);

        var phone = await browser.OpenAsync(new Uri(scanned!), 360, 740);

        await Expect(phone.Page).ToHaveURLAsync($"{door}bay", new() { Timeout = 20_000 });
        await Expect(phone.Place("bay-phase")).ToContainTextAsync("Waiting");
        await Expect(phone.Place("bay-reading")).Not.ToBeEmptyAsync();
        var cookie = Assert.Single(await phone.Page.Context.CookiesAsync());
        Assert.True(cookie.HttpOnly);
        Assert.Equal(Microsoft.Playwright.SameSiteAttribute.Strict, cookie.SameSite);
        await workshop.TellGaugeAsync("turn");   // the broker's line works as well
        await Expect(phone.Place("bay-phase")).ToContainTextAsync("Turning", new() { Timeout = 20_000 });
        await Expect(phone.Place("bay-verdict")).ToContainTextAsync("Within", new() { Timeout = 40_000 });
        Assert.Empty(phone.Troubles);

        // The station lists it, shows another code by itself, and lets it go.
        await Expect(station.Place("screen")).ToHaveCountAsync(1);
        await Expect(station.Place("screen")).ToContainTextAsync("in use now");
        Assert.NotEqual(scanned, await station.Place("pair-code").GetAttributeAsync("data-address"));
        await station.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Unpair screen 1" }).ClickAsync();
        await Expect(station.Place("screen")).ToHaveCountAsync(0);
        await Expect(phone.Place("unpaired")).ToContainTextAsync("open Screens on the station itself", new() { Timeout = 20_000 });
    }

    [Fact]
    public async Task Screen_NotPaired_GetsOneSentenceWhateverItAsksFor()
    {
        await using var workshop = new Workshop();
        var door = await StartAsync(workshop);
        using var http = new HttpClient { BaseAddress = door };

        using var page = Asking("jobs/new", ("Accept", "text/html"));
        var shown = await http.SendAsync(page);
        Assert.Equal(HttpStatusCode.Unauthorized, shown.StatusCode);
        Assert.Contains("This screen is not paired with the station", await shown.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await http.GetAsync("built/handspun.css")).StatusCode);   // what the sentence is shown with

        await Problem.IsAsync(await http.GetAsync("api/v1/jobs"), 401, "not paired");
        await Problem.IsAsync(await http.GetAsync("api/v1/screens"), 401, "not paired");
        await Problem.IsAsync(await http.GetAsync("api/v1/openapi.json"), 401, "not paired");
        await Problem.IsAsync(await http.PostAsJsonAsync("api/v1/jobs", new { make = "Aldermoor", model = "Corvid 1200", year = 2004 }), 401, "not paired");
        foreach (var (name, value) in new[] { ("X-Forwarded-For", "127.0.0.1"), ("Forwarded", "for=127.0.0.1;host=127.0.0.1"), ("X-Real-IP", "127.0.0.1"), ("Cookie", "handspun-screen=0123456789abcdef0123456789abcdef") })
        {
            using var claimed = Asking("api/v1/jobs", (name, value));
            await Problem.IsAsync(await http.SendAsync(claimed), 401, "not paired");
        }

        using var socket = new ClientWebSocket();
        socket.Options.CollectHttpResponseDetails = true;
        socket.Options.AddSubProtocol("mqtt");
        await Assert.ThrowsAsync<WebSocketException>(() => socket.ConnectAsync(new UriBuilder(door) { Scheme = "ws", Path = "mqtt" }.Uri, CancellationToken.None));
        Assert.Equal(HttpStatusCode.Unauthorized, socket.HttpStatusCode);

        // This machine needs no pairing, and has nothing to pair.
        Assert.Equal(HttpStatusCode.OK, (await workshop.Http.GetAsync("api/v1/jobs")).StatusCode);
        Assert.EndsWith("/bay", (await workshop.Http.GetAsync("pair/AAAAAAAA")).RequestMessage!.RequestUri!.AbsolutePath, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Code_IsTakenOnce_AndAfterTooManyWrongOnesNoneIs()
    {
        await using var workshop = new Workshop();
        var door = await StartAsync(workshop);
        using var http = new HttpClient(new HttpClientHandler { UseCookies = false }) { BaseAddress = door };
        var announced = (await workshop.Station.LineAsync("Pair:")).Split(' ')[0];   // at the terminal; its drawing is for eyes only
        Assert.Equal(announced, await CodeAddressAsync(workshop));

        var first = await http.GetAsync(announced);
        Assert.Equal(HttpStatusCode.OK, first.StatusCode);
        var cookie = first.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(cookie.Split(';')[0].Split('=')[1], await File.ReadAllTextAsync(Path.Combine(workshop.Data, "screens.json")), StringComparison.Ordinal);

        var replayed = await http.GetAsync(announced);
        Assert.Equal(HttpStatusCode.Unauthorized, replayed.StatusCode);
        Assert.False(replayed.Headers.Contains("Set-Cookie"));
        Assert.Contains("was used", await replayed.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        foreach (var wrong in new[] { "pair", "pair/AAAAAAAA", "pair?code=AAAA-AAAA", "pair/%20" })
        {
            Assert.Equal(HttpStatusCode.Unauthorized, (await http.GetAsync(wrong)).StatusCode);
        }

        var good = await CodeAddressAsync(workshop);
        var shut = await http.GetAsync(good);
        Assert.Equal(HttpStatusCode.TooManyRequests, shut.StatusCode);
        Assert.Equal(TimeSpan.FromMinutes(5), shut.Headers.RetryAfter?.Delta);
        Assert.Contains("wait 5 minutes", await shut.Content.ReadAsStringAsync(), StringComparison.Ordinal);

        // The screen that was paired is not in question, also after a restart.
        using var paired = Asking("api/v1/jobs", ("Cookie", cookie.Split(';')[0]));
        Assert.Equal(HttpStatusCode.OK, (await http.SendAsync(paired)).StatusCode);
        Assert.Equal(0, await workshop.Station.StopAsync());
        using var again = new HttpClient(new HttpClientHandler { UseCookies = false }) { BaseAddress = await StartAsync(workshop) };
        using var after = Asking("api/v1/jobs", ("Cookie", cookie.Split(';')[0]));
        Assert.Equal(HttpStatusCode.OK, (await again.SendAsync(after)).StatusCode);
    }

    [Fact]
    public async Task PairedScreen_IsHeldToItsOwnOriginAndAddress_AndPairsNoOther()
    {
        await using var workshop = new Workshop();
        var door = await StartAsync(workshop);
        using var http = new HttpClient { BaseAddress = door };
        Assert.Equal(HttpStatusCode.OK, (await http.GetAsync(await CodeAddressAsync(workshop))).StatusCode);   // keeps the cookie
        Assert.Equal(HttpStatusCode.OK, (await http.GetAsync("api/v1/jobs")).StatusCode);

        using var foreign = Asking("api/v1/bay/finish", ("Origin", "http://elsewhere.example"));
        foreign.Method = HttpMethod.Post;
        await Problem.IsAsync(await http.SendAsync(foreign), 403, "another site's page");
        using var own = Asking("api/v1/bay/finish", ("Origin", door.GetLeftPart(UriPartial.Authority)));
        own.Method = HttpMethod.Post;
        await Problem.IsAsync(await http.SendAsync(own), 409, "No capture is running");
        foreach (var host in new[] { "station.example", $"station.example:{door.Port}", "localhost", $"127.0.0.1:{door.Port}", $"127.0.0.2:{workshop.Pages.Port}" })
        {
            using var rebound = Asking("api/v1/jobs", ("Host", host));
            await Problem.IsAsync(await http.SendAsync(rebound), 403, "not to a name");
        }

        await Problem.IsAsync(await http.GetAsync("screens"), 403, "at the station itself");
        await Problem.IsAsync(await http.GetAsync("api/v1/screens"), 403, "at the station itself");
        await Problem.IsAsync(await http.DeleteAsync("api/v1/screens/1"), 403, "at the station itself");
        await Problem.IsAsync(await workshop.Http.DeleteAsync("api/v1/screens/7"), 400, "No screen 7");
    }

    [Fact]
    public async Task Labels_OpenWherePhonesReachTheStation()
    {
        await using var workshop = new Workshop();
        var door = await StartAsync(workshop);
        var answer = await workshop.Http.PostAsJsonAsync("api/v1/jobs", new { make = "Aldermoor", model = "Corvid 1200", year = 2004, title = "Cams", plan = "cam-job" });
        var job = (await answer.Content.ReadFromJsonAsync<System.Text.Json.JsonElement>()).GetProperty("job").GetString();

        Assert.Contains($"data-address=\"{door}jobs/{job}/parts/lifter-front-intake\"", await workshop.Http.GetStringAsync($"jobs/{job}/labels"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Screen_WithoutASecureLine_WorksWithoutWakeLockAndVoice()
    {
        await using var workshop = new Workshop();
        await workshop.StartGaugeAsync();
        var door = await StartAsync(workshop);
        await workshop.UntilGaugeIsAsync("reading");
        await workshop.MeasureAsync(await workshop.OpenJobAsync());

        // Chromium holds loopback for secure, so what plain http takes away (W3C Secure Contexts, Screen Wake Lock) is taken away by hand.
        var phone = await browser.OpenAsync(new Uri(await CodeAddressAsync(workshop)), 390, 844, before: "delete Navigator.prototype.wakeLock; delete globalThis.speechSynthesis; delete Crypto.prototype.randomUUID; delete Crypto.prototype.subtle;");

        await Expect(phone.Page).ToHaveURLAsync($"{door}bay", new() { Timeout = 20_000 });
        await Expect(phone.Place("bay-reading")).Not.ToBeEmptyAsync();
        await Expect(phone.Place("bay-voice")).ToBeHiddenAsync();
        await phone.Place("bay-tones").ClickAsync();
        await Expect(phone.Place("bay-tones")).ToHaveAttributeAsync("aria-pressed", "true");
        Assert.Empty(phone.Troubles);
    }

    [Theory]
    [InlineData("http://192.0.2.20:0", 1, "This machine does not have the address 192.0.2.20")]   // RFC 5737: nobody has it
    [InlineData("http://0.0.0.0:5080", 2, "is no one address")]
    public async Task Serve_AtAnAddressThatCannotBe_EndsWithASentence(string address, int exit, string sentence)
    {
        await using var workshop = new Workshop();

        var (code, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, "serve", "--data", workshop.Data, "--http", "http://127.0.0.1:0", "--mqtt-port", "0", "--screens", address);

        Assert.Equal(exit, code);
        Assert.Contains(sentence, errors, StringComparison.Ordinal);
        Assert.Single(errors.Trim().Split('\n'));
    }

    [Fact]
    public async Task Screens_OfAStationForThisMachineOnly_SaysHowToLetThemIn()
    {
        await using var workshop = new Workshop();
        Directory.CreateDirectory(workshop.Data);
        await workshop.StartStationAsync();
        Assert.Contains("--screens http://", await workshop.Http.GetStringAsync("screens"), StringComparison.Ordinal);
        Assert.Equal(System.Text.Json.JsonValueKind.Null, (await workshop.GetAsync("api/v1/screens")).GetProperty("address").ValueKind);
        await workshop.Station.StopAsync();

        // The shop's file says it as well as the command line.
        await File.WriteAllTextAsync(Path.Combine(workshop.Data, "shop.toml"), "screens = \"http://127.0.0.2:0\"\n");
        await workshop.StartStationAsync();

        Assert.StartsWith("http://127.0.0.2:", await CodeAddressAsync(workshop), StringComparison.Ordinal);
    }

    private static async Task<Uri> StartAsync(Workshop workshop)
    {
        await workshop.StartStationAsync(Door);
        return new Uri(await workshop.Station.LineAsync("Screens:"));
    }

    private static async Task<string> CodeAddressAsync(Workshop workshop) => (await workshop.GetAsync("api/v1/screens")).GetProperty("address").GetString()!;

    private static HttpRequestMessage Asking(string path, (string Name, string Value) header)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, path);
        request.Headers.TryAddWithoutValidation(header.Name, header.Value);
        return request;
    }
}

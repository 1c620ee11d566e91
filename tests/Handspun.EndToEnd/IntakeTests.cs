using System.IO.Compression;
using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using Handspun.EndToEnd.Parts;
using static Microsoft.Playwright.Assertions;

namespace Handspun.EndToEnd;

/// <summary>A job that one station packed comes into another over HTTP, on a page, and is shown from the command line.</summary>
public sealed class IntakeTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Job_PackedAtOneStation_IsTakenInByAnother_OverHttpAndOnThePage()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var archive = await PackedAsync(workshop);

        await using var other = new Workshop();
        await other.StartStationAsync();
        await using var listener = await Listener.SubscribeAsync(other.BrokerPort);
        var answer = await SendAsync(other, archive);
        Assert.True(answer.StatusCode == HttpStatusCode.Created, await answer.Content.ReadAsStringAsync());
        var job = (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("job").GetString()!;
        Assert.Equal($"/api/v1/jobs/{job}", answer.Headers.Location?.OriginalString);
        var record = Assert.Single(await other.RecordsAsync(job));
        Assert.Equal("within", record.GetProperty("verdict").GetString());
        await Until.TrueAsync(() => listener.Messages($"jobs/{job}/points/pinion-runout/result").Count > 0);

        // A third station, by its page: nothing chosen, then no archive, then the archive.
        await using var third = new Workshop();
        await third.StartStationAsync();
        var screen = await browser.OpenAsync(third.Pages, 360, 740);
        await screen.Place("to-intake").ClickAsync();
        var wrong = Path.Combine(third.Folder, "notes.zip");
        await File.WriteAllTextAsync(wrong, "no archive at all");
        await screen.Page.SetInputFilesAsync("#archive", wrong);
        await screen.Page.GetByText("Take it in", new() { Exact = true }).ClickAsync();
        await Expect(screen.Place("answer")).ToContainTextAsync("notes.zip was not taken in: it is no archive, or it was damaged on the way");
        await screen.Page.SetInputFilesAsync("#archive", archive);
        await screen.Page.GetByText("Take it in", new() { Exact = true }).ClickAsync();
        await screen.Page.WaitForURLAsync($"**/jobs/{job}");
        await Expect(screen.Place("record-verdict")).ToContainTextAsync("Within");

        // Once more: it is there, and the number that was typed stays in its field.
        await screen.Page.GotoAsync(new Uri(third.Pages, "intake").ToString());
        var critic = new PageCritic(screen.Page);
        await critic.LookAsync("intake");
        await screen.Page.SetInputFilesAsync("#archive", archive);
        await screen.Page.FillAsync("#number", "2026-0099");
        await screen.Page.GetByText("Take it in", new() { Exact = true }).ClickAsync();
        await Expect(screen.Place("answer")).ToContainTextAsync($"is here already, in job {job}: it is the same work");
        await Expect(screen.Page.Locator("#number")).ToHaveValueAsync("2026-0099");
        await critic.LookAsync("intake refused");
        Assert.True(critic.Found.Count == 0, string.Join('\n', critic.Found));
        Assert.All(screen.Troubles, trouble => Assert.Matches("400|409", trouble));   // the refused forms

        // The command line shows the job, whichever station opened it.
        var (code, lines, _) = await RunningProgram.RunAsync(Programs.Handspun, "jobs", "show", job, "--data", third.Data);
        Assert.Equal(0, code);
        Assert.Contains("Point pinion-runout: Pinion shaft runout", lines, StringComparison.Ordinal);
        Assert.Contains($"  {record.GetProperty("record").GetString()}  Pinion shaft runout: ", lines, StringComparison.Ordinal);
        var (_, json, _) = await RunningProgram.RunAsync(Programs.Handspun, "jobs", "show", job, "--data", third.Data, "--json");
        Assert.True(JsonElement.DeepEquals(await third.GetAsync($"api/v1/jobs/{job}"), JsonDocument.Parse(json).RootElement), json);
        var (none, _, errors) = await RunningProgram.RunAsync(Programs.Handspun, "jobs", "show", "1999-0001", "--data", third.Data);
        Assert.Equal((1, true), (none, errors.StartsWith("There is no job '1999-0001'", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Archive_ThatCannotBeTakenIn_IsRefusedWithASentence_AndNothingIsTaken()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        var archive = await PackedAsync(workshop);

        await Problem.IsAsync(await SendAsync(workshop, archive), 409, "here already. If it is another one, give the new one another number.");
        await Problem.IsAsync(await SendAsync(workshop, archive, "forty-two"), 400, "'forty-two' is no number of a job");
        using (var empty = new MultipartFormDataContent { { new StringContent("2026-0099"), "number" } })
        {
            await Problem.IsAsync(await workshop.Http.PostAsync("api/v1/archives", empty), 400, "There is no archive: send multipart/form-data");
        }

        Alter(archive, "manifest.json", text => text.Replace("\"version\":1", "\"version\":2", StringComparison.Ordinal));
        await Problem.IsAsync(await SendAsync(workshop, archive), 400, "it comes from a newer version of this program: bring this station up to date first.");
        Alter(archive, "manifest.json", text => text.Replace("\"version\":2", "\"version\":1", StringComparison.Ordinal));
        Alter(archive, "job.json", text => text.Replace("Aldermoor", "Otherwise", StringComparison.Ordinal));
        await Problem.IsAsync(await SendAsync(workshop, archive), 400, "'job.json' is not what its manifest.json says; it was altered or damaged.");
        Assert.Single((await workshop.GetAsync("api/v1/jobs")).EnumerateArray());
    }

    // Only the size is told; the station answers before anything is sent.
    [Fact]
    public async Task Archive_ThatIsFarTooLarge_IsRefusedBeforeItIsSent()
    {
        await using var workshop = new Workshop();
        await workshop.StartStationAsync();
        using var connection = new TcpClient();
        await connection.ConnectAsync(workshop.Pages.Host, workshop.Pages.Port);
        await using var line = connection.GetStream();

        await line.WriteAsync(Encoding.ASCII.GetBytes(
            $"POST /api/v1/archives HTTP/1.1\r\nHost: {workshop.Pages.Authority}\r\nContent-Type: multipart/form-data; boundary=x\r\nContent-Length: {2L << 30}\r\nConnection: close\r\n\r\n"));
        var answer = await new StreamReader(line).ReadToEndAsync();

        Assert.StartsWith("HTTP/1.1 413", answer, StringComparison.Ordinal);
        Assert.Contains("application/problem+json", answer, StringComparison.Ordinal);
        Assert.Contains("an archive may have 1024 MB", answer, StringComparison.Ordinal);
    }

    private static async Task<string> PackedAsync(Workshop workshop)
    {
        var job = await workshop.OpenJobAsync();
        var typed = await workshop.Http.PostAsJsonAsync($"api/v1/jobs/{job}/points/pinion-runout/entries", new { highest = "0.0015 in", lowest = "-0.0015 in", tool = "dial indicator", division = "0.0005 in", by = "A. Nobody" });
        Assert.Equal(HttpStatusCode.Created, typed.StatusCode);
        var archive = Path.Combine(workshop.Folder, "job.zip");
        await File.WriteAllBytesAsync(archive, await workshop.Http.GetByteArrayAsync($"api/v1/jobs/{job}/archive.zip"));
        return archive;
    }

    private static async Task<HttpResponseMessage> SendAsync(Workshop workshop, string archive, string number = "")
    {
        using var form = new MultipartFormDataContent { { new StringContent(number), "number" }, { new ByteArrayContent(await File.ReadAllBytesAsync(archive)), "archive", Path.GetFileName(archive) } };
        return await workshop.Http.PostAsync("api/v1/archives", form);
    }

    private static void Alter(string archive, string file, Func<string, string> change)
    {
        using var zip = ZipFile.Open(archive, ZipArchiveMode.Update);
        var entry = zip.GetEntry(file)!;
        string text;
        using (var from = new StreamReader(entry.Open()))
        {
            text = from.ReadToEnd();
        }

        entry.Delete();
        using var into = new StreamWriter(zip.CreateEntry(file).Open(), new UTF8Encoding(false));
        Assert.NotEqual(text, change(text));
        into.Write(change(text));
    }
}

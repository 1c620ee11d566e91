using System.Net;
using System.Security.Cryptography;
using System.Text;
using Handspun.Screens;
using Handspun.Station;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.Time.Testing;

namespace Handspun.Tests.Screens;

public sealed class PairedScreensTests : IDisposable
{
    private static readonly IPAddress Phone = IPAddress.Parse("192.0.2.7");   // RFC 5737: for documents and tests
    private readonly string _folder = Directory.CreateTempSubdirectory("handspun-screens-").FullName;
    private readonly FakeTimeProvider _time = new();

    private string Path => System.IO.Path.Combine(_folder, "screens.json");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Screen_Paired_IsKnownAfterARestart_AndTheFileDoesNotHoldWhatItKeeps()
    {
        var (screen, token) = PairedScreens.Read(Path, _time).Add(Phone);

        var again = PairedScreens.Read(Path, _time);

        Assert.Equal(screen, again.Find(token));
        Assert.Equal(128 / 4, token.Length);   // hexadecimal digits of 128 bits
        var kept = File.ReadAllText(Path);
        Assert.DoesNotContain(token, kept, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(token))), kept, StringComparison.Ordinal);
        Assert.Null(again.Find(screen.Hash));   // who reads the file cannot pass for the screen
        Assert.Null(again.Find(null));
        Assert.Null(again.Find(""));
    }

    [Fact]
    public async Task Screen_Unpaired_IsNotKnown_AndWhatItHadOpenEnds()
    {
        var screens = PairedScreens.Read(Path, _time);
        var (screen, token) = screens.Add(Phone);
        var (other, _) = screens.Add(Phone);
        var (open, others) = (new Request(), new Request());
        var (answered, stays) = (new TaskCompletionSource(), new TaskCompletionSource());
        var serving = screens.ServeAsync(screen, open.Context, _ => answered.Task);
        var otherServing = screens.ServeAsync(other, others.Context, _ => stays.Task);
        Assert.Equal(_time.GetUtcNow(), screens.SeenAt(screen));

        Assert.True(screens.Remove(screen.Number));

        Assert.True(open.IsAborted);
        Assert.False(others.IsAborted);
        Assert.Null(screens.Find(token));
        Assert.Equal([other], PairedScreens.Read(Path, _time).All);
        Assert.False(screens.Remove(screen.Number));
        answered.SetResult();
        stays.SetResult();
        await Task.WhenAll(serving, otherServing);
        _time.Advance(TimeSpan.FromMinutes(3));
        Assert.Equal(_time.GetUtcNow() - TimeSpan.FromMinutes(3), screens.SeenAt(other));
    }

    [Fact]
    public void File_ThatDoesNotHold_EndsWithASentence()
    {
        File.WriteAllText(Path, "[{");

        Assert.Contains("pair the screens again", Assert.Throws<StationTroubleException>(() => PairedScreens.Read(Path, _time)).Message, StringComparison.Ordinal);
    }

    private sealed class Request : IHttpRequestLifetimeFeature
    {
        public Request() => Context.Features.Set<IHttpRequestLifetimeFeature>(this);

        public DefaultHttpContext Context { get; } = new();

        public bool IsAborted { get; private set; }

        public CancellationToken RequestAborted { get; set; }

        public void Abort() => IsAborted = true;
    }
}

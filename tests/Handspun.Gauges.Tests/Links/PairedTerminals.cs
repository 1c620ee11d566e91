using System.Diagnostics;
using Handspun.Gauges.Tests.Journal;

namespace Handspun.Gauges.Tests.Links;

/// <summary>Two pseudo-terminals joined by socat: what goes into the gauge's comes out of the station's.</summary>
internal sealed class PairedTerminals : IAsyncDisposable
{
    private readonly TestFolder _folder = new();
    private readonly Process _socat;

    private PairedTerminals()
    {
        var start = new ProcessStartInfo("socat") { RedirectStandardError = true };
        foreach (var argument in new[] { "-d", "-d", $"pty,raw,echo=0,link={Station}", $"pty,raw,echo=0,link={Gauge}" })
        {
            start.ArgumentList.Add(argument);
        }

        _socat = Process.Start(start)!;
    }

    public string Station => _folder.File("station");

    private string Gauge => _folder.File("gauge");

    public static async Task<PairedTerminals> OpenAsync()
    {
        var pair = new PairedTerminals();
        // The names are there before the terminals are raw; a line that is sent meanwhile would get a CR.
        while (await pair._socat.StandardError.ReadLineAsync().WaitAsync(Until.Cap) is { } line && !line.Contains("data transfer loop", StringComparison.Ordinal))
        {
        }

        await Until.TrueAsync(() => File.Exists(pair.Station) && File.Exists(pair.Gauge));
        return pair;
    }

    public async Task SendAsync(IEnumerable<byte[]> pieces)
    {
        await using var gauge = OpenGauge();
        foreach (var piece in pieces)
        {
            await gauge.WriteAsync(piece);
        }
    }

    /// <summary>The gauge's end, to write to.</summary>
    public FileStream OpenGauge(FileAccess access = FileAccess.Write) => new(Gauge, FileMode.Open, access, FileShare.ReadWrite, bufferSize: 0);

    /// <summary>Pulls the cable: both terminals are gone.</summary>
    public async Task UnplugAsync()
    {
        if (!_socat.HasExited)
        {
            _socat.Kill();
        }

        await _socat.WaitForExitAsync().WaitAsync(Until.Cap);
    }

    public async ValueTask DisposeAsync()
    {
        await UnplugAsync();
        _socat.Dispose();
        _folder.Dispose();
    }
}

using System.Diagnostics;
using System.Globalization;
using Handspun.Station;

namespace Handspun.Demo;

/// <summary>The virtual gauge, running as a process of its own; it ends with this one.</summary>
internal sealed class VirtualGaugeProcess : IAsyncDisposable
{
    private readonly Process _process;

    private VirtualGaugeProcess(Process process, string port) => (_process, Port) = (process, port);

    /// <summary>The port on which it sends.</summary>
    public string Port { get; }

    /// <summary>Starts it, and waits until it tells its port.</summary>
    /// <param name="tirMillimetres">The true runout of its shaft.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    /// <exception cref="StationTroubleException">It is not there or does not start.</exception>
    public static async Task<VirtualGaugeProcess> StartAsync(double tirMillimetres, CancellationToken cancellationToken)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "virtual-gauge", OperatingSystem.IsWindows() ? "virtual-gauge.exe" : "virtual-gauge");
        if (!File.Exists(program))
        {
            throw new StationTroubleException($"The virtual gauge is not beside the program ({program}): build the whole solution, then start the demo again.");
        }

        var start = new ProcessStartInfo(program) { RedirectStandardInput = true, RedirectStandardOutput = true };
        start.ArgumentList.Add("--tir-mm");
        start.ArgumentList.Add(tirMillimetres.ToString(CultureInfo.InvariantCulture));
        var process = Process.Start(start) ?? throw new StationTroubleException("The virtual gauge did not start.");
        var line = await process.StandardOutput.ReadLineAsync(cancellationToken);
        return line?.Split(' ', 2) is ["port", var port]
            ? new(process, port)
            : throw new StationTroubleException("The virtual gauge told no port: look at what it wrote above.");
    }

    /// <summary>Puts its hand to the wheel.</summary>
    public async Task TurnAsync()
    {
        await _process.StandardInput.WriteLineAsync("turn");
        await _process.StandardInput.FlushAsync();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        try
        {
            _process.StandardInput.Close();   // the end of its input ends it
            await _process.WaitForExitAsync(CancellationToken.None).WaitAsync(TimeSpan.FromSeconds(2), TimeProvider.System);
        }
        catch (Exception e) when (e is TimeoutException or IOException or InvalidOperationException)
        {
            _process.Kill();
        }

        _process.Dispose();
    }
}

using System.IO.Pipelines;
using System.IO.Ports;
using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Links;

/// <summary>A gauge on a serial port.</summary>
/// <remarks>
/// When the cable is pulled out the pending read throws while the port still calls itself open, and a further call may
/// hang: so after the first trouble the port is only ever disposed, away from the caller, with a time limit.
/// </remarks>
internal sealed class SerialLink : IGaugeLink
{
    private static readonly TimeSpan OpeningPatience = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan ClosingPatience = TimeSpan.FromSeconds(1);

    private static readonly TimeSpan SendingPatience = TimeSpan.FromSeconds(1);

    private readonly SerialPort _port;
    private readonly TimeProvider _time;

    private SerialLink(SerialPort port, TimeProvider time)
    {
        _port = port;
        _time = time;
        Input = PipeReader.Create(port.BaseStream, new StreamPipeReaderOptions(leaveOpen: true));
    }

    public PipeReader Input { get; }

    // Some drivers hold what is sent for ever when the far end says "wait", and do not let themselves be cancelled.
    public async ValueTask SendAsync(ReadOnlyMemory<byte> bytes, CancellationToken cancellationToken)
    {
        try
        {
            await _port.BaseStream.WriteAsync(bytes, cancellationToken).AsTask().WaitAsync(SendingPatience, _time, cancellationToken);
        }
        catch (TimeoutException e)
        {
            throw new IOException($"{_port.PortName} takes nothing: check the cable, and the profile's handshake.", e);
        }
        catch (Exception e) when (e is InvalidOperationException or UnauthorizedAccessException)
        {
            throw new IOException($"{_port.PortName} is closed.", e);
        }
    }

    public IDisposable? WatchPulses(IndexSettings index, Action<string> pulse) =>
        index.Source == IndexSource.Line ? new PulseWatch(new PortModemLines(_port), index, pulse) : null;

    public static async Task<IGaugeLink> OpenAsync(GaugePort.Serial port, LinkSettings settings, TimeProvider time, CancellationToken cancellationToken)
    {
        var serial = PortOf(port, settings);
        var opening = Task.Run(serial.Open, CancellationToken.None);   // Open blocks, and on a sick driver for long
        try
        {
            await opening.WaitAsync(OpeningPatience, time, cancellationToken);
            SetPowerLines(serial, settings);
            return new SerialLink(serial, time);
        }
        catch (Exception e)
        {
            await CloseAsync(serial, opening, time);
            if (e is OperationCanceledException)
            {
                throw;
            }

            throw SerialTrouble.Explain(port, e);
        }
    }

    public async ValueTask DisposeAsync() => await CloseAsync(_port, Task.CompletedTask, _time);

    private static SerialPort PortOf(GaugePort.Serial port, LinkSettings settings)
    {
        try
        {
            return new(port.Device, settings.Baud, settings.Parity, settings.DataBits, settings.StopBits) { Handshake = settings.Handshake };
        }
        catch (ArgumentException e)
        {
            throw SerialTrouble.Explain(port, e);   // no name for a port
        }
    }

    private static async Task CloseAsync(SerialPort port, Task opening, TimeProvider time)
    {
        try
        {
            await Task.Run(() => DisposeAfterAsync(opening, port), CancellationToken.None).WaitAsync(ClosingPatience, time);
        }
        catch (Exception e) when (e is IOException or TimeoutException or UnauthorizedAccessException or ObjectDisposedException or InvalidOperationException)
        {
            // A port whose device is gone may refuse to close; there is nothing more to release here.
        }
    }

    // A port that opens after all, when nobody waits for it any more, would be held for as long as the program runs.
    private static async Task DisposeAfterAsync(Task opening, SerialPort port)
    {
        await opening.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        port.Dispose();
    }

    private static void SetPowerLines(SerialPort port, LinkSettings settings)
    {
        try
        {
            if (settings.DataTerminalReady is { } ready)
            {
                port.DtrEnable = ready;
            }

            if (settings.RequestToSend is { } request)
            {
                port.RtsEnable = request;
            }
        }
        catch (IOException)
        {
            // A line without modem lines (a pseudo-terminal) has none to set.
        }
    }
}

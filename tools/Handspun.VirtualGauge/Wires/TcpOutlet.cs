using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace Handspun.VirtualGauge.Wires;

/// <summary>A loopback TCP address that sends the gauge's bytes to whoever connects.</summary>
internal sealed class TcpOutlet : IWire
{
    private readonly TcpListener _listener;
    private readonly CancellationTokenSource _closing = new();
    private volatile Socket? _listening;

    /// <summary>Listens on a loopback port; 0 lets the system choose.</summary>
    public TcpOutlet(int port)
    {
        _listener = new TcpListener(IPAddress.Loopback, port);
        _listener.Start();
        Port = string.Create(CultureInfo.InvariantCulture, $"tcp://{_listener.LocalEndpoint}");
        _ = AcceptAsync();
    }

    public string Port { get; }

    public void Send(ReadOnlySpan<byte> bytes)
    {
        try
        {
            _listening?.Send(bytes, SocketFlags.None);
        }
        catch (Exception e) when (e is SocketException or ObjectDisposedException)
        {
            _listening = null;
        }
    }

    public void Dispose()
    {
        _closing.Cancel();
        _listener.Dispose();
        _listening?.Dispose();
        _closing.Dispose();
    }

    private async Task AcceptAsync()
    {
        try
        {
            while (true)
            {
                var next = await _listener.AcceptSocketAsync(_closing.Token);
                next.NoDelay = true;
                _listening?.Dispose();
                _listening = next;
            }
        }
        catch (Exception e) when (e is OperationCanceledException or ObjectDisposedException or SocketException)
        {
            // The outlet is closed.
        }
    }
}

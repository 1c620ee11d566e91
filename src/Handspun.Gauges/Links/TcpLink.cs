using System.IO.Pipelines;
using System.Net.Sockets;

namespace Handspun.Gauges.Links;

/// <summary>A gauge behind a serial-device server.</summary>
internal sealed class TcpLink : IGaugeLink
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    private readonly TcpClient _client;
    private readonly TimeProvider _time;

    private TcpLink(TcpClient client, TimeProvider time)
    {
        (_client, _time) = (client, time);
        Input = PipeReader.Create(client.GetStream());
    }

    public PipeReader Input { get; }

    public async ValueTask SendAsync(ReadOnlyMemory<byte> bytes, CancellationToken cancellationToken)
    {
        try
        {
            await _client.GetStream().WriteAsync(bytes, cancellationToken).AsTask().WaitAsync(Patience, _time, cancellationToken);
        }
        catch (Exception e) when (e is TimeoutException or InvalidOperationException)
        {
            throw new IOException("The gauge's network adapter takes nothing: check that it is on and reachable.", e);
        }
    }

    public static async Task<IGaugeLink> OpenAsync(GaugePort.Tcp port, TimeProvider time, CancellationToken cancellationToken)
    {
        var client = new TcpClient { NoDelay = true };
        try
        {
            await client.ConnectAsync(port.Host, port.Number, cancellationToken).AsTask().WaitAsync(Patience, time, cancellationToken);
            KeepAsking(client.Client);
            return new TcpLink(client, time);
        }
        catch (Exception e) when (e is SocketException or TimeoutException)
        {
            client.Dispose();
            throw new LinkUnavailableException(LinkFault.Absent, $"Nothing answers at {port}: check that the gauge's network adapter is on and reachable.", e);
        }
        catch
        {
            client.Dispose();
            throw;
        }
    }

    // A gauge that lies still sends nothing, and neither does an adapter that was switched off: only asking tells them apart.
    private static void KeepAsking(Socket socket)
    {
        socket.SetSocketOption(SocketOptionLevel.Socket, SocketOptionName.KeepAlive, true);
        socket.SetSocketOption(SocketOptionLevel.Tcp, SocketOptionName.TcpKeepAliveTime, 5);
        socket.SetSocketOption(SocketOptionLevel.Tcp, SocketOptionName.TcpKeepAliveInterval, 2);
        socket.SetSocketOption(SocketOptionLevel.Tcp, SocketOptionName.TcpKeepAliveRetryCount, 3);
    }

    public ValueTask DisposeAsync()
    {
        _client.Dispose();
        return ValueTask.CompletedTask;
    }
}

using System.Net;
using System.Net.Sockets;

namespace Handspun.EndToEnd.Parts;

/// <summary>A line between a screen and the station that a test can cut as a wifi does that is out of reach: nothing is closed, nothing is answered.</summary>
/// <remarks>What was open when it was cut stays silent for ever, also when the wifi is back: the hardest case for a screen.</remarks>
internal sealed class Wifi : IAsyncDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource _over = new();
    private readonly List<TcpClient> _held = [];
    private readonly List<Task> _lines = [];
    private readonly Task _listening;
    private CancellationTokenSource _reach = new();

    public Wifi(Uri station)
    {
        Station = station;
        _listener.Start();
        _listening = ListenAsync();
    }

    /// <summary>Where the station is now; after a restart it may be elsewhere.</summary>
    public Uri Station { get; set; }

    /// <summary>The station's address on this side of the wifi.</summary>
    public Uri Pages => new($"http://127.0.0.1:{((IPEndPoint)_listener.LocalEndpoint).Port}/");

    public Task CutAsync() => _reach.CancelAsync();

    public void Mend() => _reach = new();

    private async Task ListenAsync()
    {
        try
        {
            while (true)
            {
                var screen = await _listener.AcceptTcpClientAsync(_over.Token);
                lock (_held)
                {
                    _held.Add(screen);
                    _lines.Add(LeadAsync(screen, _reach.Token));
                }
            }
        }
        catch (OperationCanceledException)
        {
            // The test is over.
        }
    }

    private async Task LeadAsync(TcpClient screen, CancellationToken reach)
    {
        if (reach.IsCancellationRequested)
        {
            return;
        }

        var station = new TcpClient();
        lock (_held)
        {
            _held.Add(station);
        }

        using var ending = CancellationTokenSource.CreateLinkedTokenSource(reach, _over.Token);
        try
        {
            await station.ConnectAsync(IPAddress.Loopback, Station.Port, ending.Token);
            var (near, far) = (screen.GetStream(), station.GetStream());
            await Task.WhenAny(near.CopyToAsync(far, ending.Token), far.CopyToAsync(near, ending.Token));
        }
        catch (Exception e) when (e is SocketException or IOException or OperationCanceledException)
        {
            // Either end has gone, or the wifi.
        }

        if (!reach.IsCancellationRequested)
        {
            screen.Dispose();
            station.Dispose();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _over.CancelAsync();
        await _listening;
        _listener.Dispose();
        await Task.WhenAll(_lines);
        _held.ForEach(held => held.Dispose());
        _reach.Dispose();
        _over.Dispose();
    }
}

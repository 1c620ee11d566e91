using System.Net;
using System.Net.Sockets;
using Handspun.Gauges.Links;
using Handspun.Gauges.Tests.Framing;

namespace Handspun.Gauges.Tests.Links;

public sealed class TcpLinkTests : IDisposable
{
    private readonly TcpListener _adapter = new(IPAddress.Loopback, 0);

    public void Dispose() => _adapter.Dispose();

    [Fact]
    public async Task Link_ReadsEveryByte_AndEndsWhenTheAdapterHangsUp()
    {
        var (link, peer) = await ConnectAsync();
        await using (link)
        {
            byte[] sent = [.. Enumerable.Range(0, 3000).Select(i => (byte)i)];
            var reading = LinkReading.ToTheEndAsync(link);
            foreach (var piece in Chunks.Of(sent, 1, 7, 300))
            {
                await peer.GetStream().WriteAsync(piece);
            }

            peer.Dispose();

            Assert.Equal(sent, await reading.WaitAsync(Until.Cap));
        }
    }

    [Fact]
    public async Task Link_ThatTheAdapterBreaksOff_Ends()
    {
        var (link, peer) = await ConnectAsync();
        await using (link)
        {
            var reading = LinkReading.ToTheEndAsync(link);
            peer.LingerState = new LingerOption(true, 0);   // a reset, as from an adapter that was switched off and on
            peer.Dispose();

            Assert.Empty(await reading.WaitAsync(Until.Cap));
        }
    }

    // An adapter that lost its power says nothing, and nothing is ever sent to it: only keep-alive probes find it gone.
    [Fact]
    public async Task Link_ThatIsSilent_IsProbed()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;   // /proc tells which timer a connection has
        }

        var (link, peer) = await ConnectAsync();
        await using (link)
        {
            var station = ((IPEndPoint)peer.Client.RemoteEndPoint!).Port;
            var timers = File.ReadLines("/proc/net/tcp").Concat(File.ReadLines("/proc/net/tcp6"))
                .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                .Where(fields => fields[0] != "sl" && fields[1].EndsWith($":{station:X4}", StringComparison.Ordinal))
                .Select(fields => fields[5][..2]);

            Assert.Equal("02", Assert.Single(timers));   // 02: keep-alive (proc_net_tcp of the Linux kernel's documentation)
        }

        peer.Dispose();
    }

    [Fact]
    public async Task Address_WhereNothingListens_IsAbsent()
    {
        _adapter.Start();
        var port = new GaugePort.Tcp("127.0.0.1", ((IPEndPoint)_adapter.LocalEndpoint).Port);
        _adapter.Stop();

        var refused = await Assert.ThrowsAsync<LinkUnavailableException>(() => OpenAsync(port, CancellationToken.None));
        Assert.Equal(LinkFault.Absent, refused.Fault);
        Assert.Equal($"Nothing answers at {port}: check that the gauge's network adapter is on and reachable.", refused.Message);
    }

    [Fact]
    public async Task Address_ThatNobodyWaitsForAnyMore_IsGivenUp() => await Assert.ThrowsAnyAsync<OperationCanceledException>(
        () => OpenAsync(new GaugePort.Tcp("127.0.0.1", 9), new CancellationToken(canceled: true)));

    private async Task<(IGaugeLink Link, TcpClient Peer)> ConnectAsync()
    {
        _adapter.Start();
        var accepting = _adapter.AcceptTcpClientAsync();
        var link = await OpenAsync(new GaugePort.Tcp("127.0.0.1", ((IPEndPoint)_adapter.LocalEndpoint).Port), CancellationToken.None);
        return (link, await accepting.WaitAsync(Until.Cap));
    }

    private static Task<IGaugeLink> OpenAsync(GaugePort.Tcp port, CancellationToken cancellationToken) =>
        new LinkOpener(TimeProvider.System).OpenAsync(port, new LinkSettings(), cancellationToken);
}

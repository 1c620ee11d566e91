using System.Collections.Concurrent;
using Handspun.Gauges.Hid;

namespace Handspun.Gauges.Links;

/// <summary>Opens every kind of port that this program knows.</summary>
/// <param name="time">The time.</param>
/// <param name="roots">Where the system tells of its devices; null for where it usually does.</param>
public sealed class LinkOpener(TimeProvider time, DeviceRoots? roots = null) : ILinkOpener
{
    private readonly UsbTerminals _terminals = new(roots ?? new DeviceRoots());
    private readonly ConcurrentDictionary<GaugePort.Replay, JournalPlayer> _players = new();
    private readonly HidDevices _hids = new(roots ?? new DeviceRoots());

    /// <inheritdoc/>
    public async Task<IGaugeLink> OpenAsync(GaugePort port, LinkSettings settings, CancellationToken cancellationToken) => port switch
    {
        GaugePort.Serial serial => await SerialLink.OpenAsync(serial, settings, time, cancellationToken),
        GaugePort.Usb usb => await SerialLink.OpenAsync(new GaugePort.Serial(_terminals.Find(usb.Identity)), settings, time, cancellationToken),
        GaugePort.Tcp tcp => await TcpLink.OpenAsync(tcp, time, cancellationToken),
        GaugePort.Replay replay => Replay(replay),
        GaugePort.Hid hid => HidrawLink.Open(hid, settings, _hids),
        GaugePort.HidNode node => HidrawLink.Open(node, settings, _hids),
        _ => throw new ArgumentOutOfRangeException(nameof(port), port, "No such kind of port."),
    };

    private ReplayLink Replay(GaugePort.Replay port)
    {
        var player = _players.GetOrAdd(port, replay => new JournalPlayer(replay, time));
        player.Open();
        return new(player);
    }
}

namespace Handspun.Gauges.Links;

/// <summary>Opens every kind of port that this program knows.</summary>
public sealed class LinkOpener(TimeProvider time) : ILinkOpener
{
    /// <inheritdoc/>
    public Task<IGaugeLink> OpenAsync(GaugePort port, LinkSettings settings, CancellationToken cancellationToken) => port switch
    {
        GaugePort.Serial serial => SerialLink.OpenAsync(serial, settings, time, cancellationToken),
        GaugePort.Tcp tcp => TcpLink.OpenAsync(tcp, time, cancellationToken),
        _ => throw new ArgumentOutOfRangeException(nameof(port), port, "No such kind of port."),
    };
}

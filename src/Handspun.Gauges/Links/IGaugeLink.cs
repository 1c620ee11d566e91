using System.IO.Pipelines;

namespace Handspun.Gauges.Links;

/// <summary>An open way to a gauge: knows ports, not meanings.</summary>
/// <remarks>The input completes, or a read throws <see cref="IOException"/> or <see cref="ObjectDisposedException"/>, when the cable is out. Disposing never hangs for long.</remarks>
public interface IGaugeLink : IAsyncDisposable
{
    /// <summary>The bytes that the gauge sends.</summary>
    PipeReader Input { get; }
}

/// <summary>Opens ways to gauges.</summary>
public interface ILinkOpener
{
    /// <summary>Opens the way to the gauge at a port.</summary>
    /// <exception cref="LinkUnavailableException">The port cannot be opened now; says why and what to do.</exception>
    Task<IGaugeLink> OpenAsync(GaugePort port, LinkSettings settings, CancellationToken cancellationToken);
}

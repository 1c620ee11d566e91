using System.IO.Pipelines;
using Handspun.Gauges.Profiles;

namespace Handspun.Gauges.Links;

/// <summary>An open way to a gauge: knows ports, not meanings.</summary>
/// <remarks>The input completes, or a read throws <see cref="IOException"/> or <see cref="ObjectDisposedException"/>, when the cable is out. Disposing never hangs for long.</remarks>
public interface IGaugeLink : IAsyncDisposable
{
    /// <summary>The bytes that the gauge sends.</summary>
    PipeReader Input { get; }

    /// <summary>Sends bytes to the gauge. A way that only listens swallows them.</summary>
    /// <exception cref="IOException">They did not go out: the cable is out, or the gauge holds the line.</exception>
    ValueTask SendAsync(ReadOnlyMemory<byte> bytes, CancellationToken cancellationToken) => ValueTask.CompletedTask;

    /// <summary>Calls back at every pulse that comes beside the bytes, on a line of its own.</summary>
    /// <param name="index">Which line, and which of its edges.</param>
    /// <param name="pulse">Is called on another thread, with the source of the pulse as it stands in a journal.</param>
    /// <returns>To be disposed when it shall stop; null where this way has no such line.</returns>
    IDisposable? WatchPulses(IndexSettings index, Action<string> pulse) => null;

    /// <summary>What a HID gauge says of its reports, as it gave it; empty on every other way.</summary>
    ReadOnlyMemory<byte> ReportDescriptor => default;
}

/// <summary>Opens ways to gauges.</summary>
public interface ILinkOpener
{
    /// <summary>Opens the way to the gauge at a port.</summary>
    /// <exception cref="LinkUnavailableException">The port cannot be opened now; says why and what to do.</exception>
    Task<IGaugeLink> OpenAsync(GaugePort port, LinkSettings settings, CancellationToken cancellationToken);
}

using Handspun.Capture.Finishing;
using Handspun.Capture.Progress;

namespace Handspun.Capture.Bays;

/// <summary>Someone who is told what happens in a bay: a broker, a store. Each has a queue of its own, so a slow one holds nobody up.</summary>
public interface ICaptureReceiver
{
    /// <summary>Its name in logs.</summary>
    string Name { get; }

    /// <summary>How far a capture has come.</summary>
    ValueTask ProgressAsync(CaptureProgress progress, CancellationToken cancellationToken);

    /// <summary>A capture has started; its journal must be kept from here on.</summary>
    ValueTask StartedAsync(StartedCapture capture, CancellationToken cancellationToken);

    /// <summary>A capture that had started was only a touch of the shaft; no record follows.</summary>
    ValueTask DroppedAsync(string capture, CancellationToken cancellationToken);

    /// <summary>A capture has ended.</summary>
    ValueTask FinishedAsync(FinishedCapture capture, CancellationToken cancellationToken);
}

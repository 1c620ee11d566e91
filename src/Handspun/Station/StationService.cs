namespace Handspun.Station;

/// <summary>A part of the station that works in the background, and that ends while the broker can still tell of it.</summary>
/// <remarks>
/// The web server is the first to stop, and it waits for every MQTT connection to close. So the station's own parts stop
/// before that, the newest first, and the broker after them.
/// </remarks>
internal abstract class StationService : BackgroundService, IHostedLifecycleService
{
    /// <inheritdoc/>
    public Task StartingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StoppingAsync(CancellationToken cancellationToken) => StopAsync(cancellationToken);

    /// <inheritdoc/>
    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}

using Handspun.Bays;
using Handspun.Capture.Bays;
using Handspun.Gauges.Listening;
using Handspun.Jobs.Store;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Station;

/// <summary>Listens to the gauges while the station runs.</summary>
internal sealed class GaugeService(GaugeRoster gauges) : StationService
{
    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => gauges.RunAsync(stoppingToken);
}

/// <summary>Brings the store up to date before anything asks it.</summary>
internal sealed class StoreService(IDbContextFactory<JobsContext> contexts) : IHostedService
{
    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken) => StoreSchema.BringUpToDateAsync(contexts, cancellationToken);

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}

/// <summary>Runs the bay, and lets it go on where it was.</summary>
internal sealed class BayService(Bay bay, BayDesk desk) : StationService
{
    /// <inheritdoc/>
    public override async Task StartAsync(CancellationToken cancellationToken)
    {
        await desk.ResumeAsync(cancellationToken);
        await base.StartAsync(cancellationToken);
    }

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => bay.RunAsync(stoppingToken);
}

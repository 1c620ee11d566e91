using Handspun.Bays;
using Handspun.Broker;
using Handspun.Capture.Bays;
using Handspun.Gauges.Listening;
using Handspun.Jobs.Store;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Station;

/// <summary>Listens to the gauges while the station runs.</summary>
internal sealed class GaugeService(GaugeRoster gauges) : BackgroundService
{
    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => gauges.RunAsync(stoppingToken);
}

/// <summary>Brings the store up to date before anything asks it, and puts on the broker what counts.</summary>
internal sealed class StoreService(IDbContextFactory<JobsContext> contexts, JobStore store, ResultPublisher results) : IHostedService
{
    private const int JobsOnBroker = 50;

    /// <inheritdoc/>
    public async Task StartAsync(CancellationToken cancellationToken)
    {
        await StoreSchema.BringUpToDateAsync(contexts, cancellationToken);
        foreach (var job in await store.NewestAsync(JobsOnBroker, cancellationToken))
        {
            foreach (var point in job.Points)
            {
                await results.PublishCountingAsync(job, point, cancellationToken);
            }
        }
    }

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}

/// <summary>Runs the bay, and lets it go on where it was.</summary>
internal sealed class BayService(Bay bay, BayDesk desk) : BackgroundService
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

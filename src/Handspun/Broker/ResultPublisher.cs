using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Broker;

/// <summary>Publishes results of records; the one that counts at its point is retained, also for who comes after a restart.</summary>
internal sealed class ResultPublisher(StationBroker broker, JobStore store, StationOptions options) : StationService
{
    private const int JobsOnBroker = 50;

    /// <summary>Publishes a record that has just been made; it is retained unless another one counts.</summary>
    public Task PublishNewAsync(Job job, JobPoint point, CaptureRecord record, CancellationToken cancellationToken) =>
        PublishAsync(job.Number, point.Code, record, retain: point.Counting is null || point.Counting.Id == record.Id, cancellationToken);

    /// <summary>Publishes what counts at a point, so that it is there for whoever subscribes later.</summary>
    public async Task PublishCountingAsync(Job job, JobPoint point, CancellationToken cancellationToken)
    {
        if ((point.Counting ?? point.NewestFirst.FirstOrDefault()) is { } record)
        {
            await PublishAsync(job.Number, point.Code, record, retain: true, cancellationToken);
        }
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await broker.ReadyAsync(stoppingToken);
        foreach (var job in await store.NewestAsync(JobsOnBroker, stoppingToken))
        {
            foreach (var point in job.Points)
            {
                await PublishCountingAsync(job, point, stoppingToken);
            }
        }
    }

    private Task PublishAsync(string job, string point, CaptureRecord record, bool retain, CancellationToken cancellationToken) =>
        broker.PublishAsync(Topics.Result(job, point), ResultMessage.Of(job, point, record, options.Unit), retain, cancellationToken);
}

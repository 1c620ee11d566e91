using Handspun.Broker;
using Handspun.Jobs.Fits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Store;

namespace Handspun.Fits;

/// <summary>Files the clearance of a body in its bore as soon as both have a size, and again when another size counts.</summary>
internal sealed class FitDesk(JobStore store, ResultPublisher results, TimeProvider time) : IDisposable
{
    private readonly SemaphoreSlim _oneAtATime = new(1);

    /// <summary>Files what is due after something changed in a job. A job gets the point of a clearance when both its sizes are there.</summary>
    /// <param name="job">The job's number.</param>
    /// <param name="point">The point that changed: a bore, a body, or a clearance.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    public async Task RenewAsync(string job, string point, CancellationToken cancellationToken)
    {
        foreach (var pair in FitPair.All.Where(pair => point == pair.Bore || point == pair.Body || point == pair.Clearance.Code))
        {
            await _oneAtATime.WaitAsync(cancellationToken);
            try
            {
                if (await store.FindAsync(job, cancellationToken) is { } found)
                {
                    await FileAsync(found, pair, cancellationToken);
                }
            }
            finally
            {
                _oneAtATime.Release();
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _oneAtATime.Dispose();

    private async Task FileAsync(Job job, FitPair pair, CancellationToken cancellationToken)
    {
        if (ClearanceRecord.Due(job, pair, time) is not { } record)
        {
            return;
        }

        var code = pair.Clearance.Code;
        await store.AddPointAsync(job.Number, pair.Clearance, cancellationToken);
        var changed = await store.AttachAsync(job.Number, code, record, cancellationToken);
        await results.PublishNewAsync(changed, changed.Points.First(p => p.Code == code), record, cancellationToken);
    }
}

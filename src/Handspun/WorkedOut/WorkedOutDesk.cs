using Handspun.Broker;
using Handspun.Filing;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store;
using Handspun.Jobs.WorkedOut;
using Handspun.Station;

namespace Handspun.WorkedOut;

/// <summary>Files what is worked out of other records, a clearance or a cam's timing, as soon as they are there, and again when others count.</summary>
internal sealed class WorkedOutDesk(JobStore store, RecordFolder folder, ResultPublisher results, StationOptions options, TimeProvider time, ILogger<WorkedOutDesk> logger) : IDisposable
{
    private readonly SemaphoreSlim _oneAtATime = new(1);

    /// <summary>Files what is due after something changed at a point of a job.</summary>
    /// <param name="job">The job's number.</param>
    /// <param name="point">The point that changed.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    public async Task RenewAsync(string job, string point, CancellationToken cancellationToken)
    {
        foreach (var due in WorkedOutPoint.All.Where(all => all.Point.Code == point || all.Of.Contains(point)))
        {
            await _oneAtATime.WaitAsync(cancellationToken);
            try
            {
                if (await store.FindAsync(job, cancellationToken) is { } found)
                {
                    await FileAsync(found, due, cancellationToken);
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

    private async Task FileAsync(Job job, WorkedOutPoint due, CancellationToken cancellationToken)
    {
        if (due.Due(job, time) is not { } record)
        {
            return;
        }

        DrawPicture(job, due.Point.Title, record);
        await store.AddPointAsync(job.Number, due.Point, cancellationToken);
        var changed = await store.AttachAsync(job.Number, due.Point.Code, record, cancellationToken);
        await results.PublishNewAsync(changed, changed.Points.First(p => p.Code == due.Point.Code), record, cancellationToken);
    }

    private void DrawPicture(Job job, string title, CaptureRecord record)
    {
        try
        {
            if (TimingDrawing.Of(job, title, record, options.Unit) is { } picture)
            {
                folder.Write(record.Id, picture);
            }
        }
        catch (Exception e)
        {
            FilingLog.NotDrawn(logger, record.Id, e);   // a record without a picture is still a record
        }
    }
}

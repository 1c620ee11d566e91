using Handspun.Broker;
using Handspun.Jobs.Entries;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;
using Handspun.WorkedOut;

namespace Handspun.Entries;

/// <summary>Where what a tool showed is typed and becomes a record.</summary>
internal sealed class EntryDesk(JobStore store, ResultPublisher results, WorkedOutDesk workedOut, TimeProvider time)
{
    /// <summary>Reads an entry and, where nothing is wrong with it, files its record.</summary>
    /// <exception cref="JobNotFoundException">There is no such job or point.</exception>
    public async Task<EntryAnswer> TakeAsync(string job, string point, TypedEntry entry, CancellationToken cancellationToken)
    {
        var (found, place) = await FindAsync(job, point, cancellationToken);
        if (PointHold.Of(found, place) is { } reason)
        {
            return new(new Dictionary<string, string> { ["value"] = reason }, null);
        }

        var read = EntryReading.Of(place, entry);
        if (read.Figures is null)
        {
            return new(read.Problems, null);
        }

        var record = EntryRecord.Of(place, read, time);
        var changed = await store.AttachAsync(job, point, record, cancellationToken);
        await results.PublishNewAsync(changed, changed.Points.First(p => p.Code == point), record, cancellationToken);
        await workedOut.RenewAsync(job, point, cancellationToken);
        return new(read.Problems, record);
    }

    /// <summary>The job and the point.</summary>
    /// <exception cref="JobNotFoundException">There is no such job or point.</exception>
    public async Task<(Job Job, JobPoint Point)> FindAsync(string job, string point, CancellationToken cancellationToken)
    {
        var found = await store.GetAsync(job, cancellationToken);
        return (found, JobStore.PointIn(found, point));
    }
}

/// <summary>What came of an entry.</summary>
/// <param name="Problems">What is wrong, by field; empty where it was filed.</param>
/// <param name="Record">The record; null where something is wrong.</param>
internal sealed record EntryAnswer(IReadOnlyDictionary<string, string> Problems, CaptureRecord? Record);

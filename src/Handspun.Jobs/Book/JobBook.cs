using Handspun.Jobs.Orders;
using Handspun.Jobs.Store;

namespace Handspun.Jobs.Book;

/// <summary>Writes into the books of jobs. What may be written is decided by the acts (<see cref="Acts.StepActs"/> and its neighbours), which only look.</summary>
public sealed class JobBook(JobStore store, TimeProvider time)
{
    /// <summary>Writes one line.</summary>
    /// <param name="job">The job's number.</param>
    /// <param name="about">What it is about.</param>
    /// <param name="signature">Who writes, and how far they had read.</param>
    /// <param name="act">Looks at the job as it is and tells what is written, or refuses.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    /// <returns>The job as it is now.</returns>
    /// <exception cref="JobNotFoundException">There is no such job, step, part or point.</exception>
    /// <exception cref="BookRefusalException">Something is missing.</exception>
    /// <exception cref="HeldBackException">The job stands so that it cannot be done now.</exception>
    /// <exception cref="WrittenMeanwhileException">Somebody else wrote about the same thing.</exception>
    public Task<Job> WriteAsync(string job, string about, Signature signature, Func<Job, Deed> act, CancellationToken cancellationToken) =>
        WriteAsync(job, _ => about, signature, found => [new BookLine(about, act(found))], cancellationToken);

    /// <summary>Writes several lines that belong together, all or none.</summary>
    /// <param name="job">The job's number.</param>
    /// <param name="watched">What must not have been written about since the signature's version; null for nothing.</param>
    /// <param name="signature">Who writes, and how far they had read.</param>
    /// <param name="act">Looks at the job as it is and tells what is written, or refuses.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    /// <returns>The job as it is now.</returns>
    public Task<Job> WriteAsync(string job, Func<Job, string?> watched, Signature signature, Func<Job, IReadOnlyList<BookLine>> act, CancellationToken cancellationToken) =>
        store.ChangeAsync(
            job,
            found =>
            {
                RefuseWhatWasWrittenMeanwhile(found, watched(found), signature);
                var (name, now) = (signature.Name, time.GetUtcNow());
                foreach (var line in act(found))
                {
                    if (found.ClosedAt is not null && line.Deed is not JobReopened)
                    {
                        throw new HeldBackException($"Job {found.Number} is closed: take it up again first.");
                    }

                    Apply(found, line.Deed, line.About, now);
                    found.Entries.Add(new BookEntry { Number = ++found.Version, At = now, By = name, About = line.About, Deed = line.Deed });
                }
            },
            cancellationToken);

    private static void RefuseWhatWasWrittenMeanwhile(Job job, string? watched, Signature signature)
    {
        if (signature.Seen is { } seen && job.Book.LastOrDefault(entry => entry.Number > seen && (signature.Exact || entry.About == watched)) is { } newer)
        {
            throw new WrittenMeanwhileException(newer, signature.Exact);
        }
    }

    private static void Apply(Job job, Deed deed, string about, DateTimeOffset now)
    {
        switch (deed)
        {
            case JobClosed:
                job.ClosedAt = now;
                break;
            case JobReopened:
                job.ClosedAt = null;
                break;
            case LimitSet set:
                job.Points.First(point => Subject.Limit(point.Code) == about).Limit = set.Limit with { };
                break;
        }
    }
}

/// <summary>A line to be written.</summary>
/// <param name="About">What it is about, as <see cref="Subject"/> writes it.</param>
/// <param name="Deed">What was done.</param>
public sealed record BookLine(string About, Deed Deed);

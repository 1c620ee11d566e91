using Handspun.Jobs.Orders;
using Handspun.Jobs.Standing;

namespace Handspun.Jobs.Book.Acts;

/// <summary>What can be written about a job as a whole.</summary>
public static class JobActs
{
    /// <summary>Closes a job. Where something is left, somebody says why.</summary>
    /// <exception cref="BookRefusalException">Something is left, and nobody says why.</exception>
    /// <exception cref="HeldBackException">It is closed already.</exception>
    public static Deed Close(Job job, string? why)
    {
        if (job.ClosedAt is not null)
        {
            throw new HeldBackException($"Job {job.Number} is closed already.");
        }

        var left = Left(job);
        var reason = Typed.Words("why", why);
        return left.Count > 0 && reason is null
            ? throw new BookRefusalException("why", $"{(left.Count == 1 ? "One thing is" : $"{left.Count} things are")} still open ({string.Join(", ", left.Select(step => step.Title))}): do or leave them out, or say here why the job is closed all the same.")
            : new JobClosed([.. left.Select(step => step.Code)], reason);
    }

    /// <summary>Takes a closed job up again.</summary>
    /// <exception cref="BookRefusalException">There is no reason.</exception>
    /// <exception cref="HeldBackException">It is not closed.</exception>
    public static Deed Reopen(Job job, string? why) => job.ClosedAt is null
        ? throw new HeldBackException($"Job {job.Number} is not closed.")
        : new JobReopened(Typed.Needed("why", why, "Say why it is taken up again."));

    /// <summary>What is not through in a job: code and title; for a job without a plan, its points that were not measured.</summary>
    public static IReadOnlyList<(string Code, string Title)> Left(Job job) => job.Plan is not null
        ? [.. JobStanding.Of(job).Left.Select(step => (step.Step.Code, step.Step.Title))]
        : [.. job.InOrder.Where(point => point.Counting is null).Select(point => (point.Code, point.Title))];
}

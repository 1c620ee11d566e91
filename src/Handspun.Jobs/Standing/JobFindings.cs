using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;

namespace Handspun.Jobs.Standing;

/// <summary>A finding of a job with its photos.</summary>
/// <param name="Entry">The line that noted it.</param>
/// <param name="Noted">What was found.</param>
/// <param name="Photos">Its photos, oldest first.</param>
public sealed record JobFinding(BookEntry Entry, FindingNoted Noted, IReadOnlyList<BookEntry> Photos)
{
    /// <summary>Its number in the job.</summary>
    public int Number => Entry.Number;
}

/// <summary>The findings of a job.</summary>
public static class JobFindings
{
    /// <summary>All of them, oldest first.</summary>
    public static IReadOnlyList<JobFinding> Of(Job job) =>
        [.. job.Book.Where(entry => entry.Deed is FindingNoted).Select(entry => new JobFinding(entry, (FindingNoted)entry.Deed, PhotosOf(job, entry.About)))];

    /// <summary>The lines that added photos to one thing, oldest first.</summary>
    /// <param name="job">The job.</param>
    /// <param name="subject">As <see cref="Subject"/> writes it.</param>
    public static IReadOnlyList<BookEntry> PhotosOf(Job job, string subject) => [.. job.BookOf(subject).Where(entry => entry.Deed is PhotoAdded)];
}

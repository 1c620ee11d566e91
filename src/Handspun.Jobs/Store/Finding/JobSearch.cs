using Handspun.Jobs.Orders;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Jobs.Store.Finding;

/// <summary>Which jobs are asked for, newest first.</summary>
/// <param name="Typed">Words, each of which must stand in the job's number, title or customer, or in its bike's make, model, year, VIN or plate; nothing asks for all jobs.</param>
/// <param name="Page">Which page of what is found, from 1.</param>
/// <param name="PerPage">How many jobs a page has, 1 to <see cref="MostPerPage"/>.</param>
public sealed record JobSearch(string? Typed = null, int Page = 1, int PerPage = JobSearch.UsualPerPage)
{
    /// <summary>How many jobs a page has where nobody says.</summary>
    public const int UsualPerPage = 25;

    /// <summary>How many jobs a page can have.</summary>
    public const int MostPerPage = 200;

    private const int LongestTyped = 200;

    /// <summary>What is wrong with it and what to do, in one sentence; null where nothing is.</summary>
    public string? Problem =>
        Page is < 1 or > 1_000_000 ? "Pages count from 1: ask for page 1, or a later one."
        : PerPage is < 1 or > MostPerPage ? $"Ask for 1 to {MostPerPage} jobs at once."
        : Typed?.Length > LongestTyped ? $"Search by fewer words: {LongestTyped} characters at most."
        : null;

    internal IQueryable<Job> In(IQueryable<Job> jobs) => FoldedText.Words(Typed).Aggregate(
        jobs,
        (found, word) => found.Where(job => EF.Property<string>(job, SearchColumns.FindText).Contains(word) || EF.Property<string>(job.Bike, SearchColumns.FindText).Contains(word)));
}

/// <summary>One page of the jobs that were found.</summary>
/// <param name="Search">What was asked for.</param>
/// <param name="Jobs">The jobs of the page, newest first, with as much of them as was asked for.</param>
/// <param name="Count">How many jobs were found in all.</param>
public sealed record FoundJobs(JobSearch Search, IReadOnlyList<Job> Jobs, int Count)
{
    /// <summary>How many pages there are, at least 1.</summary>
    public int Pages => Math.Max(1, (Count + Search.PerPage - 1) / Search.PerPage);
}

namespace Handspun.Jobs.Book;

/// <summary>One line of a job's book: who did what, and when. Lines are added and never changed, so what was undone is still there.</summary>
public sealed class BookEntry
{
    /// <summary>The store's key.</summary>
    public int Id { get; init; }

    /// <summary>The job that it belongs to.</summary>
    public int JobId { get; init; }

    /// <summary>Its number in the job, from 1, without gaps; the job's version after it was written.</summary>
    public required int Number { get; init; }

    /// <summary>When it was written.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Who says so.</summary>
    public required string By { get; init; }

    /// <summary>What it is about, as <see cref="Subject"/> writes it.</summary>
    public required string About { get; init; }

    /// <summary>What was done.</summary>
    public required Deed Deed { get; init; }
}

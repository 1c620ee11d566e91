using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;

namespace Handspun.Jobs.Standing;

/// <summary>A part of a job: where it goes, how it sat, what becomes of it.</summary>
public sealed record JobPart
{
    /// <summary>Its name in data.</summary>
    public required string Code { get; init; }

    /// <summary>What it is.</summary>
    public required string Title { get; init; }

    /// <summary>Where it sits; empty where there is only one.</summary>
    public required string Place { get; init; }

    /// <summary>What is to be noted of the way it faced; null where nothing is.</summary>
    public string? Faces { get; init; }

    /// <summary>The newest line that says how it sat; null where none does.</summary>
    public BookEntry? Faced { get; init; }

    /// <summary>The newest decision; null where nobody has decided.</summary>
    public BookEntry? Decided { get; init; }

    /// <summary>All that the book says of it, oldest first.</summary>
    public required IReadOnlyList<BookEntry> Entries { get; init; }

    /// <summary>What it is and where it sits, in one line.</summary>
    public string Name => Place.Length == 0 ? Title : $"{Title}, {Place}";

    /// <summary>How it sat, in words; null where nobody noted it.</summary>
    public string? FacedInWords => (Faced?.Deed as PartFaced)?.Faced;

    /// <summary>What becomes of it; null where nobody has decided.</summary>
    public PartDecided? Decision => Decided?.Deed as PartDecided;
}

/// <summary>The parts of a job: those of its plan, then those that were added.</summary>
public static class JobParts
{
    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<JobPart> Of(Job job)
    {
        var planned = (job.Plan?.Parts ?? []).Select(part => (part.Code, part.Title, part.Place, part.Faces));
        var added = job.Book.Where(entry => entry.Deed is PartAdded)
            .Select(entry => (Code: entry.About[Subject.Part("").Length..], Deed: (PartAdded)entry.Deed))
            .Select(part => (part.Code, part.Deed.Title, part.Deed.Place, Faces: (string?)null));
        return [.. planned.Concat(added).Select(part => Of(job, part))];
    }

    private static JobPart Of(Job job, (string Code, string Title, string Place, string? Faces) part)
    {
        var entries = job.BookOf(Subject.Part(part.Code)).ToList();
        return new()
        {
            Code = part.Code,
            Title = part.Title,
            Place = part.Place,
            Faces = part.Faces,
            Faced = entries.LastOrDefault(entry => entry.Deed is PartFaced),
            Decided = entries.LastOrDefault(entry => entry.Deed is PartDecided),
            Entries = entries,
        };
    }
}

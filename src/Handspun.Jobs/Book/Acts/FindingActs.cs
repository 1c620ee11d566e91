using Handspun.Jobs.Orders;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;

namespace Handspun.Jobs.Book.Acts;

/// <summary>A finding as it was typed.</summary>
public sealed record TypedFinding
{
    /// <summary>Codes of what was seen.</summary>
    public IReadOnlyList<string> Signs { get; init; } = [];

    /// <summary>In words of one's own.</summary>
    public string? Words { get; init; }

    /// <summary>Where.</summary>
    public string? Place { get; init; }

    /// <summary>The step in which it was found.</summary>
    public string? Step { get; init; }

    /// <summary>The part that it is about: its code.</summary>
    public string? Part { get; init; }

    /// <summary>A part that is not on the list yet: what it is.</summary>
    public string? NewPart { get; init; }

    /// <summary>What becomes of the part, as a code; nothing where nobody has decided.</summary>
    public string? Choice { get; init; }

    /// <summary>Why.</summary>
    public string? Why { get; init; }
}

/// <summary>What can be written about what was found.</summary>
public static class FindingActs
{
    /// <summary>Notes a finding and, where somebody has decided, what becomes of the part. Looking is never held back.</summary>
    /// <exception cref="BookRefusalException">Nothing was said, or what was said cannot be.</exception>
    /// <exception cref="JobNotFoundException">There is no such step or part.</exception>
    public static IReadOnlyList<BookLine> Note(Job job, TypedFinding typed)
    {
        var words = Typed.Words("words", typed.Words) ?? "";
        if (typed.Signs.FirstOrDefault(sign => !FindingSigns.All.ContainsKey(sign)) is { } unknown)
        {
            throw new BookRefusalException("signs", $"There is no sign '{unknown}': use {string.Join(", ", FindingSigns.All.Keys)}, or say it in words.");
        }

        if (typed.Signs.Count == 0 && words.Length == 0)
        {
            throw new BookRefusalException("words", "Say what was seen: pick a sign, or write it in words.");
        }

        if (typed.Signs.Contains(FindingSigns.Sound) && typed.Signs.Count > 1)
        {
            throw new BookRefusalException("signs", "It is either as it should be or shows something: take one of them back.");
        }

        var step = Blank(typed.Step);
        if (step is not null && JobStanding.Of(job).Find(step) is null)
        {
            throw new JobNotFoundException($"The plan of job {job.Number} has no step '{step}': the job's page lists its steps.");
        }

        var lines = new List<BookLine>();
        var part = PartOf(job, typed, lines);
        lines.Add(new(Subject.Finding(job.Version + lines.Count + 1), new FindingNoted(typed.Signs, words, Typed.Words("place", typed.Place), step, part)));
        if (Blank(typed.Choice) is { } choice)
        {
            lines.Add(new(
                Subject.Part(part ?? throw new BookRefusalException("part", "Say which part that is decided of: pick it from the list, or write what it is.")),
                PartActs.Decision(choice, Blank(typed.Why) ?? BookSentence.Finding((FindingNoted)lines[^1].Deed))));
        }

        return lines;
    }

    /// <summary>Adds a photo to a finding, a part or a step.</summary>
    /// <exception cref="JobNotFoundException">There is no such thing in the job.</exception>
    public static Deed Photo(Job job, string about, PhotoAdded photo)
    {
        var (standing, parts) = (JobStanding.Of(job), JobParts.Of(job));
        var known = job.Entries.Exists(entry => entry.About == about && entry.Deed is FindingNoted)
            || parts.Any(part => Subject.Part(part.Code) == about)
            || standing.Steps.Any(step => Subject.Step(step.Step.Code) == about);
        return known
            ? photo with { Caption = Typed.Words("caption", photo.Caption) }
            : throw new JobNotFoundException($"Job {job.Number} has no '{about}' that a photo could belong to: give finding/NUMBER, part/CODE or step/CODE.");
    }

    private static string? PartOf(Job job, TypedFinding typed, List<BookLine> lines)
    {
        if (Blank(typed.NewPart) is { } title)
        {
            var (code, added) = PartActs.Add(job, title, typed.Place);
            lines.Add(new(Subject.Part(code), added));
            return code;
        }

        return Blank(typed.Part) is { } part ? PartActs.Find(job, part).Code : null;
    }

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}

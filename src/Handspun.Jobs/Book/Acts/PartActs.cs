using System.Text.RegularExpressions;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;

namespace Handspun.Jobs.Book.Acts;

/// <summary>What can be written about parts.</summary>
public static partial class PartActs
{
    private const int LongestCode = 32;

    /// <summary>Puts a part on the job's list.</summary>
    /// <returns>The code that it gets, and the deed.</returns>
    /// <exception cref="BookRefusalException">Nobody said what it is.</exception>
    public static (string Code, Deed Deed) Add(Job job, string? title, string? place)
    {
        var what = Typed.Needed("title", title, "Say what the part is.");
        var where = Typed.Words("place", place) ?? "";
        var stem = NoLetters().Replace($"{what} {where}".ToLowerInvariant(), "-").Trim('-');
        stem = stem.Length == 0 ? "part" : stem[..Math.Min(stem.Length, LongestCode)].Trim('-');
        var taken = JobParts.Of(job).Select(part => part.Code).ToHashSet();
        var code = Enumerable.Range(1, taken.Count + 1).Select(n => n == 1 ? stem : $"{stem}-{n}").First(free => !taken.Contains(free));
        return (code, new PartAdded(what, where));
    }

    /// <summary>Notes how a part sat.</summary>
    /// <exception cref="BookRefusalException">Nothing was said.</exception>
    /// <exception cref="JobNotFoundException">There is no such part.</exception>
    public static Deed Face(Job job, string part, string? faced)
    {
        _ = Find(job, part);
        return new PartFaced(Typed.Needed("faced", faced, "Say how it sat, so that it goes back the same way."));
    }

    /// <summary>Decides what becomes of a part.</summary>
    /// <exception cref="BookRefusalException">The choice is unknown, or there is no reason.</exception>
    /// <exception cref="JobNotFoundException">There is no such part.</exception>
    public static Deed Decide(Job job, string part, string? choice, string? why)
    {
        _ = Find(job, part);
        return Decision(choice, why);
    }

    internal static PartDecided Decision(string? choice, string? why) => PartChoices.All.TryGetValue(choice ?? "", out var chosen)
        ? new(chosen, Typed.Needed("why", why, "Say why: the customer and the next mechanic will ask."))
        : throw new BookRefusalException("choice", $"Say what becomes of it: {string.Join(", ", PartChoices.All.Keys)}.");

    internal static JobPart Find(Job job, string part) =>
        JobParts.Of(job).FirstOrDefault(p => p.Code == part) ?? throw new JobNotFoundException($"Job {job.Number} has no part '{part}': its page lists its parts.");

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NoLetters();
}

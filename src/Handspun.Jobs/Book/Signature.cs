namespace Handspun.Jobs.Book;

/// <summary>Who writes into a job's book, and how far they had read it.</summary>
/// <param name="By">Their name.</param>
/// <param name="Seen">The job's version that they had before them; null where they do not mind what was written since.</param>
/// <param name="Exact">Whether nothing at all may have been written since; otherwise, nothing about the same thing.</param>
public sealed record Signature(string? By, int? Seen = null, bool Exact = false)
{
    private const int LongestName = 60;

    /// <summary>The name, without blanks at its ends.</summary>
    /// <exception cref="BookRefusalException">There is none, or it is too long.</exception>
    public string Name => By?.Trim() switch
    {
        null or "" => throw new BookRefusalException("by", "Give your name: it stands in the job's book with what you did."),
        { Length: > LongestName } => throw new BookRefusalException("by", $"Make the name shorter: {LongestName} characters at most."),
        var name => name,
    };
}

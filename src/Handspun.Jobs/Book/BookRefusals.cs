namespace Handspun.Jobs.Book;

/// <summary>Something is missing in what was to be written; nothing was.</summary>
/// <param name="field">The field that needs another look: <c>by, why, words, title …</c></param>
/// <param name="sentence">What to do.</param>
public sealed class BookRefusalException(string field, string sentence) : Exception(sentence)
{
    /// <summary>The field that needs another look.</summary>
    public string Field { get; } = field;
}

/// <summary>The job stands so that this cannot be done now; nothing was written.</summary>
/// <param name="sentence">Why, and what to do.</param>
public sealed class HeldBackException(string sentence) : Exception(sentence);

/// <summary>Somebody else wrote about the same thing meanwhile; nothing was written.</summary>
/// <param name="entry">Their newest line.</param>
/// <param name="exact">Whether the writer asked that nothing at all be written since.</param>
public sealed class WrittenMeanwhileException(BookEntry entry, bool exact) : Exception(
    $"{entry.By} wrote in this job meanwhile ({BookSentence.Of(entry.Deed)}). Look at what stands there now, then send yours again if it still holds.")
{
    /// <summary>Their newest line.</summary>
    public BookEntry Entry { get; } = entry;

    /// <summary>Whether the writer asked that nothing at all be written since.</summary>
    public bool Exact { get; } = exact;
}

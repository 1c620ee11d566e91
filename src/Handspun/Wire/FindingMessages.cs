using Handspun.Jobs.Book;
using Handspun.Jobs.Standing;

namespace Handspun.Wire;

/// <summary>A finding.</summary>
internal sealed record FindingMessage(
    int Finding, DateTimeOffset At, string By, string? Step, string? Place, string? Part, IReadOnlyList<string> Signs, string Words, string Sentence, IReadOnlyList<PhotoMessage> Photos)
{
    public static FindingMessage Of(JobFinding finding) => new(
        finding.Number,
        finding.Entry.At,
        finding.Entry.By,
        finding.Noted.Step,
        finding.Noted.Place,
        finding.Noted.Part,
        finding.Noted.Signs,
        finding.Noted.Words,
        BookSentence.Finding(finding.Noted),
        [.. finding.Photos.Select(PhotoMessage.Of)]);
}

/// <summary>A photo; its picture is at <c>photos/{photo}</c> of the job.</summary>
internal sealed record PhotoMessage(string Photo, DateTimeOffset At, string By, int Width, int Height, long Bytes, string Sha256, string? Caption)
{
    public static PhotoMessage Of(BookEntry entry)
    {
        var photo = (PhotoAdded)entry.Deed;
        return new(photo.Photo, entry.At, entry.By, photo.Width, photo.Height, photo.Bytes, photo.Sha256, photo.Caption);
    }
}

/// <summary>A part: where it goes, how it sat, what becomes of it.</summary>
internal sealed record PartMessage(string Part, string Title, string Place, string? Faces, string? Faced, string? Choice, string? Why, string? DecidedBy, IReadOnlyList<EntryMessage> Book)
{
    public static PartMessage Of(JobPart part) => new(
        part.Code,
        part.Title,
        part.Place,
        part.Faces,
        part.FacedInWords,
        part.Decision is { } decision ? PartChoices.Of(decision.Choice) : null,
        part.Decision?.Why,
        part.Decided?.By,
        [.. part.Entries.Select(EntryMessage.Of)]);
}

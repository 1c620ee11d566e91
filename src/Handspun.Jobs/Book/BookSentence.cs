
namespace Handspun.Jobs.Book;

/// <summary>Lines of the book in words.</summary>
public static class BookSentence
{
    /// <summary>What was done, to follow a name, such as <c>ticked it: manual page 12</c>.</summary>
    public static string Of(Deed deed) => deed switch
    {
        Ticked ticked => With("ticked it", ticked.Words),
        Unticked unticked => With("took the tick back", unticked.Why),
        Skipped skipped => With("left it out", skipped.Why),
        TakenUpAgain again => With("took it up again", again.Why),
        GateDecided { GoOn: true } go => With("decided to go on", go.Why),
        GateDecided stop => With("decided to stop", stop.Why),
        FindingNoted finding => With("noted", Finding(finding)),
        PhotoAdded photo => With("added a photo", photo.Caption),
        PartAdded part => $"put {Name(part)} on the list",
        PartFaced faced => With("noted how it sat", faced.Faced),
        PartDecided part => With($"decided: {PartChoices.InWords(part.Choice).ToLowerInvariant()}", part.Why),
        LimitSet { Limit.Confirmed: true } limit => With($"confirmed the limit {limit.Typed}", limit.Limit.Source),
        LimitSet limit => With($"set the limit {limit.Typed}", limit.Limit.Source),
        JobClosed closed => With(closed.Left.Count == 0 ? "closed the job" : $"closed the job with {closed.Left.Count} steps left", closed.Why),
        JobReopened reopened => With("took the job up again", reopened.Why),
        _ => throw new ArgumentOutOfRangeException(nameof(deed), deed, "No such deed."),
    };

    /// <summary>What was found, in one line: place, signs, words.</summary>
    public static string Finding(FindingNoted finding)
    {
        var signs = string.Join(", ", finding.Signs.Select(sign => FindingSigns.All.GetValueOrDefault(sign, sign)));
        return string.Join(": ", new[] { finding.Place, signs, finding.Words }.Where(text => !string.IsNullOrEmpty(text)));
    }

    private static string Name(PartAdded part) => part.Place.Length == 0 ? part.Title : $"{part.Title}, {part.Place},";

    private static string With(string did, string? words) => string.IsNullOrEmpty(words) ? did : $"{did}: {words}";
}

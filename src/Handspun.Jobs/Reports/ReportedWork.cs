using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Standing;

namespace Handspun.Jobs.Reports;

/// <summary>A photo in a report.</summary>
/// <param name="Photo">The line of the book that added it.</param>
/// <param name="Caption">What it shows, in words.</param>
public sealed record ReportedPhoto(PhotoAdded Photo, string Caption);

/// <summary>A finding, with photos.</summary>
/// <param name="Where">The step or part where it was found; empty where nobody said.</param>
/// <param name="Seen">What was seen.</param>
/// <param name="IsSound">Whether all was as it should be.</param>
/// <param name="By">Who and when.</param>
/// <param name="Photos">Its photos.</param>
public sealed record ReportedFinding(string Where, string Seen, bool IsSound, string By, IReadOnlyList<ReportedPhoto> Photos)
{
    /// <summary>Where it was found and what was seen.</summary>
    public string Title => Where.Length == 0 ? Seen : $"{Where}: {Seen}";
}

/// <summary>A part.</summary>
/// <param name="Name">What it is and where it goes.</param>
/// <param name="Faced">How it sat, or that nobody noted it.</param>
/// <param name="Choice">What becomes of it, or that nobody has decided.</param>
/// <param name="Why">The reason.</param>
/// <param name="By">Who decided, and when.</param>
/// <param name="Photos">Its photos.</param>
public sealed record ReportedPart(string Name, string Faced, string Choice, string Why, string By, IReadOnlyList<ReportedPhoto> Photos);

/// <summary>A check, or a look that a plan asks for.</summary>
/// <param name="Title">What it is.</param>
/// <param name="State"><c>Done</c> or <c>Left out</c>.</param>
/// <param name="Words">What is to be remembered of it, or why it was left out.</param>
/// <param name="By">Who and when.</param>
/// <param name="Photos">Its photos.</param>
public sealed record ReportedCheck(string Title, string State, string Words, string By, IReadOnlyList<ReportedPhoto> Photos);

/// <summary>A decision at a gate.</summary>
/// <param name="Title">The gate.</param>
/// <param name="Choice"><c>Go on</c> or <c>Stop</c>.</param>
/// <param name="Why">The reason.</param>
/// <param name="Result">What the result said then.</param>
/// <param name="By">Who and when.</param>
public sealed record ReportedDecision(string Title, string Choice, string Why, string Result, string By);

/// <summary>What people did in a job, as its report tells it.</summary>
internal static class ReportedWork
{
    public static IReadOnlyList<ReportedFinding> Findings(Job job, ReportClock clock) => [.. JobFindings.Of(job).Select(finding => new ReportedFinding(
        WhereOf(job, finding),
        BookSentence.Finding(finding.Noted),
        finding.Noted.Signs.Contains(FindingSigns.Sound),
        Signed(finding.Entry, clock),
        Photos(finding.Photos)))];

    public static IReadOnlyList<ReportedPart> Parts(Job job, ReportClock clock) => [.. JobParts.Of(job).Select(part => new ReportedPart(
        part.Name,
        part.FacedInWords ?? (part.Faces is null ? "" : "not noted"),
        part.Decision is { } decision ? PartChoices.InWords(decision.Choice) : "not decided",
        part.Decision?.Why ?? "",
        part.Decided is { } decided ? Signed(decided, clock) : "",
        Photos(JobFindings.PhotosOf(job, Subject.Part(part.Code)))))];

    public static IReadOnlyList<ReportedCheck> Checks(Job job, JobStanding standing, ReportClock clock) =>
        [.. standing.Steps.Where(step => step is { Step.Kind: not StepKind.Point, Settled.Deed: Ticked } or { Settled.Deed: Skipped })
            .Select(step => new ReportedCheck(
                step.Step.Title,
                step.Settled!.Deed is Ticked ? "Done" : "Left out",
                (step.Settled.Deed as Ticked)?.Words ?? (step.Settled.Deed as Skipped)?.Why ?? "",
                Signed(step.Settled, clock),
                Photos(JobFindings.PhotosOf(job, Subject.Step(step.Step.Code)))))];

    public static IReadOnlyList<ReportedDecision> Decisions(Job job, ReportClock clock) =>
        [.. job.Book.Where(entry => entry.Deed is GateDecided).Select(entry => (entry, decided: (GateDecided)entry.Deed)).Select(line => new ReportedDecision(
            job.Plan?.Steps.FirstOrDefault(step => Subject.Step(step.Code) == line.entry.About)?.Title ?? line.entry.About,
            line.decided.GoOn ? "Go on" : "Stop",
            line.decided.Why,
            line.decided.Result,
            Signed(line.entry, clock)))];

    /// <summary>Such as <c>A. Nobody, 25 Nov 2026, 11:42</c>.</summary>
    public static string Signed(BookEntry entry, ReportClock clock) => $"{entry.By}, {clock.Minute(entry.At)}";

    private static string WhereOf(Job job, JobFinding finding) => job.Plan?.Find(finding.Noted.Step ?? "")?.Title
        ?? JobParts.Of(job).FirstOrDefault(part => part.Code == finding.Noted.Part)?.Name
        ?? "";

    private static IReadOnlyList<ReportedPhoto> Photos(IEnumerable<BookEntry> entries) =>
        [.. entries.Select(entry => (PhotoAdded)entry.Deed).Select(photo => new ReportedPhoto(photo, photo.Caption ?? ""))];
}

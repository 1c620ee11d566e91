using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Standing;
using Handspun.Pages.Plans;

namespace Handspun.Http.Plans;

/// <summary>Findings, photos and parts as the pages show them.</summary>
internal static class ViewsOfFindings
{
    private const string NoFaces = "Which way did it sit?";

    /// <summary>A finding.</summary>
    public static FindingView Of(Job job, JobFinding finding) => new(
        finding.Number.ToString(System.Globalization.CultureInfo.InvariantCulture),
        BookSentence.Finding(finding.Noted),
        [.. finding.Noted.Signs.Select(sign => FindingSigns.All.GetValueOrDefault(sign, sign))],
        finding.Noted.Place,
        finding.Noted.Words,
        finding.Noted.Step is { } step ? new PlaceLink(ViewsOfPlans.AddressOf(job, step), job.Plan?.Find(step)?.Title ?? step) : null,
        finding.Noted.Part is { } part ? new PlaceLink(PartAddress(job, part), JobParts.Of(job).FirstOrDefault(p => p.Code == part)?.Name ?? part) : null,
        $"{finding.Entry.By}, {ViewsOfPlans.At(finding.Entry.At)}",
        Photos(job, finding.Entry.About, finding.Noted.Step is { } back ? ViewsOfPlans.AddressOf(job, back) : $"/jobs/{job.Number}"));

    /// <summary>What can be picked when something is noted.</summary>
    public static FindingFormView Form(Job job, string step, FormState form) =>
        new(job.Number, step, job.Plan?.Find(step)?.Places ?? [], Parts(job), job.Version, form);

    /// <summary>The photos of one thing.</summary>
    public static PhotosView Photos(Job job, string about, string back) => new(
        job.Number,
        about,
        back,
        [.. JobFindings.PhotosOf(job, about).Select(entry => Photo(job, entry, (PhotoAdded)entry.Deed))]);

    /// <summary>The parts of a job.</summary>
    public static IReadOnlyList<PartLine> Parts(Job job) => [.. JobParts.Of(job).Select(Line)];

    /// <summary>The page of a part.</summary>
    public static PartView Part(Job job, JobPart part, FormState form) => new()
    {
        Job = job.Number,
        Bike = job.Bike.Title,
        Part = Line(part),
        Faces = part.Faces ?? NoFaces,
        Photos = Photos(job, Subject.Part(part.Code), PartAddress(job, part.Code)),
        Findings = [.. JobFindings.Of(job).Where(finding => finding.Noted.Part == part.Code).Select(finding => Of(job, finding))],
        History = ViewsOfPlans.History(part.Entries),
        Version = job.Version,
        Form = form,
    };

    /// <summary>The page of a part in addresses.</summary>
    public static string PartAddress(Job job, string part) => $"/jobs/{job.Number}/parts/{part}";

    private static PartLine Line(JobPart part) => new(
        part.Code,
        part.Title,
        part.Place,
        part.FacedInWords,
        part.Decision is { } decision ? PartChoices.Of(decision.Choice) : null,
        part.Decision is { } said ? PartChoices.InWords(said.Choice) : null,
        part.Decision is { } reason ? $"{reason.Why} ({part.Decided!.By})" : null);

    private static PhotoView Photo(Job job, BookEntry entry, PhotoAdded photo)
    {
        var address = $"/api/v1/jobs/{job.Number}/photos/{photo.Photo}";
        var foot = $"{entry.By}, {ViewsOfPlans.At(entry.At)}";
        return new(address, address + "?small=true", photo.Caption is null ? $"Photo by {foot}" : $"{photo.Caption} ({foot})", photo.Width, photo.Height);
    }
}

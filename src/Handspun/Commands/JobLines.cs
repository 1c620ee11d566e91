using Handspun.Http.Plans;
using Handspun.Jobs.Book;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.Standing;
using Handspun.Wire;

namespace Handspun.Commands;

/// <summary>A job in lines of text.</summary>
internal static class JobLines
{
    /// <summary>How its plan stands, its points with their records, its findings and its parts.</summary>
    public static IEnumerable<string> Of(Job job, LengthUnit unit)
    {
        if (job.Customer is { } customer)
        {
            yield return $"Customer: {customer}";
        }

        foreach (var step in JobStanding.Of(job).Steps.Select(step => ViewsOfPlans.Line(job, step, unit)))
        {
            yield return step.Note is null ? $"{step.Word}: {step.Title}" : $"{step.Word}: {step.Title}. {step.Note}";
        }

        foreach (var point in job.InOrder)
        {
            yield return $"Point {point.Code}: {point.Title}{(point.Records.Count == 0 ? ", not measured" : "")}";
            foreach (var record in point.NewestFirst)
            {
                yield return $"  {Of(job, point, record, unit)}";
            }
        }

        foreach (var finding in JobFindings.Of(job))
        {
            yield return $"Finding {finding.Number}: {BookSentence.Finding(finding.Noted)} ({finding.Entry.By})";
        }

        foreach (var part in ViewsOfFindings.Parts(job).Where(part => !part.IsUntouched))
        {
            yield return $"Part {part.Id}: {string.Join(". ", new[] { part.Name, part.Faced, part.ChoiceWord is null ? null : $"{part.ChoiceWord}: {part.Why}" }.OfType<string>())}";
        }
    }

    /// <summary>One record.</summary>
    public static string Of(Job job, JobPoint point, CaptureRecord record, LengthUnit unit) =>
        $"{record.Id}  {point.Title}{(point.Counting?.Id == record.Id ? "" : " (does not count)")}: {ResultMessage.Of(job.Number, point.Code, record, unit).Sentence}";
}

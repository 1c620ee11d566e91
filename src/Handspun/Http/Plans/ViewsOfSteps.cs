using Handspun.Jobs.Book;
using Handspun.Jobs.Cautions;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;
using Handspun.Pages.Plans;

namespace Handspun.Http.Plans;

/// <summary>Single steps as their pages show them.</summary>
internal static class ViewsOfSteps
{
    /// <summary>The page of a step.</summary>
    /// <exception cref="JobNotFoundException">There is no such step.</exception>
    public static StepView Of(Job job, string code, Showing shown, FormState form)
    {
        var standing = JobStanding.Of(job);
        var place = standing.Steps.ToList().FindIndex(s => s.Step.Code == code);
        if (place < 0)
        {
            throw new JobNotFoundException($"The plan of job {job.Number} has no step '{code}': the job's page lists its steps.");
        }

        var step = standing.Steps[place];
        return new()
        {
            Job = job.Number,
            Bike = job.Bike.Title,
            Id = code,
            Place = $"Step {place + 1} of {standing.Steps.Count}",
            Line = ViewsOfPlans.Line(job, step, shown.Unit),
            Kind = StepKindCodes.Of(step.Step.Kind),
            How = step.Step.How,
            Cautions = step.Step.Cautions,
            SpinCautions = step.Point is not null && job.CautionsReadAt is null ? RunoutCautions.Sentences : [],
            WaitsFor = step.WaitsFor,
            Gauges = shown.Gauges,
            Point = step.Point is { } point ? ViewsOfJobs.Point(job, point, shown) : null,
            Gate = ViewsOfPlans.Gate(job, step, shown.Unit),
            Findings = [.. JobFindings.Of(job).Where(finding => finding.Noted.Step == code).Select(finding => ViewsOfFindings.Of(job, finding))],
            Finding = step.Step.Kind == StepKind.Finding ? ViewsOfFindings.Form(job, code, form) : null,
            Photos = ViewsOfFindings.Photos(job, Subject.Step(code), ViewsOfPlans.AddressOf(job, code)),
            IsTicked = step.Settled?.Deed is Ticked,
            History = ViewsOfPlans.History(step.Entries),
            Before = place > 0 ? ViewsOfPlans.AddressOf(job, standing.Steps[place - 1].Step.Code) : null,
            After = place + 1 < standing.Steps.Count ? ViewsOfPlans.AddressOf(job, standing.Steps[place + 1].Step.Code) : null,
            Version = job.Version,
            Form = form,
        };
    }
}

using System.Globalization;
using Handspun.Jobs.Cautions;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Records;
using Handspun.Jobs.Standing;

namespace Handspun.Jobs.Reports;

/// <summary>What a job came to, in words: a page for the customer, then the evidence. Whatever shows it adds no words of its own.</summary>
public sealed record JobReport
{
    /// <summary>The job's number.</summary>
    public required string Number { get; init; }

    /// <summary>What was to be done.</summary>
    public required string Title { get; init; }

    /// <summary>The bike in one line.</summary>
    public required string Bike { get; init; }

    /// <summary>Whose bike, which one, and when.</summary>
    public required IReadOnlyList<Figure> Facts { get; init; }

    /// <summary>When the report was made, in words.</summary>
    public required string Made { get; init; }

    /// <summary>The customer's page.</summary>
    public required CustomerPage Customer { get; init; }

    /// <summary>The results that count, in the job's order.</summary>
    public required IReadOnlyList<ReportedResult> Results { get; init; }

    /// <summary>Decisions at gates, oldest first.</summary>
    public required IReadOnlyList<ReportedDecision> Decisions { get; init; }

    /// <summary>Findings, oldest first.</summary>
    public required IReadOnlyList<ReportedFinding> Findings { get; init; }

    /// <summary>Parts, those of the plan first.</summary>
    public required IReadOnlyList<ReportedPart> Parts { get; init; }

    /// <summary>Checks that were ticked or left out, in the order of the plan.</summary>
    public required IReadOnlyList<ReportedCheck> Checks { get; init; }

    /// <summary>What is still open, one line each.</summary>
    public required IReadOnlyList<string> Left { get; init; }

    /// <summary>Cautions that went with the work.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>How to read the evidence, one sentence each.</summary>
    public IReadOnlyList<string> HowToRead { get; } = [ReportWords.PlusMinus, ReportWords.Rule];

    /// <summary>That of a job.</summary>
    /// <param name="job">The job with all that belongs to it.</param>
    /// <param name="unit">The unit of lengths.</param>
    /// <param name="clock">The time now, and the zone in which times are written.</param>
    public static JobReport Of(Job job, LengthUnit unit, ReportClock clock)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(clock);
        var standing = JobStanding.Of(job);
        List<ReportedResult> results = [.. job.InOrder.Select(point => ReportedResult.Of(point, unit, clock)).OfType<ReportedResult>()];
        var findings = ReportedWork.Findings(job, clock);
        var parts = ReportedWork.Parts(job, clock);
        return new()
        {
            Number = job.Number,
            Title = job.Title,
            Bike = job.Bike.Title,
            Facts = [.. FactsOf(job, clock)],
            Made = clock.Minute(clock.Now),
            Customer = CustomerWords.Of(job, standing, results, findings, parts, unit),
            Results = results,
            Decisions = ReportedWork.Decisions(job, clock),
            Findings = findings,
            Parts = parts,
            Checks = ReportedWork.Checks(job, standing, clock),
            Left = [.. LeftOf(job, standing)],
            Cautions = [.. (standing.Steps.Count == 0 ? RunoutCautions.Sentences : standing.Steps.SelectMany(step => step.Step.Cautions)).Distinct()],
        };
    }

    private static IEnumerable<Figure> FactsOf(Job job, ReportClock clock)
    {
        if (job.Customer is { } customer)
        {
            yield return new("Customer", customer);
        }

        if (job.Bike.Vin is { } vin)
        {
            yield return new("VIN", vin);
        }

        if (job.Bike.Plate is { } plate)
        {
            yield return new("Plate", plate);
        }

        if (job.Bike.Odometer is { } shown)
        {
            yield return new("Odometer", shown.ToString("#,0", CultureInfo.InvariantCulture).Replace(',', '\u00a0'));
        }

        yield return new("Opened", clock.Day(job.OpenedAt));
        yield return job.ClosedAt is { } closed ? new("Closed", clock.Day(closed)) : new Figure("State", "open");
        if (job.Plan is { } plan)
        {
            yield return new("Plan", plan.Title);
        }
    }

    private static IEnumerable<string> LeftOf(Job job, JobStanding standing) => standing.Steps.Count > 0
        ? standing.Left.Select(step => step.State == StepState.HeldBack && step.WaitsFor is { } why ? $"{step.Step.Title}. {why}" : step.Step.Title)
        : job.InOrder.Where(point => point.Counting is null).Select(point => point.Title);
}

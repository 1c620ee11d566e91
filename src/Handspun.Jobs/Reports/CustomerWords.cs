using Handspun.Jobs.Book;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Standing;

namespace Handspun.Jobs.Reports;

/// <summary>Writes the customer's page.</summary>
/// <remarks>It must stay one page, so what is many of a kind is named together: the evidence has each by itself.</remarks>
internal static class CustomerWords
{
    private const int MostLines = 5;

    public static CustomerPage Of(
        Job job, JobStanding standing, IReadOnlyList<ReportedResult> results, IReadOnlyList<ReportedFinding> findings, IReadOnlyList<ReportedPart> parts, LengthUnit unit)
    {
        var (over, undecided, within) = (With("over"), With("undecided"), With("within"));
        var open = job.InOrder.Where(point => results.All(result => result.Point != point.Code)).Select(point => point.Title).ToList();
        return new()
        {
            Headline = Headline(over, undecided, within, results.Count),
            Code = over.Count > 0 ? "over" : undecided.Count > 0 ? "undecided" : within.Count > 0 ? "within" : "none",
            Found =
            [
                .. Lines("over", over, job, unit),
                .. Lines("undecided", undecided, job, unit),
                .. SeenLines(findings),
                .. Lines("within", within, job, unit),
                .. Lines("none", With("none"), job, unit),
                .. open.Count > 0 ? [new FoundLine("open", "Not measured", Named(open, MostLines))] : Array.Empty<FoundLine>(),
            ],
            Means = [.. Means(over, undecided, within, results)],
            Advised = [.. Advised(job, standing, over, undecided, parts, results)],
        };

        List<ReportedResult> With(string code) => [.. results.Where(result => result.Verdict.Code == code)];
    }

    private static string Headline(List<ReportedResult> over, List<ReportedResult> undecided, List<ReportedResult> within, int measured) => (over.Count, undecided.Count, within.Count) switch
    {
        ( > 0, _, _) => over.Count == 1 ? $"{over[0].Title} is outside its limit." : $"{over.Count} of {measured} measurements are outside their limits.",
        (0, > 0, _) => undecided.Count == 1 ? $"{undecided[0].Title} is too close to its limit to call." : $"{undecided.Count} of {measured} measurements are too close to their limits to call.",
        (0, 0, > 0) when within.Count == measured => measured == 1 ? $"{within[0].Title} is within its limit." : $"All {measured} measurements are within their limits.",
        (0, 0, > 0) => $"{within.Count} of {measured} measurements are within their limits; the others have no limit to hold them against.",
        _ => measured == 0 ? "Nothing has been measured yet." : "There are measurements, but no limits to hold them against.",
    };

    private static IEnumerable<FoundLine> Lines(string code, List<ReportedResult> results, Job job, LengthUnit unit)
    {
        var most = results.Count <= MostLines ? MostLines : code is "over" or "undecided" ? MostLines - 1 : 0;
        foreach (var result in results.Take(most))
        {
            var allowed = job.Points.Find(point => point.Code == result.Point)?.Limit is { } limit ? $", allowed {LimitSentence.Bounds(limit, unit)}" : "";
            yield return new(code, result.Title, $"{result.Value}{allowed}. {result.Verdict.Line}");
        }

        if (results.Count > most)
        {
            var rest = results.Skip(most).ToList();
            var provisional = rest.Count(result => result.Verdict.Provisional is not null);
            yield return new(
                code,
                $"{rest.Count} {(most > 0 ? "more" : "measurements")}",
                $"{rest[0].Verdict.Plain}{(rest[0].Verdict.Proven is { } proven ? $". {proven}" : "")}{(provisional == 0 ? "" : $", {(provisional == rest.Count ? "all" : provisional)} on limits that are NOT CONFIRMED")}: {Named(rest.ConvertAll(result => result.Title), 12)}.");
        }
    }

    private static IEnumerable<FoundLine> SeenLines(IReadOnlyList<ReportedFinding> findings)
    {
        var grave = findings.Where(finding => !finding.IsSound).ToList();
        var most = grave.Count <= MostLines ? MostLines : MostLines - 1;
        foreach (var finding in grave.Take(most))
        {
            yield return finding.Where.Length == 0 ? new("seen", "Seen", finding.Seen) : new("seen", finding.Where, finding.Seen);
        }

        if (grave.Count > most)
        {
            yield return new("seen", "Seen", $"and {grave.Count - most} more: see '{ReportWords.Findings}'.");
        }
    }

    private static IEnumerable<string> Means(List<ReportedResult> over, List<ReportedResult> undecided, List<ReportedResult> within, IReadOnlyList<ReportedResult> results)
    {
        if (over.Count > 0)
        {
            yield return "Outside the limit: even with all that is unsure about the measurement counted in the part's favour, it is beyond what is allowed. What is built on it would wear early.";
        }

        if (undecided.Count > 0)
        {
            yield return "Too close to call: the limit lies inside what is unsure about the measurement. Neither a yes nor a no would be honest.";
        }

        if (within.Count > 0)
        {
            yield return "Within the limit: even with all that is unsure about the measurement counted against the part, it is inside what is allowed.";
        }

        var provisional = results.Count(result => result.Verdict.Provisional is not null);
        if (provisional > 0)
        {
            yield return $"{(provisional == 1 ? "One limit is" : $"{provisional} limits are")} NOT CONFIRMED: nobody has looked {(provisional == 1 ? "it" : "them")} up in the service manual of this machine yet. Until then, what is said from {(provisional == 1 ? "it" : "them")} is provisional.";
        }
    }

    private static List<string> Advised(
        Job job, JobStanding standing, List<ReportedResult> over, List<ReportedResult> undecided, IReadOnlyList<ReportedPart> parts, IReadOnlyList<ReportedResult> results)
    {
        var said = new List<string>();
        var gates = standing.Steps.Where(step => step.Gate is not null).ToList();
        foreach (var gate in gates.Where(gate => GateSentence.ToCustomer(gate.Step, gate.Gate!) is not null))
        {
            said.Add(GateSentence.ToCustomer(gate.Step, gate.Gate!)!);
            if (gate.Gate!.Decision is { Deed: GateDecided decided } entry)
            {
                said.Add($"{(decided.GoOn ? "It was decided to go on" : "It was decided to stop here")} ({entry.By}): {decided.Why}");
            }
        }

        var atGates = gates.Select(gate => gate.Step.Point).ToHashSet();
        said.AddRange(Told("Have this put right, or decide on it, before anything is built on it", [.. over.Where(result => !atGates.Contains(result.Point)).Select(result => result.Title)]));
        said.AddRange(Told("Measure again with more care", [.. undecided.Where(result => !atGates.Contains(result.Point)).Select(result => result.Title)]));
        said.AddRange(Told("Replace", Chosen(PartChoice.Replace)));
        said.AddRange(Told("Measure again before deciding", Chosen(PartChoice.MeasureAgain)));
        if (results.Any(result => result.Verdict.Provisional is not null))
        {
            said.Add("Look the limits up in the service manual, and confirm them, before money goes into parts.");
        }

        var open = standing.Steps.Count > 0 ? standing.Left.Count() : job.Points.Count(point => point.Counting is null);
        if (open > 0 && job.ClosedAt is null)
        {
            said.Add(open == 1 ? $"One thing is still open: see '{ReportWords.Left}'." : $"{open} things are still open: see '{ReportWords.Left}'.");
        }

        return said.Count > 0 ? said : ["Nothing beyond what the service manual asks for."];

        List<string> Chosen(PartChoice choice) => [.. parts.Where(part => part.Choice == PartChoices.InWords(choice)).Select(part => $"{part.Name} ({part.Why})")];
    }

    private static IEnumerable<string> Told(string what, List<string> titles) => titles.Count > 0 ? [$"{what}: {Named(titles, MostLines)}."] : [];

    private static string Named(List<string> names, int most) => names.Count <= most
        ? string.Join("; ", names)
        : $"{string.Join("; ", names.Take(most))}; and {names.Count - most} more";
}

using Handspun.Jobs.Plans;

namespace Handspun.Checks;

/// <summary>The plans that a job can take.</summary>
internal static class PlanChecks
{
    /// <summary>Every plan that does not hold, and how many do.</summary>
    public static IEnumerable<CheckLine> All(PlanShelf shelf)
    {
        const string subject = "Plans";
        var (plans, problems) = shelf.All();
        foreach (var problem in problems)
        {
            yield return CheckLine.Failing(subject, problem);
        }

        yield return plans.Count > 0
            ? CheckLine.Good(subject, $"{plans.Count} {(plans.Count == 1 ? "plan holds" : "plans hold")}.")
            : CheckLine.Failing(subject, $"There is no plan that holds: the shipped ones lie in {PlanShelf.ShippedFolder}; install the program again.");
    }
}

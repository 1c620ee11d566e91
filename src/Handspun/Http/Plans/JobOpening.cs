using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Points;
using Handspun.Jobs.Store;

namespace Handspun.Http.Plans;

/// <summary>Opens jobs, with the plan that was chosen.</summary>
internal static class JobOpening
{
    /// <summary>All that is wrong with an order and its choice of a plan, by field.</summary>
    /// <param name="order">What was asked for.</param>
    /// <param name="shelf">The plans at hand.</param>
    /// <param name="thisYear">The year now.</param>
    /// <param name="plan">The plan; null where none was chosen or it does not hold.</param>
    public static IReadOnlyDictionary<string, string> Problems(NewJob order, PlanShelf shelf, int thisYear, out Plan? plan)
    {
        var problems = new Dictionary<string, string>(order.Problems(thisYear));
        plan = null;
        try
        {
            plan = string.IsNullOrWhiteSpace(order.Plan) ? null : shelf.Find(order.Plan.Trim());
        }
        catch (PlanException e)
        {
            problems["plan"] = string.Join(" ", e.Problems);
        }

        return problems;
    }

    /// <summary>Opens the job.</summary>
    public static Task<Job> OpenPlannedAsync(this JobStore store, NewJob order, Plan? plan, CancellationToken cancellation) =>
        plan is null ? store.OpenAsync(order, PointCatalogue.Usual, cancellation) : store.OpenAsync(order, plan, cancellation);
}

using Handspun.Jobs.Plans;
using Handspun.Wire;

namespace Handspun.Http.Plans;

/// <summary>Calls about the plans at hand.</summary>
internal static class PlanCalls
{
    /// <summary>Maps them.</summary>
    public static void MapPlans(this IEndpointRouteBuilder calls)
    {
        var plans = calls.MapGroup("/plans");
        plans.MapGet("", (PlanShelf shelf) =>
        {
            var (all, problems) = shelf.All();
            return new PlansMessage([.. all.Select(PlanMessage.Of)], problems);
        });
        plans.MapGet("/{plan}", (string plan, PlanShelf shelf) => shelf.Codes.Contains(plan)
            ? PlanMessage.Of(shelf.Find(plan))
            : throw new PlanNotFoundException($"There is no plan '{plan}': the station has {string.Join(", ", shelf.Codes)}."));
    }
}

/// <summary>There is no such plan.</summary>
/// <param name="sentence">Which there are.</param>
internal sealed class PlanNotFoundException(string sentence) : Exception(sentence);

using Handspun.Jobs.Points;

namespace Handspun.Jobs.Plans;

/// <summary>The measuring points of a plan.</summary>
public static class PlanPoints
{
    /// <summary>All of them, in order, as the catalogue has them, with the plan's own title and limit where it has one.</summary>
    public static IReadOnlyList<MeasuringPoint> Of(Plan plan) =>
        [.. plan.Steps.Select(step => PointCatalogue.Find(step.Point) is { } point ? point with { Title = step.Title, ShippedLimit = step.Limit ?? point.ShippedLimit } : null).OfType<MeasuringPoint>()];
}

using Handspun.Jobs.Points;

namespace Handspun.Jobs.Fits;

/// <summary>A body in its bore, as points of the catalogue.</summary>
/// <param name="Clearance">The point whose result is the clearance.</param>
/// <param name="Bore">The bore's point.</param>
/// <param name="Body">The body's point.</param>
public sealed record FitPair(MeasuringPoint Clearance, string Bore, string Body)
{
    /// <summary>All pairs: the four lifters, and both journals of the cam.</summary>
    public static IReadOnlyList<FitPair> All { get; } =
    [
        .. PointCatalogue.All.Where(point => point.Kind == PointKind.Clearance).Select(point => point.Code.StartsWith("lifter-", StringComparison.Ordinal)
            ? new FitPair(point, point.Code.Replace("-clearance-", "-bore-", StringComparison.Ordinal), point.Code.Replace("-clearance-", "-body-", StringComparison.Ordinal))
            : new FitPair(point, point.Code.Replace("-clearance-", "-bearing-bore-", StringComparison.Ordinal), point.Code.Replace("-clearance-", "-journal-", StringComparison.Ordinal))),
    ];
}

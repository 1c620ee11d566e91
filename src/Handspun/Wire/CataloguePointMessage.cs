using Handspun.Jobs.Points;

namespace Handspun.Wire;

/// <summary>A point of the catalogue.</summary>
internal sealed record CataloguePointMessage(string Point, string Title, string Kind, string How, IReadOnlyList<string> Cautions, LimitMessage? Limit)
{
    public static CataloguePointMessage Of(MeasuringPoint point) =>
        new(point.Code, point.Title, PointKindCodes.Of(point.Kind), point.How, point.Cautions, LimitMessage.Of(point.ShippedLimit));
}

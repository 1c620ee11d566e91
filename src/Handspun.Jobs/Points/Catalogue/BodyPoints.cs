namespace Handspun.Jobs.Points.Catalogue;

/// <summary>Lifter bodies. Their sizes are the maker's own, so no limit comes with them.</summary>
internal static class BodyPoints
{
    public static IReadOnlyList<MeasuringPoint> All { get; } =
    [
        .. Cylinders.Each((code, title) => new MeasuringPoint
        {
            Code = $"lifter-body-{code}",
            Title = $"Lifter body, {title}",
            Kind = PointKind.OutsideSize,
            How = "Measure across the body where it runs in the bore, square to its length, clean and at the temperature of the case.",
        }),
    ];
}

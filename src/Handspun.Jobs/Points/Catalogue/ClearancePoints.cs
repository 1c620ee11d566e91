namespace Handspun.Jobs.Points.Catalogue;

/// <summary>Clearances, worked out of two sizes. What is allowed is the engine's own, so no limit comes with them.</summary>
internal static class ClearancePoints
{
    private const string How = "Worked out by itself: bore less body, as soon as both have a size. Measure both clean and at the same temperature.";

    public static IReadOnlyList<MeasuringPoint> All { get; } =
    [
        .. Cylinders.Each((code, title) => new MeasuringPoint
        {
            Code = $"lifter-clearance-{code}",
            Title = $"Lifter clearance, {title}",
            Kind = PointKind.Clearance,
            How = How,
        }),
        .. new[] { ("case", "in the case"), ("cover", "in the cover") }.Select(side => new MeasuringPoint
        {
            Code = $"cam-clearance-{side.Item1}",
            Title = $"Cam clearance {side.Item2}",
            Kind = PointKind.Clearance,
            How = How,
        }),
    ];
}

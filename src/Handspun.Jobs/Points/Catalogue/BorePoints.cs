using Handspun.Jobs.Entries;

namespace Handspun.Jobs.Points.Catalogue;

/// <summary>Bores in the case and the cover. Their sizes are the engine's own, so no limit comes with them.</summary>
internal static class BorePoints
{
    private const string Rock = "Set the bore gauge in its ring or micrometer and type that size. Then rock it slowly past its smallest reading and back, three times or more, at the depth and across the direction that you name.";

    public static IReadOnlyList<MeasuringPoint> All { get; } =
    [
        .. Cylinders.Each((code, title) => new MeasuringPoint
        {
            Code = $"lifter-bore-{code}",
            Title = $"Lifter bore, {title}",
            Kind = PointKind.Bore,
            How = Rock,
            Plausible = PlausibleAt.Between("a lifter bore", 10, 50),
            Cautions =
            [
                "Loosen or cut pushrods only when both of that cylinder turn freely: otherwise a valve spring pushes back.",
                "Never cut a pushrod with a grinder: the chips end in the engine.",
            ],
        }),
        .. new[] { ("case", "in the case"), ("cover", "in the cover") }.Select(side => new MeasuringPoint
        {
            Code = $"cam-bearing-bore-{side.Item1}",
            Title = $"Cam bearing bore {side.Item2}",
            Kind = PointKind.Bore,
            How = Rock,
            Plausible = PlausibleAt.Between("a cam bearing bore", 10, 80),
        }),
    ];
}

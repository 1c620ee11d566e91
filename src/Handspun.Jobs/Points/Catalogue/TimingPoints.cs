namespace Handspun.Jobs.Points.Catalogue;

/// <summary>What both lobes of a cylinder do together, held against the cam's own card.</summary>
internal static class TimingPoints
{
    public static IReadOnlyList<MeasuringPoint> All { get; } =
    [
        .. new[] { ("front", "front cylinder"), ("rear", "rear cylinder") }.Select(cylinder => new MeasuringPoint
        {
            Code = $"cam-timing-{cylinder.Item1}",
            Title = $"Cam timing, {cylinder.Item2}",
            Kind = PointKind.CamTiming,
            How = "Worked out by itself from the lift curves of intake and exhaust, both taken from the same index or mark. Type what the cam's card says to see the difference.",
        }),
    ];
}

using Handspun.Jobs.Entries;

namespace Handspun.Jobs.Points.Catalogue;

/// <summary>Lifter bodies and cam journals. Their sizes are the maker's own, so no limit comes with them.</summary>
internal static class BodyPoints
{
    private const string Roll =
        "With an indicator with a round tip on a stand over a flat table, set on a pin or a block whose size you type: roll it slowly through under the plunger and back, three times or more. Or type what a micrometer shows.";

    public static IReadOnlyList<MeasuringPoint> All { get; } =
    [
        .. Cylinders.Each((code, title) => new MeasuringPoint
        {
            Code = $"lifter-body-{code}",
            Title = $"Lifter body, {title}",
            Kind = PointKind.OutsideSize,
            How = $"Measure across the body where it runs in the bore, square to its length, clean and at the temperature of the case. {Roll}",
            Plausible = PlausibleAt.Between("a lifter body", 10, 50),
        }),
        .. new[] { ("case", "in the case"), ("cover", "in the cover") }.Select(side => new MeasuringPoint
        {
            Code = $"cam-journal-{side.Item1}",
            Title = $"Cam journal {side.Item2}",
            Kind = PointKind.OutsideSize,
            How = "Measure across the journal where its bearing runs, at two places a quarter of a turn apart; type the larger. Clean, and at the temperature of the case.",
            Plausible = PlausibleAt.Between("a cam journal", 10, 60),
        }),
    ];
}

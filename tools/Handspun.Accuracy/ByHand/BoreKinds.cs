using Handspun.Metrology.Bore;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Simulation;
using Handspun.Simulation.Rock;

namespace Handspun.Accuracy.ByHand;

/// <summary>The classes of rocked bore gauges that the table judges.</summary>
internal static class BoreKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<PlainKind> All { get; } =
    [
        Kind("bore, mixed steps", step: null),
        Kind("bore, 0.001", 0.001),
        Kind("bore, 0.005", 0.005),
        Kind("bore, 0.01", 0.01),
        Kind("bore, 0.01, quiet", 0.01, gauge => gauge with { NoiseMicrometres = 0.3, DriftMicrometres = 0 }),
        Kind("bore, 8-12 Hz", step: null, rate: (8, 12)),
        Kind("bore, drift", step: null, gauge => gauge with { DriftMicrometres = 15 }),
        Kind("bore, knocks", step: null, gauge => gauge with { Knocks = 4 }, bumps: 2),
        Kind("bore, uneven", step: null, hand: habits => habits with { Unevenness = 1, SeatMicrometres = 1.5 }),
        Kind("bore, shallow", step: null, hand: habits => habits with { LeanDegrees = 3.5 }),
    ];

    private static PlainKind Kind(
        string name,
        double? step,
        Func<Indicator, Indicator>? change = null,
        Func<RockHabits, RockHabits>? hand = null,
        (double Low, double High)? rate = null,
        int bumps = 0) => new(name, seed =>
    {
        var chance = Draws.Of(seed);
        double[] steps = [0.001, 0.00127, 0.002, 0.005, 0.01];
        var (slowest, fastest) = rate ?? (8, 100);
        var habits = new RockHabits
        {
            Cycles = chance.Next(3, 8),
            LeanDegrees = chance.Between(4, 10),
            SwingSeconds = chance.Between(0.6, 1.5),
            Unevenness = chance.Between(0.2, 0.7),
            SeatMicrometres = chance.Between(0.1, 0.6),
        };
        var indicator = new Indicator
        {
            RateHz = chance.Spread(slowest, fastest),
            NoiseMicrometres = chance.Spread(0.3, 2),
            ResolutionMillimetres = step ?? steps[chance.Next(steps.Length)],
            DriftMicrometres = chance.Between(-5, 5),
        };
        indicator = change?.Invoke(indicator) ?? indicator;
        var diameter = chance.Between(14, 45);
        return new(RockSimulation.Run(diameter, hand?.Invoke(habits) ?? habits, indicator, bumps, chance.Next()), indicator);
    },
    drawn =>
    {
        var gauge = new GaugeTraits { Resolution = Length.FromMillimetres(drawn.Indicator.ResolutionMillimetres) };
        var result = BoreMethod.Measure(drawn.Capture.Seconds, drawn.Capture.Millimetres, gauge, new BoreSettings());
        return result is { Deviation: { } found, DeviationU95: { } expanded } ? new(found.Millimetres, expanded.Millimetres, result.Passes) : null;
    });
}

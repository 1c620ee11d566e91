using Handspun.Metrology.EndPlay;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;
using Handspun.Simulation;
using Handspun.Simulation.PushPull;

namespace Handspun.Accuracy.ByHand;

/// <summary>The classes of pushes and pulls that the table judges.</summary>
internal static class EndPlayKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<PlainKind> All { get; } =
    [
        Kind("end play, mixed steps", step: null),
        Kind("end play, 0.001", 0.001),
        Kind("end play, 0.005", 0.005),
        Kind("end play, 0.01", 0.01),
        Kind("end play, 0.01, noisy", 0.01, gauge => gauge with { NoiseMicrometres = 4 }),
        Kind("end play, 0.01, quiet", 0.01, gauge => gauge with { NoiseMicrometres = 0.3, DriftMicrometres = 0 }),
        Kind("end play, 8-12 Hz", step: null, rate: (8, 12)),
        Kind("end play, drift", step: null, gauge => gauge with { DriftMicrometres = 25 }),
        Kind("end play, knocks", step: null, gauge => gauge with { Knocks = 4 }, bumps: 2),
        Kind("end play, uneven", step: null, hand: habits => habits with { PressureMicrometres = 2, SettlingMicrometres = 3 }),
        Kind("end play, short strokes", step: null, hand: habits => habits with { ShortStrokes = 1 }),
        Kind("end play, 0.025-0.06", 0.001, way: (0.025, 0.06)),
    ];

    private static PlainKind Kind(
        string name,
        double? step,
        Func<Indicator, Indicator>? change = null,
        Func<PushPullHabits, PushPullHabits>? hand = null,
        (double Low, double High)? rate = null,
        (double Low, double High)? way = null,
        int bumps = 0) => new(name, seed =>
    {
        var chance = Draws.Of(seed);
        double[] steps = [0.001, 0.00127, 0.002, 0.005, 0.01];
        var (slowest, fastest) = rate ?? (8, 100);
        var habits = new PushPullHabits
        {
            Cycles = chance.Next(3, 8),
            HoldSeconds = chance.Between(0.6, 1.5),
            MoveSeconds = chance.Between(0.1, 0.4),
            PressureMicrometres = chance.Between(0.2, 1),
            SettlingMicrometres = chance.Between(0, 2),
        };
        var indicator = new Indicator
        {
            RateHz = chance.Spread(slowest, fastest),
            NoiseMicrometres = chance.Spread(0.3, 2),
            ResolutionMillimetres = step ?? steps[chance.Next(steps.Length)],
            DriftMicrometres = chance.Between(-10, 10),
        };
        indicator = change?.Invoke(indicator) ?? indicator;
        var (least, most) = way ?? (0.05, 0.4);
        var endPlay = chance.Spread(least, most);
        return new(PushPullSimulation.Run(endPlay, hand?.Invoke(habits) ?? habits, indicator, bumps, chance.Next()), indicator);
    },
    drawn =>
    {
        var gauge = new GaugeTraits { Resolution = Length.FromMillimetres(drawn.Indicator.ResolutionMillimetres), PlungerLeanDegrees = 0 };
        var result = EndPlayMethod.Measure(drawn.Capture.Seconds, drawn.Capture.Millimetres, gauge, new EndPlaySettings());
        return result is { EndPlay: { } found, EndPlayU95: { } expanded } ? new(found.Millimetres, expanded.Millimetres, result.Cycles) : null;
    });
}

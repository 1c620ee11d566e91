using Handspun.Simulation;

namespace Handspun.Accuracy;

/// <summary>The classes that the table judges.</summary>
internal static class CaptureKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<CaptureKind> All { get; } =
    [
        Kind("index", AngleAid.IndexEachTurn, gauge => gauge),
        Kind("no index", AngleAid.None, gauge => gauge),
        Kind("encoder", new AngleAid { EncoderSteps = 720 }, gauge => gauge),
        Kind("marks", new AngleAid { Marks = true }, gauge => gauge),
        Kind("index 2.81", new AngleAid { TurnsPerIndex = 2.81 }, gauge => gauge),
        Kind("index, drift", AngleAid.IndexEachTurn, gauge => gauge with { DriftMicrometres = 8 }),
        Kind("no index, drift", AngleAid.None, gauge => gauge with { DriftMicrometres = 8 }),
        Kind("index, knocks", AngleAid.IndexEachTurn, gauge => gauge with { Knocks = 3 }),
        Kind("no index, knocks", AngleAid.None, gauge => gauge with { Knocks = 3 }),
        Kind("no index, dropouts", AngleAid.None, gauge => gauge with { Dropouts = 2 }),
        Kind("no index, stuck", AngleAid.None, gauge => gauge with { StuckStretches = 2 }),
        Kind("no index, bursts", AngleAid.None, gauge => gauge with { Burst = 4, JitterMilliseconds = 4 }),
        Kind("index, 8-12 Hz", AngleAid.IndexEachTurn, gauge => gauge, rate: (8, 12)),
        Kind("no index, 8-12 Hz", AngleAid.None, gauge => gauge, rate: (8, 12)),
        Kind("index, coarse 0.01", AngleAid.IndexEachTurn, gauge => gauge with { ResolutionMillimetres = 0.01 }, tir: (0.05, 0.4)),
        Kind("no index, coarse 0.01", AngleAid.None, gauge => gauge with { ResolutionMillimetres = 0.01 }, tir: (0.05, 0.4)),
        Kind("no index, inch 0.0005", AngleAid.None, gauge => gauge with { ResolutionMillimetres = 0.0127 }, tir: (0.05, 0.4)),
        Kind("no index, stops", AngleAid.None, gauge => gauge, habits: new HandHabits { Stops = 2 }),
        Kind("index, stops", AngleAid.IndexEachTurn, gauge => gauge, habits: new HandHabits { Stops = 2 }),
        Kind("no index, slips", AngleAid.None, gauge => gauge, habits: new HandHabits { Stops = 1, SlipBackDegrees = 6 }),
        Kind("no index, shoves", AngleAid.None, gauge => gauge, habits: new HandHabits { Unevenness = 1 }),
        Kind("index, shoves", AngleAid.IndexEachTurn, gauge => gauge, habits: new HandHabits { Unevenness = 1 }),
        Kind("index, burr", AngleAid.IndexEachTurn, gauge => gauge, fault: (8, 0.03)),
        Kind("no index, keyway", AngleAid.None, gauge => gauge, fault: (16, -0.06)),
    ];

    private static CaptureKind Kind(
        string name,
        AngleAid aid,
        Func<Indicator, Indicator> change,
        (double Low, double High)? rate = null,
        (double Low, double High)? tir = null,
        HandHabits? habits = null,
        (double WidthDegrees, double Millimetres)? fault = null) => new(name, seed =>
    {
        var chance = Draws.Of(seed);
        var (lowest, highest) = tir ?? (0.02, 0.4);
        var (slowest, fastest) = rate ?? (20, 100);
        double[] steps = [0.001, 0.001, 0.00127, 0.00254];
        var shape = ShaftShape.WithTir(chance.Spread(lowest, highest), chance.Next(), 1 + chance.Next(4));
        if (fault is { } narrow)
        {
            shape = shape.With(new ShaftFault(chance.Between(0, 360), narrow.WidthDegrees, narrow.Millimetres));
        }

        var turn = HandTurn.Create(
            chance.Next(), chance.Between(2.3, 8), chance.Between(0.25, 0.8), habits ?? new HandHabits { Unevenness = chance.Between(0.2, 0.7) });
        var indicator = change(new Indicator
        {
            RateHz = chance.Spread(slowest, fastest),
            NoiseMicrometres = chance.Spread(0.3, 2),
            ResolutionMillimetres = steps[chance.Next(steps.Length)],
        });
        var capture = CaptureSimulation.Run(shape, turn, indicator, chance.Next(), chance.Between(0, 2), chance.Between(0, 2), aid);
        return new(capture, shape, indicator, aid);
    });
}

using Handspun.Metrology.Lift;
using Handspun.Simulation;
using Handspun.Simulation.Cams;

namespace Handspun.Accuracy.Lift;

/// <summary>One class of lift captures.</summary>
/// <param name="Name">What the table calls it.</param>
/// <param name="Draw">Makes the capture of a seed.</param>
internal sealed record LiftKind(string Name, Func<int, DrawnLift> Draw);

/// <summary>A lift capture with all that was drawn for it.</summary>
/// <param name="Capture">What gauge and aid saw.</param>
/// <param name="Lobe">The cam; its angles count from where the shaft's own zero is.</param>
/// <param name="Indicator">The gauge.</param>
/// <param name="Aid">What told the angle.</param>
/// <param name="Shaft">Of which shaft.</param>
internal sealed record DrawnLift(SimulatedCapture Capture, CamLobe Lobe, Indicator Indicator, AngleAid Aid, AngleShaft Shaft);

/// <summary>The classes of lift captures that the table judges.</summary>
internal static class LiftKinds
{
    /// <summary>All of them: pulses a turn of the crank, or of the cam where it says so.</summary>
    public static IReadOnlyList<LiftKind> All { get; } =
    [
        Kind("lift, 60 pulses", Pulses(60)),
        Kind("lift, 36 pulses", Pulses(36)),
        Kind("lift, 12 pulses", Pulses(12)),
        Kind("lift, 12 on the cam", Pulses(12), AngleShaft.Cam),
        Kind("lift, 4 pulses", Pulses(4)),
        Kind("lift, 1 pulse", Pulses(1)),
        Kind("lift, 1, even hand", Pulses(1), habits: new HandHabits { Unevenness = 0.05 }),
        Kind("lift, 1 on the cam", Pulses(1), AngleShaft.Cam),
        Kind("lift, encoder", new AngleAid { EncoderSteps = 720 }),
        Kind("lift, marks", new AngleAid { Marks = true }),
        Kind("lift, 36, 8-12 Hz", Pulses(36), rate: (8, 12)),
        Kind("lift, 36, coarse 0.01", Pulses(36), change: gauge => gauge with { ResolutionMillimetres = 0.01 }),
        Kind("lift, 36, knocks", Pulses(36), change: gauge => gauge with { Knocks = 4, KnockMillimetres = 2 }),
        Kind("lift, 36, stops", Pulses(36), habits: new HandHabits { Stops = 3 }),
    ];

    private static AngleAid Pulses(int each) => new() { TurnsPerIndex = 1.0 / each };

    private static LiftKind Kind(
        string name,
        AngleAid aid,
        AngleShaft shaft = AngleShaft.Crank,
        HandHabits? habits = null,
        (double Low, double High)? rate = null,
        Func<Indicator, Indicator>? change = null) => new(name, seed =>
    {
        var chance = Draws.Of(seed);
        var opening = chance.Between(66, 84);
        var lobe = new CamLobe
        {
            LiftMillimetres = chance.Between(6, 10.5),
            CentrelineDegrees = chance.Between(0, 360),
            OpeningDegrees = opening,
            ClosingDegrees = opening + chance.Between(-4, 4),
            Law = (FlankLaw)chance.Next(3),
            BaseRunoutMillimetres = chance.Between(0, 0.04),
            BaseHighDegrees = chance.Between(0, 360),
        };
        var (slowest, fastest) = rate ?? (20, 100);
        double[] steps = [0.001, 0.001, 0.00127, 0.00254];
        var crankTurns = shaft == AngleShaft.Crank ? 1.0 : 2.0;
        var turn = HandTurn.Create(
            chance.Next(), chance.Between(4.6, 9) / crankTurns, chance.Between(0.15, 0.4) / crankTurns, habits ?? new HandHabits { Unevenness = chance.Between(0.2, 0.7) });
        var indicator = new Indicator
        {
            RateHz = chance.Spread(slowest, fastest),
            NoiseMicrometres = chance.Spread(0.3, 2),
            ResolutionMillimetres = steps[chance.Next(steps.Length)],
        };
        indicator = change is null ? indicator : change(indicator);
        double HeightAt(double degrees) => lobe.HeightAt(degrees * crankTurns / 2);
        var capture = CaptureSimulation.Run(HeightAt, turn, indicator, chance.Next(), chance.Between(0, 2), chance.Between(0, 2), aid);
        return new(capture, lobe, indicator, aid, shaft);
    });
}

using Handspun.Simulation;
using Handspun.Simulation.Cams;
using Handspun.Simulation.PushPull;
using Handspun.Simulation.Rock;

namespace Handspun.VirtualGauge.Shaft;

/// <summary>Something that a hand does under the indicator beside turning.</summary>
/// <param name="Seconds">How long it takes.</param>
/// <param name="MillimetresAt">What the indicator would show after so many seconds, up to that.</param>
internal sealed record HandMotion(double Seconds, Func<double, double> MillimetresAt)
{
    /// <summary>Where the crank stands after so many seconds, in turns; null where no crank turns.</summary>
    public Func<double, double>? TurnsAt { get; init; }

    /// <summary>Pushes and pulls the shaft from stop to stop.</summary>
    /// <param name="work">How far it can move.</param>
    /// <param name="cycles">How often, there and back.</param>
    /// <param name="seed">The same seed gives the same hand.</param>
    /// <param name="from">What the indicator shows before, in millimetres.</param>
    public static HandMotion PushPull(HandWork work, int cycles, int seed, double from)
    {
        var hand = PushPullHand.Create(work.EndPlayMillimetres, seed, new PushPullHabits { Cycles = cycles });
        return new(hand.Seconds, seconds => from + hand.PlaceAt(seconds) - hand.PlaceAt(0));
    }

    /// <summary>Rocks a two-point gauge in a bore; the indicator shows how much more it spans than what it was zeroed at.</summary>
    public static HandMotion Rock(HandWork work, int cycles, int seed)
    {
        var hand = RockingHand.Create(seed, new RockHabits { Cycles = cycles });
        return new(hand.Seconds, seconds => RockSimulation.Shown(work.BoreMillimetres, hand, seconds) + work.BoreOffMillimetres);
    }

    /// <summary>Rolls a body through under the gauge; it shows how much larger it is there than what the gauge was set on.</summary>
    public static HandMotion Roll(HandWork work, int cycles, int seed)
    {
        var hand = RockingHand.Create(seed, new RockHabits { Cycles = cycles });
        return new(hand.Seconds, seconds => work.BodyOffMillimetres - RockSimulation.Shown(work.BodyMillimetres, hand, seconds));
    }

    /// <summary>Turns the crank, with the indicator on a tappet of its cam.</summary>
    /// <param name="work">The lobe.</param>
    /// <param name="fromTurns">Where the crank stands before, in turns.</param>
    /// <param name="turns">Turns of the crank.</param>
    /// <param name="turnsPerSecond">How fast.</param>
    /// <param name="seed">The same seed gives the same hand.</param>
    public static HandMotion Cam(HandWork work, double fromTurns, double turns, double turnsPerSecond, int seed)
    {
        var lobe = new CamLobe { LiftMillimetres = work.CamLiftMillimetres, CentrelineDegrees = work.CamCentreDegrees };
        var hand = HandTurn.Create(seed, turns, turnsPerSecond);
        return new(hand.Seconds, seconds => lobe.HeightAt(180 * (fromTurns + hand.TurnsAt(seconds)))) { TurnsAt = seconds => fromTurns + hand.TurnsAt(seconds) };
    }
}

/// <summary>What there is to push, pull, rock, roll and lift.</summary>
internal sealed record HandWork
{
    /// <summary>The way from stop to stop.</summary>
    public double EndPlayMillimetres { get; init; } = 0.12;

    /// <summary>How high the cam lifts.</summary>
    public double CamLiftMillimetres { get; init; } = 9;

    /// <summary>Where the middle of the lobe is, in degrees of the cam from where the crank's zero is.</summary>
    public double CamCentreDegrees { get; init; } = 140;

    /// <summary>The bore.</summary>
    public double BoreMillimetres { get; init; } = 21.4;

    /// <summary>The body's diameter.</summary>
    public double BodyMillimetres { get; init; } = 21.39;

    /// <summary>How much larger the body is than what the gauge was set on.</summary>
    public double BodyOffMillimetres { get; init; } = 0.008;

    /// <summary>How much larger the bore is than what the gauge was zeroed at.</summary>
    public double BoreOffMillimetres { get; init; } = 0.012;
}

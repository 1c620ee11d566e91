using Handspun.Simulation.PushPull;

namespace Handspun.Simulation.Rock;

/// <summary>What a hand that rocks a bore gauge is like.</summary>
public sealed record RockHabits
{
    /// <summary>Cycles, each there and back and so twice through the turning point.</summary>
    public int Cycles { get; init; } = 4;

    /// <summary>About how far the gauge leans at the end of a swing, in degrees.</summary>
    public double LeanDegrees { get; init; } = 6;

    /// <summary>About how long a swing from one side to the other takes, in seconds.</summary>
    public double SwingSeconds { get; init; } = 0.8;

    /// <summary>How uneven the swings are in reach, place and time, 0 to about 1.</summary>
    public double Unevenness { get; init; } = 0.5;

    /// <summary>Standard deviation, in micrometres, by which the gauge sits differently in the bore from pass to pass.</summary>
    public double SeatMicrometres { get; init; } = 0.4;
}

/// <summary>Lets a hand rock a two-point gauge in a bore, with the truth on record.</summary>
public static class RockSimulation
{
    /// <summary>One capture. A gauge that leans by an angle spans the bore's diameter over the angle's cosine.</summary>
    /// <param name="diameterMillimetres">The bore.</param>
    /// <param name="habits">The hand.</param>
    /// <param name="indicator">The gauge.</param>
    /// <param name="bumps">How often the gauge is knocked, so that the reading swings off and back.</param>
    /// <param name="seed">The same seed gives the same capture.</param>
    public static PlainCapture Run(double diameterMillimetres, RockHabits habits, Indicator indicator, int bumps, int seed)
    {
        var chance = new Random(seed);
        var swing = RockingHand.Create(chance.Next(), habits);
        var shown = chance.NextBetween(-0.05, 0.05);
        double HeightAt(double seconds) => shown + Shown(diameterMillimetres, swing, seconds);
        var (times, readings, level) = Recording.About(HeightAt, swing.Seconds, indicator, bumps, chance);
        return new(times, readings, shown + level, swing.Passes);
    }

    /// <summary>How much more than the bore's diameter a gauge spans in a hand at a time, in millimetres.</summary>
    public static double Shown(double diameterMillimetres, RockingHand hand, double seconds) =>
        hand.SeatAt(seconds) + diameterMillimetres * (1 / Math.Cos(hand.DegreesAt(seconds) * Math.PI / 180) - 1);
}

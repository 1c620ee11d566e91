namespace Handspun.Simulation.PushPull;

/// <summary>A simulated capture of pushes and pulls, or of rocks, and the truth behind it.</summary>
/// <param name="Seconds">When each reading was taken.</param>
/// <param name="Millimetres">What each reading was.</param>
/// <param name="TrueMillimetres">What was to be measured: the end play, or what the gauge would show of the bore at its turning point.</param>
/// <param name="TrueCycles">Cycles or passes through the turning point that the hand made.</param>
public sealed record PlainCapture(double[] Seconds, double[] Millimetres, double TrueMillimetres, int TrueCycles);

/// <summary>Lets a hand push and pull a shaft under an indicator, with the truth on record.</summary>
public static class PushPullSimulation
{
    /// <summary>One capture.</summary>
    /// <param name="endPlayMillimetres">The way from stop to stop, held with the hand's usual pressure.</param>
    /// <param name="habits">The hand.</param>
    /// <param name="indicator">The gauge.</param>
    /// <param name="bumps">How often the stand is knocked, so that the reading swings off and back within a few tenths of a second.</param>
    /// <param name="seed">The same seed gives the same capture.</param>
    public static PlainCapture Run(double endPlayMillimetres, PushPullHabits habits, Indicator indicator, int bumps, int seed)
    {
        var chance = new Random(seed);
        var hand = PushPullHand.Create(endPlayMillimetres, chance.Next(), habits);
        var (seconds, readings) = Recording.Of(hand.PlaceAt, hand.Seconds, indicator, bumps, chance);
        return new(seconds, readings, endPlayMillimetres, habits.Cycles);
    }
}

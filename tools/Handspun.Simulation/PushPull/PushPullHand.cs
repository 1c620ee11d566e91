namespace Handspun.Simulation.PushPull;

/// <summary>What a hand that pushes and pulls a shaft is like.</summary>
public sealed record PushPullHabits
{
    /// <summary>Pushes and pulls, one of each a cycle.</summary>
    public int Cycles { get; init; } = 4;

    /// <summary>About how long a stop is held, in seconds; each from half to twice that.</summary>
    public double HoldSeconds { get; init; } = 0.9;

    /// <summary>About how long the way from stop to stop takes, in seconds.</summary>
    public double MoveSeconds { get; init; } = 0.2;

    /// <summary>Standard deviation, in micrometres, by which the pressure of the hand moves the stop from hold to hold, about its usual place.</summary>
    public double PressureMicrometres { get; init; } = 0.5;

    /// <summary>How far the shaft still creeps into the stop after the move, in micrometres.</summary>
    public double SettlingMicrometres { get; init; } = 1;

    /// <summary>Of all pushes and pulls, how many end short of the stop.</summary>
    public int ShortStrokes { get; init; }
}

/// <summary>Where a shaft stands that a hand pushes and pulls from stop to stop. The same seed gives the same hand.</summary>
public sealed class PushPullHand
{
    private const double Step = 0.002;
    private readonly double[] _path;

    private PushPullHand(double[] path) => _path = path;

    /// <summary>How long the hand takes, in seconds.</summary>
    public double Seconds => (_path.Length - 1) * Step;

    /// <summary>A hand at work on a shaft.</summary>
    /// <param name="endPlayMillimetres">The way from one stop to the other.</param>
    /// <param name="seed">The same seed gives the same hand.</param>
    /// <param name="habits">What it is like; null for the usual one.</param>
    public static PushPullHand Create(double endPlayMillimetres, int seed, PushPullHabits? habits = null)
    {
        habits ??= new PushPullHabits();
        var chance = new Random(seed);
        var missed = Enumerable.Range(0, habits.ShortStrokes).Select(_ => 1 + chance.Next(Math.Max(1, 2 * habits.Cycles - 1))).ToHashSet();
        var from = chance.NextBetween(0, 1) * endPlayMillimetres;   // the shaft lies anywhere
        var path = new List<double>();
        Hold(path, chance, from, chance.NextBetween(0.1, 1), pressure: 0, settling: 0);
        var towardHigh = chance.Next(2) == 0;
        for (var stroke = 0; stroke < 2 * habits.Cycles; stroke++)
        {
            var to = towardHigh ? endPlayMillimetres : 0;
            to += missed.Contains(stroke) ? (towardHigh ? -1 : 1) * chance.NextBetween(0.15, 0.4) * endPlayMillimetres : 0;
            to += habits.PressureMicrometres / 1000 * chance.NextNormal();
            Move(path, from, to, habits.MoveSeconds * chance.NextBetween(0.5, 2));
            Hold(path, chance, to, habits.HoldSeconds * Math.Pow(2, chance.NextBetween(-1, 1)),
                habits.PressureMicrometres / 2000, (towardHigh ? -1 : 1) * habits.SettlingMicrometres / 1000);
            (from, towardHigh) = (path[^1], !towardHigh);
        }

        return new([.. path]);
    }

    /// <summary>Where the shaft stands after so many seconds, in millimetres from the lower stop.</summary>
    public double PlaceAt(double seconds) => _path[(int)Math.Clamp(seconds / Step, 0, _path.Length - 1)];

    private static void Move(List<double> path, double from, double to, double seconds)
    {
        for (var t = Step; t < seconds; t += Step)
        {
            path.Add(from + (to - from) * (1 - Math.Cos(Math.PI * t / seconds)) / 2);
        }
    }

    // The pressure wanders while the stop is held, with a memory of about a third of a second.
    private static void Hold(List<double> path, Random chance, double at, double seconds, double pressure, double settling)
    {
        const double memory = 0.3;
        const double settle = 0.08;
        var wander = 0.0;
        for (var t = 0.0; t < seconds; t += Step)
        {
            wander += -wander * Step / memory + pressure * Math.Sqrt(2 * Step / memory) * chance.NextNormal();
            path.Add(at + wander + settling * Math.Exp(-t / settle));
        }
    }
}

namespace Handspun.Simulation;

/// <summary>What a hand does beside pushing.</summary>
public sealed record HandHabits
{
    /// <summary>How uneven the pushes are, 0 (a steady crank) to about 1 (shoves with long pauses).</summary>
    public double Unevenness { get; init; } = 0.5;

    /// <summary>Full stops on the way.</summary>
    public int Stops { get; init; }

    /// <summary>How far the shaft slips back at each stop, in degrees; 0 where it does not.</summary>
    public double SlipBackDegrees { get; init; }
}

/// <summary>How far a hand has turned the shaft as time goes on.</summary>
/// <remarks>Pushes that swell and die away against friction, so the speed is smooth but far from even. The same seed gives the same turn.</remarks>
public sealed class HandTurn
{
    private const double Step = 0.002;
    private readonly double[] _turns;

    private HandTurn(double[] turns) => _turns = turns;

    /// <summary>How long the hand takes, in seconds.</summary>
    public double Seconds => (_turns.Length - 1) * Step;

    /// <summary>Turns from start to end.</summary>
    public double Turns => _turns[^1];

    /// <summary>A hand that makes so many turns at about so many turns a second.</summary>
    /// <param name="seed">The same seed gives the same turn.</param>
    /// <param name="turns">Turns of the shaft from start to end; above 0.</param>
    /// <param name="turnsPerSecond">Mean speed while it pushes; above 0.</param>
    /// <param name="habits">Unevenness, stops and slips; null for the usual hand.</param>
    public static HandTurn Create(int seed, double turns, double turnsPerSecond, HandHabits? habits = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(turns);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(turnsPerSecond);
        habits ??= new HandHabits();
        var chance = new Random(seed);
        var stopsAt = Enumerable.Range(0, habits.Stops).Select(_ => chance.NextBetween(0.15, 0.85) * turns).Order().ToList();
        var path = new List<double> { 0 };
        while (stopsAt.Count > 0)
        {
            Push(path, chance, stopsAt[0], turnsPerSecond, habits.Unevenness);
            Stand(path, chance.NextBetween(0.2, 1), habits.SlipBackDegrees / 360);
            stopsAt.RemoveAt(0);
        }

        Push(path, chance, turns, turnsPerSecond, habits.Unevenness);
        var scale = turns / path[^1];   // braking ends a little off the mark
        return new([.. path.Select(turn => turn * scale)]);
    }

    /// <summary>Turns made after so many seconds: 0 before the start, all of them after the end.</summary>
    public double TurnsAt(double seconds)
    {
        if (seconds <= 0)
        {
            return 0;
        }

        var place = seconds / Step;
        var before = (int)Math.Min(place, _turns.Length);
        return before >= _turns.Length - 1
            ? _turns[^1]
            : _turns[before] + (place - before) * (_turns[before + 1] - _turns[before]);
    }

    // Speed follows the push with a lag (inertia against friction), so it neither jumps nor runs backwards.
    private static void Push(List<double> path, Random chance, double until, double mean, double unevenness)
    {
        const double lag = 0.12;
        var (speed, turn) = (0.0, path[^1]);
        var (left, length, strength) = (0.0, 1.0, mean);
        while (turn + speed * lag < until)
        {
            if (left <= 0)
            {
                length = chance.NextBetween(0.35, 0.75) / mean / Math.Max(1, 1.5 * unevenness);
                left = length;
                strength = mean * Math.Exp(0.5 * unevenness * chance.NextNormal());
            }

            var decay = Math.Exp(-2 * unevenness * (1 - left / length));
            var wanted = strength * Math.Max(decay * (1 + unevenness * 0.8), 0.12);
            speed += (wanted - speed) * Step / lag;
            turn += speed * Step;
            left -= Step;
            path.Add(turn);
        }

        while (speed > 0.002 * mean)
        {
            speed -= speed * Step / lag;
            turn += speed * Step;
            path.Add(turn);
        }
    }

    private static void Stand(List<double> path, double seconds, double slip)
    {
        var from = path[^1];
        if (slip > 0)
        {
            const double slipSeconds = 0.3;
            for (var t = Step; t <= slipSeconds; t += Step)
            {
                path.Add(from - slip * (1 - Math.Cos(Math.PI * t / slipSeconds)) / 2);
            }
        }

        var at = path[^1];
        for (var t = Step; t <= seconds; t += Step)
        {
            path.Add(at);
        }
    }
}

namespace Handspun.Simulation.Rock;

/// <summary>How a hand leans a bore gauge this way and that. The same seed gives the same hand.</summary>
public sealed class RockingHand
{
    private const double Step = 0.002;
    private readonly double[] _degrees;
    private readonly double[] _seats;

    private RockingHand(double[] degrees, double[] seats) => (_degrees, _seats) = (degrees, seats);

    /// <summary>How long the hand takes, in seconds.</summary>
    public double Seconds => (_degrees.Length - 1) * Step;

    /// <summary>How often it passed through the turning point.</summary>
    public int Passes => Enumerable.Range(1, _degrees.Length - 1).Count(i => _degrees[i] * _degrees[i - 1] < 0);

    /// <summary>A hand at work.</summary>
    public static RockingHand Create(int seed, RockHabits habits)
    {
        var chance = new Random(seed);
        var side = chance.Next(2) == 0 ? 1 : -1;
        List<double> degrees = [], seats = [];
        double Reach() => habits.LeanDegrees * (1 + habits.Unevenness * chance.NextBetween(-0.4, 0.4));
        double Seat() => habits.SeatMicrometres / 1000 * chance.NextNormal();
        var (from, seat) = (-side * Reach(), Seat());
        for (var rest = chance.NextBetween(0, 0.8); rest > 0; rest -= Step)
        {
            degrees.Add(from);
            seats.Add(seat);
        }

        for (var swing = 0; swing < 2 * habits.Cycles; swing++)
        {
            var (to, seatThere) = (side * Reach(), Seat());
            var seconds = habits.SwingSeconds * (1 + habits.Unevenness * chance.NextBetween(-0.4, 0.6));
            var lilt = habits.Unevenness * chance.NextBetween(-0.12, 0.12);   // faster at first or at last
            for (var t = Step; t <= seconds; t += Step)
            {
                var part = t / seconds;
                var way = (1 - Math.Cos(Math.PI * (part + lilt * Math.Sin(Math.PI * part) * Math.Sin(Math.PI * part)))) / 2;
                degrees.Add(from + (to - from) * way);
                seats.Add(seatThere);   // it sits as it does while it swings through; it shifts where it leans
            }

            (from, side) = (to, -side);
        }

        return new([.. degrees], [.. seats]);
    }

    /// <summary>The lean at a time, in degrees; 0 at the turning point.</summary>
    public double DegreesAt(double seconds) => At(_degrees, seconds);

    /// <summary>How the gauge sits at a time, in millimetres.</summary>
    public double SeatAt(double seconds) => _seats[(int)Math.Clamp(seconds / Step, 0, _seats.Length - 1)];

    private static double At(double[] path, double seconds)
    {
        var place = Math.Clamp(seconds / Step, 0, path.Length - 1);
        var before = (int)place;
        return before + 1 >= path.Length ? path[^1] : path[before] + (place - before) * (path[before + 1] - path[before]);
    }
}
